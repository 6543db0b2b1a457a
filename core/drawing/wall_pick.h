// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "geometry/shapes.h"
#include "job/job.h"

namespace baywright {

/// A place on a wall's inner face.
struct WallSpot {
  Id wall;
  double along = 0;     ///< metres from the wall's start
  double distance = 0;  ///< of the point that was asked about
};
/// Within `reach` metres of the point, either side of the face or within the wall's thickness; nearest first.
std::optional<WallSpot> wallAt(const Room& room, const Vec2& point, double reach);

/// The wall that starts at the corner within `reach` of the point.
std::optional<Id> cornerAt(const Room& room, const Vec2& point, double reach);

/// The opening put on a wall with its middle at the spot, as far as the wall is long; its offset then counts
/// as read by `how`. It is narrowed where the wall is shorter than it.
Opening openingAt(const Room& room, Opening prototype, const WallSpot& spot, Instrument how);
/// From jamb to jamb on the inner face, whether or not the opening is in the room already; a point at the
/// world's origin when its wall is missing.
Segment2 spanOf(const Room& room, const Opening& opening);

}  // namespace baywright
