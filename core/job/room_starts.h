// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <variant>

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

// A room from typed sizes, for a job that has none yet. World metres; the first corner is the world's origin
// and wall "A" runs along x.

/// `length` along x, `width` along y.
struct RectangleFloor {
  Dimension length = taped(6.0);
  Dimension width = taped(4.5);
};

/// A rectangle less the corner at (length, width): `cutLength` along x and `cutWidth` along y are missing.
struct LShapeFloor {
  Dimension length = taped(6.0);
  Dimension width = taped(6.0);
  Dimension cutLength = taped(2.0);
  Dimension cutWidth = taped(2.0);
};

using FloorStart = std::variant<RectangleFloor, LShapeFloor>;

struct FlatCeiling {
  Dimension height = taped(2.4);
};

/// One plane that falls or rises steadily across the whole floor.
struct SlopedCeiling {
  enum class Direction { AlongLength, AlongWidth };

  Dimension low = taped(2.2);   ///< at the world's axis: x = 0, or y = 0
  Dimension high = taped(3.0);  ///< at the far end; may also be the lower one
  Direction direction = Direction::AlongWidth;
};

/// Flat, with a lower part over a strip: a bulkhead or a gallery. The strip begins at x = 0.
struct SteppedCeiling {
  Dimension height = taped(2.7);
  Dimension lowHeight = taped(2.3);
  Dimension stripLength = taped(1.5);  ///< along x
};

using CeilingStart = std::variant<FlatCeiling, SlopedCeiling, SteppedCeiling>;

/// The job with this room in place of the one it has, fixtures and openings gone, and the bay where
/// startingPose puts it. Sizes and heights keep their instruments. Refused with a
/// sentence: sizes that are no room, a cut as large as the floor.
Result<Job> startRoom(Job job, const FloorStart& floor, const CeilingStart& ceiling);

}  // namespace baywright
