// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QFont>
#include <QPalette>
#include <QString>

#include "clearance/finding.h"
#include "drawing/layers.h"

namespace baywright {

/// Colours of the drawing and of the verdicts. Light for paper and light desktops, dark for dark ones. The
/// verdict colours are from the palette of Okabe & Ito (2002), chosen to stay apart for colour-blind readers;
/// each verdict also has a word, a symbol and a hatch.
struct Theme {
  bool dark = false;
  QColor background;  ///< of the drawing
  QColor ink;         ///< walls, text
  QColor faint;       ///< grid, secondary lines
  QColor floor;
  QColor poche;   ///< cut masonry
  QColor accent;  ///< selection, handles, snaps
  QColor swing;
  QColor beam;
  QColor ball;

  static Theme light();
  static Theme darkOne();
  static Theme forPalette(const QPalette& palette);

  QColor verdict(Verdict verdict) const;      ///< for fills and symbols, 3:1 on background
  QColor verdictText(Verdict verdict) const;  ///< for words, 4.5:1 on background
  QColor line(Layer layer) const;
  QColor fill(Layer layer) const;
};

/// "clear", "tight", "blocked", "not known"; lower case, translated.
QString verdictWord(Verdict verdict);
/// One character of the drawing's typeface: tick, tilde, bar, question mark.
QString verdictSymbol(Verdict verdict);

/// The typeface of drawings, DejaVu Sans, with capitals `capHeight` device units high.
QFont drawingFont(double capHeight, bool bold);

}  // namespace baywright
