// SPDX-License-Identifier: Apache-2.0
#include "drawing/fixture_outline.h"

#include <cmath>

#include "drawing/marks.h"

namespace baywright {
namespace {

Ring ringOf(const BoxShape& box) {
  const Vec2 along = box.width / 2 * Vec2(std::cos(box.heading), std::sin(box.heading));
  const Vec2 across = box.depth / 2 * Vec2(-std::sin(box.heading), std::cos(box.heading));
  return {box.centre - along - across, box.centre + along - across, box.centre + along + across,
          box.centre - along + across};
}

Ring ringOf(const PrismShape& prism) {
  return prism.outline;
}

Ring ringOf(const CylinderShape& cylinder) {
  return detail::circleRing(cylinder.centre, cylinder.radius);
}

}  // namespace

Ring outlineOf(const FixtureShape& shape) {
  return std::visit([](const auto& each) { return ringOf(each); }, shape);
}

}  // namespace baywright
