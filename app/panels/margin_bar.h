// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPainter>
#include <QRectF>

#include "clearance/finding.h"
#include "painting/theme.h"

namespace baywright {

/// Draws a margin as a bar from a zero line in the middle: to the right what is left, to the left what is
/// missing, with a whisker for its 95 % interval. Lengths span half a metre either way, other margins a
/// quarter of their unit.
void paintMarginBar(QPainter& painter, const QRectF& box, const Finding& finding, const Theme& theme);

}  // namespace baywright
