// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QImage>

#include "drawing/scan_picture.h"

namespace baywright {

/// The picture of a 3D scan in one colour, see-through where nothing was seen. Null for an empty one.
QImage scanImage(const ScanPicture& picture, const QColor& colour);

}  // namespace baywright
