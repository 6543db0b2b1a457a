// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "base/id.h"
#include "geometry/vec.h"
#include "job/dimension.h"

namespace baywright {

enum class MeasurementKind {
  WallLength,     ///< from corner to the next corner, along a wall
  Diagonal,       ///< between any two corners
  Angle,          ///< inner angle at `at` between `from` and `to`; radians in `value`
  Offset,         ///< perpendicular distance of corner `to` from the line of wall `from`
  CeilingHeight,  ///< floor to ceiling at `position`
};

/// One reading, as taken. Corners are named by the wall that starts there.
struct Measurement {
  Id id;
  MeasurementKind kind = MeasurementKind::WallLength;
  Id from;
  Id to;
  Id at;
  Vec2 position = Vec2::Zero();
  double value = 0;  ///< metres, or radians for angles
  Instrument how = Instrument::Tape;
  bool used = true;  ///< false: kept, but set aside by the fitter
  std::string note;

  bool operator==(const Measurement&) const = default;
};

}  // namespace baywright
