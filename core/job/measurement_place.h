// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "job/find.h"
#include "job/measurement.h"
#include "job/room.h"

namespace baywright {

/// Where a ceiling height was taken, world metres: at the corner that it names, as the room has it now; where
/// that corner is gone, or none was named, at the place that was noted.
inline Vec2 placeOf(const Room& room, const Measurement& height) {
  const Wall* corner = findById(room.walls, height.at);
  return corner ? corner->start : height.position;
}

/// A ceiling height that no corner places: it can be moved.
inline bool isFreeHeight(const Room& room, const Measurement& reading) {
  return reading.kind == MeasurementKind::CeilingHeight && !findById(room.walls, reading.at);
}

}  // namespace baywright
