// SPDX-License-Identifier: Apache-2.0
#include "drawing/drawn_shapes.h"

#include <cmath>

#include "job/room_geometry.h"

namespace baywright {

double roomHeading(const Room& room) {
  double longest = 0;
  double heading = 0;
  for (const WallLine& line : wallLines(room)) {
    if (line.length <= longest) continue;
    longest = line.length;
    heading = std::remainder(std::atan2(line.along.y(), line.along.x()), kPi / 2);
  }
  return heading;
}

BoxShape boxBetween(const Vec2& a, const Vec2& b, double heading) {
  const Vec2 along(std::cos(heading), std::sin(heading));
  const Vec2 across = b - a;
  return {0.5 * (a + b), heading, std::abs(across.dot(along)), std::abs(across.dot(leftOf(along)))};
}

BoxShape boxFrom(const Vec2& a, const Vec2& toward, double heading, const BoxSize& size) {
  const Vec2 along(std::cos(heading), std::sin(heading));
  const Vec2 way = toward - a;
  const Vec2 b = a + std::copysign(size.width, way.dot(along)) * along +
                 std::copysign(size.depth, way.dot(leftOf(along))) * leftOf(along);
  return {0.5 * (a + b), heading, size.width, size.depth};
}

std::array<Vec2, 4> cornersOf(const BoxShape& box) {
  const Vec2 along = box.width / 2 * Vec2(std::cos(box.heading), std::sin(box.heading));
  const Vec2 across = box.depth / 2 * Vec2(-std::sin(box.heading), std::cos(box.heading));
  return {box.centre - along - across, box.centre + along - across, box.centre + along + across,
          box.centre - along + across};
}

CylinderShape cylinderAround(const Vec2& centre, const Vec2& edge) {
  return {centre, (edge - centre).norm()};
}

}  // namespace baywright
