// SPDX-License-Identifier: Apache-2.0
#include "painting/theme.h"

#include <gtest/gtest.h>

#include <QFontInfo>
#include <QFontMetricsF>
#include <QSet>
#include <array>
#include <cmath>

namespace baywright {
namespace {

constexpr std::array kVerdicts{Verdict::Clear, Verdict::Unknown, Verdict::Tight, Verdict::Blocked};

double linear(double channel) {
  return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}
double luminance(const QColor& colour) {
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}
/// Contrast ratio of WCAG 2.1, success criterion 1.4.3.
double contrast(const QColor& a, const QColor& b) {
  const double low = std::min(luminance(a), luminance(b));
  const double high = std::max(luminance(a), luminance(b));
  return (high + 0.05) / (low + 0.05);
}

TEST(Theme, MeasuresContrastAsWcagDoes) {
  EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
  EXPECT_NEAR(contrast(QColor(118, 118, 118), Qt::white), 4.54, 0.01);
}

TEST(Theme, CanBeReadInLightAndInDark) {
  for (const Theme& theme : {Theme::light(), Theme::darkOne()}) {
    EXPECT_GE(contrast(theme.ink, theme.background), 4.5);
    EXPECT_GE(contrast(theme.ink, theme.floor), 4.5);
    EXPECT_GE(contrast(theme.accent, theme.background), 4.5);
    for (const Verdict verdict : kVerdicts) {
      EXPECT_GE(contrast(theme.verdictText(verdict), theme.background), 4.5) << theme.dark << int(verdict);
      EXPECT_GE(contrast(theme.verdict(verdict), theme.background), 3.0) << theme.dark << int(verdict);
    }
    for (const LayerStyle& layer : layerStyles()) {
      if (layer.layer == Layer::Floor) continue;
      EXPECT_GE(contrast(theme.line(layer.layer), theme.background), 2.4) << layer.name;
    }
  }
}

TEST(Theme, TellsVerdictsApartWithoutColour) {
  QSet<QString> words;
  QSet<QString> symbols;
  for (const Verdict verdict : kVerdicts) {
    words.insert(verdictWord(verdict));
    symbols.insert(verdictSymbol(verdict));
  }
  EXPECT_EQ(words.size(), 4);
  EXPECT_EQ(symbols.size(), 4);
}

TEST(Theme, FollowsTheDesktop) {
  QPalette palette;
  palette.setColor(QPalette::Window, QColor(40, 40, 40));
  EXPECT_TRUE(Theme::forPalette(palette).dark);
  palette.setColor(QPalette::Window, QColor(240, 240, 240));
  EXPECT_FALSE(Theme::forPalette(palette).dark);
}

TEST(Theme, SetsDrawingsInTheTypefaceThatTheirWidthsAreWorkedOutFor) {
  EXPECT_EQ(QFontInfo(drawingFont(10, false)).family(), QStringLiteral("DejaVu Sans"));
  EXPECT_NEAR(QFontMetricsF(drawingFont(100, false)).capHeight(), 100, 1.5);
}

}  // namespace
}  // namespace baywright
