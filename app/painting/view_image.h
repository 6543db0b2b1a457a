// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QRectF>
#include <QTransform>

#include "drawing/linework.h"
#include "painting/theme.h"

namespace baywright {

/// The transform that puts a box of the drawing (y up) into the middle of a device rectangle (y down), as
/// large as fits.
QTransform fitInto(const Eigen::AlignedBox2d& drawing, const QRectF& device);

/// One view as a picture on its own, with a margin around it.
QImage viewImage(const Linework& linework, QSize size, const Theme& theme);

}  // namespace baywright
