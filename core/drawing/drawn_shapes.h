// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>

#include "job/fixture.h"
#include "job/room.h"

namespace baywright {

/// Heading of the room's longest wall, radians within [-45, 45] degrees of world x; 0 for a room without
/// walls. What is drawn into a room lies along it.
double roomHeading(const Room& room);

/// The box with opposite corners a and b, whose sides run along and square to `heading`.
BoxShape boxBetween(const Vec2& a, const Vec2& b, double heading);

/// The same box with another width (along its heading) or depth; corner a stays, b moves the way it lay.
struct BoxSize {
  double width = 0;
  double depth = 0;
};
BoxShape boxFrom(const Vec2& a, const Vec2& toward, double heading, const BoxSize& size);

/// The box's corners, the first side along its width.
std::array<Vec2, 4> cornersOf(const BoxShape& box);

CylinderShape cylinderAround(const Vec2& centre, const Vec2& edge);

}  // namespace baywright
