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
  QTransform deviceFromDrawing;  ///< a similarity that includes the flip of y
  double unitsPerMm = 3.78;      ///< device units in a millimetre of paper or screen
  Theme theme = Theme::light();
  Id selected;
  Id hovered;
};

/// Draws layer by layer, in the order of the layers: areas and lines, then texts. Dimensions and symbols are
/// the lines of drawing/mark_shapes.h. What is selected or hovered takes the accent colour, except where a
/// verdict's colour says more. Restores the painter.
void paintLinework(QPainter& painter, const Linework& linework, const PaintStyle& style);

}  // namespace baywright
