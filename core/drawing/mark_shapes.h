// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "drawing/linework.h"

namespace baywright {

/// Every renderer shows dimensions and symbols as these lines, filled areas and texts, so that screen, paper
/// and files agree. `unitsPerMm` is the drawing's length for a millimetre of paper or screen: 1 on a page,
/// 0.05 for metres at 1:50.

/// Extension lines that start 1 mm off the points and overshoot by 1.5 mm, none where the offset is zero; a
/// line with oblique strokes or arrowheads; the text 1 mm above the line, to be read from below or from the
/// right. Where the text is wider than the dimension it stands beyond `to`, and arrowheads that have no room
/// point inward from outside.
Linework shapeOf(const DimensionMark& dimension, double unitsPerMm);

Linework shapeOf(const Symbol& symbol, double unitsPerMm);

/// The same linework with nothing but paths and texts in it.
Linework exploded(const Linework& linework, double unitsPerMm);

}  // namespace baywright
