// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPainter>
#include <QTransform>

#include "drawing/linework.h"
#include "painting/theme.h"

namespace baywright {

/// How linework becomes ink. The painter must be in plain device units (no transform of its own): pixels on
/// a screen, dots on paper, so that line widths and text are exact on both.
struct PaintStyle {
  QTransform deviceFromDrawing;  ///< includes the flip of y
  double unitsPerMm = 3.78;      ///< device units in a millimetre of paper or screen
  double thinMm = 0.18;          ///< two widths, 1:2 (ISO 128)
  double thickMm = 0.5;
  Theme theme = Theme::light();
  Id selected;
  Id hovered;
};

/// Draws layer by layer, in the order of the layers. Restores the painter.
void paintLinework(QPainter& painter, const Linework& linework, const PaintStyle& style);

}  // namespace baywright
