// SPDX-License-Identifier: Apache-2.0
#include "painting/theme.h"

#include <QCoreApplication>

#include "drawing/text_width.h"

namespace baywright {

Theme Theme::light() {
  Theme theme;
  theme.background = QColor(255, 255, 255);
  theme.ink = QColor(34, 38, 42);
  theme.faint = QColor(150, 156, 162);
  theme.floor = QColor(247, 247, 244);
  theme.poche = QColor(92, 97, 102);
  theme.accent = QColor(0, 102, 170);
  theme.swing = QColor(86, 130, 170);
  theme.beam = QColor(196, 150, 0);
  theme.ball = QColor(150, 90, 130);
  return theme;
}

Theme Theme::darkOne() {
  Theme theme;
  theme.dark = true;
  theme.background = QColor(30, 32, 35);
  theme.ink = QColor(226, 228, 230);
  theme.faint = QColor(120, 126, 132);
  theme.floor = QColor(38, 40, 44);
  theme.poche = QColor(150, 155, 160);
  theme.accent = QColor(86, 180, 233);
  theme.swing = QColor(120, 165, 205);
  theme.beam = QColor(230, 200, 80);
  theme.ball = QColor(204, 140, 180);
  return theme;
}

Theme Theme::forPalette(const QPalette& palette) {
  return palette.color(QPalette::Window).lightness() < 128 ? darkOne() : light();
}

QColor Theme::verdict(Verdict verdict) const {
  switch (verdict) {
    case Verdict::Clear:
      return QColor(0, 158, 115);
    case Verdict::Tight:
      return dark ? QColor(240, 228, 66) : QColor(178, 134, 0);
    case Verdict::Blocked:
      return QColor(213, 94, 0);
    case Verdict::Unknown:
      break;
  }
  return dark ? QColor(160, 165, 170) : QColor(118, 122, 126);
}

QColor Theme::verdictText(Verdict v) const {
  if (dark)
    return v == Verdict::Blocked ? QColor(255, 150, 80)
           : v == Verdict::Clear ? QColor(60, 200, 155)
                                 : verdict(v);
  switch (v) {
    case Verdict::Clear:
      return QColor(0, 110, 80);
    case Verdict::Tight:
      return QColor(128, 92, 0);
    case Verdict::Blocked:
      return QColor(170, 66, 0);
    case Verdict::Unknown:
      break;
  }
  return QColor(90, 94, 98);
}

QColor Theme::line(Layer layer) const {
  switch (layer) {
    case Layer::Standing:
    case Layer::SwingBound:
    case Layer::SwingClearance:
    case Layer::Swing:
      return swing;
    case Layer::Beam:
      return beam;
    case Layer::Capture:
    case Layer::Rebound:
      return ball;
    case Layer::Survey:
    case Layer::Ways:
      return accent;
    case Layer::Floor:
      return faint;
    default:
      return ink;
  }
}

QColor Theme::fill(Layer layer) const {
  if (layer == Layer::Floor) return floor;
  if (layer == Layer::Walls) return poche;
  QColor colour = line(layer);
  colour.setAlphaF(layer == Layer::Swing ? 0.16F : 0.10F);
  return colour;
}

QString verdictWord(Verdict verdict) {
  switch (verdict) {
    case Verdict::Clear:
      return QCoreApplication::translate("Verdict", "clear");
    case Verdict::Tight:
      return QCoreApplication::translate("Verdict", "tight");
    case Verdict::Blocked:
      return QCoreApplication::translate("Verdict", "blocked");
    case Verdict::Unknown:
      break;
  }
  return QCoreApplication::translate("Verdict", "not known");
}

QString verdictSymbol(Verdict verdict) {
  switch (verdict) {
    case Verdict::Clear:
      return QStringLiteral("✓");
    case Verdict::Tight:
      return QStringLiteral("~");
    case Verdict::Blocked:
      return QStringLiteral("▬");
    case Verdict::Unknown:
      break;
  }
  return QStringLiteral("?");
}

QFont drawingFont(double capHeight, bool bold) {
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(std::max(1, static_cast<int>(capHeight * kEmPerCapital + 0.5)));
  font.setBold(bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

}  // namespace baywright
