// SPDX-License-Identifier: Apache-2.0
#include "painting/linework_painter.h"

#include <gtest/gtest.h>

#include <QImage>

namespace baywright {
namespace {

constexpr int kSide = 400;
constexpr double kPixelsPerMetre = 100;
constexpr double kPixelsPerMm = 10;  // coarse, so that widths can be counted

/// The drawing's origin lies at the lower left corner.
QImage painted(const Linework& linework, Id selected = {}) {
  QImage image(kSide, kSide, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  PaintStyle style;
  style.deviceFromDrawing = QTransform(kPixelsPerMetre, 0, 0, -kPixelsPerMetre, 0, kSide);
  style.unitsPerMm = kPixelsPerMm;
  style.selected = selected;
  paintLinework(painter, linework, style);
  return image;
}

/// Dark pixels on the way down at x, and where the first one is.
struct Ink {
  int count = 0;
  int first = -1;
};
Ink inkDownAt(const QImage& image, int x) {
  Ink run;
  for (int y = 0; y < image.height(); ++y) {
    if (image.pixelColor(x, y).lightness() >= 200) continue;
    if (run.first < 0) run.first = y;
    ++run.count;
  }
  return run;
}

Path line(const Vec2& a, const Vec2& b, LineWeight weight) {
  Path path;
  path.layer = Layer::Fixtures;
  path.rings = {{a, b}};
  path.weight = weight;
  path.dash = LineDash::Continuous;
  return path;
}

Path square(double left, double bottom, double side) {
  Path path;
  path.layer = Layer::Fixtures;
  path.closed = true;
  path.rings = {{{left, bottom}, {left + side, bottom}, {left + side, bottom + side}, {left, bottom + side}}};
  return path;
}

TEST(LineworkPainter, DrawsWhereTheDrawingSaysWithYUp) {
  Linework linework;
  linework.paths = {line({1, 3}, {3, 3}, LineWeight::Thick)};
  const Ink run = inkDownAt(painted(linework), 200);
  EXPECT_NEAR(run.first + run.count / 2.0, 100, 1);
  EXPECT_EQ(inkDownAt(painted(linework), 50).count, 0);
  EXPECT_EQ(inkDownAt(painted(linework), 350).count, 0);
}

TEST(LineworkPainter, KeepsTheTwoWidthsWhateverTheScale) {
  Linework linework;
  linework.paths = {line({0, 2}, {4, 2}, LineWeight::Thin)};
  EXPECT_NEAR(inkDownAt(painted(linework), 200).count, lineWidthMm(LineWeight::Thin) * kPixelsPerMm, 1);
  linework.paths = {line({0, 2}, {4, 2}, LineWeight::Thick)};
  EXPECT_NEAR(inkDownAt(painted(linework), 200).count, lineWidthMm(LineWeight::Thick) * kPixelsPerMm, 1);
}

TEST(LineworkPainter, LeavesTheOutlineOfABareAreaToOthers) {
  Linework linework;
  Path bare = square(1, 1, 2);
  bare.stroked = false;
  linework.paths = {bare};
  EXPECT_EQ(inkDownAt(painted(linework), 200).count, 0);
  linework.paths[0].stroked = true;
  EXPECT_GT(inkDownAt(painted(linework), 200).count, 0);
}

TEST(LineworkPainter, DashesLinesInMillimetres) {
  Linework linework;
  linework.paths = {line({0, 2}, {4, 2}, LineWeight::Thin)};
  linework.paths[0].dash = LineDash::Dashed;
  const QImage image = painted(linework);
  int ink = 0;
  int changes = 0;
  bool last = false;
  for (int x = 0; x < kSide; ++x) {
    const bool dark = image.pixelColor(x, 200).lightness() < 200;
    ink += dark;
    changes += dark != last;
    last = dark;
  }
  // Two millimetres of line, one of gap: 13 dashes in 40 mm.
  EXPECT_NEAR(ink, kSide * 2 / 3.0, 15);
  EXPECT_NEAR(changes, 2 * 13, 2);
}

TEST(LineworkPainter, ShowsASelectionByColourAndOutline) {
  Linework linework;
  linework.paths = {square(1, 1, 2)};
  linework.paths[0].id = {7};
  linework.paths[0].weight = LineWeight::Thin;
  linework.paths[0].dash = LineDash::Continuous;
  const QImage plain = painted(linework);
  const QImage lit = painted(linework, {7});
  EXPECT_GT(inkDownAt(lit, 200).count, inkDownAt(plain, 200).count);
  EXPECT_EQ(lit.pixelColor(200, 300), Theme::light().accent);
  EXPECT_EQ(painted(linework, {8}), plain);
}

TEST(LineworkPainter, KeepsAVerdictsColourUnderASelection) {
  Linework linework;
  linework.paths = {square(1, 1, 2)};
  linework.paths[0].id = {7};
  linework.paths[0].verdict = Verdict::Blocked;
  linework.paths[0].dash = LineDash::Continuous;
  EXPECT_EQ(painted(linework, {7}).pixelColor(200, 300), Theme::light().verdict(Verdict::Blocked));
}

TEST(LineworkPainter, SetsCapitalsAsHighAsTheTextSays) {
  Linework linework;
  Text text;
  text.at = {2, 1};
  text.text = "HHH";
  text.heightMm = 10;
  text.anchor = TextAnchor::Centre;
  linework.texts = {text};
  const QImage image = painted(linework);
  int top = kSide;
  int bottom = 0;
  for (int x = 0; x < kSide; ++x) {
    const Ink run = inkDownAt(image, x);
    if (run.first < 0) continue;
    top = std::min(top, run.first);
    bottom = std::max(bottom, run.first + run.count);
  }
  EXPECT_NEAR(bottom, 300, 2);
  EXPECT_NEAR(bottom - top, 100, 3);
}

TEST(LineworkPainter, PutsGroundUnderATextThatWantsIt) {
  Linework linework;
  Path dark = square(0, 0, 4);
  dark.fill = Fill::Poche;
  linework.paths = {dark};
  Text text;
  text.at = {2, 2};
  text.text = "i";
  text.heightMm = 5;
  text.anchor = TextAnchor::Left;
  linework.texts = {text};
  const auto brightest = [&] {
    const QImage image = painted(linework);
    int most = 0;
    for (int y = 150; y < 205; ++y)
      for (int x = 195; x < 225; ++x) most = std::max(most, image.pixelColor(x, y).lightness());
    return most;
  };
  const int without = brightest();
  linework.texts[0].onGround = true;
  EXPECT_GT(brightest(), without + 50);
}

TEST(LineworkPainter, LeavesThePainterAsItWas) {
  QImage image(10, 10, QImage::Format_RGB32);
  QPainter painter(&image);
  painter.setPen(Qt::red);
  paintLinework(painter, {}, {});
  EXPECT_EQ(painter.pen().color(), QColor(Qt::red));
  EXPECT_FALSE(painter.testRenderHint(QPainter::Antialiasing));
}

}  // namespace
}  // namespace baywright
