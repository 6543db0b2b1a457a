// SPDX-License-Identifier: Apache-2.0
#include "drawing/marks.h"

#include <algorithm>
#include <cmath>

namespace baywright::detail {
namespace {

// A chord of 7.5 degrees stands off its arc by 0.2 % of the radius: 2 mm on a door leaf, unseen at 1:20.
constexpr double kChord_rad = kPi / 24;

}  // namespace

Path polyline(Layer layer, std::vector<Vec2> points, Id id) {
  Path path;
  path.layer = layer;
  path.rings.push_back(std::move(points));
  path.id = id;
  return path;
}

Path polygon(Layer layer, std::vector<Vec2> ring, Id id) {
  Path path = polyline(layer, std::move(ring), id);
  path.closed = true;
  return path;
}

Path areaOf(Layer layer, std::vector<std::vector<Vec2>> rings, Fill fill, Id id) {
  Path path;
  path.layer = layer;
  path.rings = std::move(rings);
  path.closed = true;
  path.fill = fill;
  path.id = id;
  return path;
}

Path rectangle(Layer layer, const Eigen::AlignedBox2d& box, Id id) {
  return polygon(layer,
                 {box.min(), {box.max().x(), box.min().y()}, box.max(), {box.min().x(), box.max().y()}}, id);
}

Path strokes(Layer layer, std::vector<std::vector<Vec2>> pieces, Id id) {
  Path path;
  path.layer = layer;
  path.rings = std::move(pieces);
  path.id = id;
  return path;
}

std::vector<Vec2> circleRing(const Vec2& centre, double radius) {
  std::vector<Vec2> ring = arc(centre, radius, 0, 2 * kPi);
  ring.pop_back();
  return ring;
}

std::vector<Vec2> arc(const Vec2& centre, double radius, double fromAngle, double toAngle) {
  const double turn = toAngle - fromAngle;
  const int pieces = std::clamp(static_cast<int>(std::ceil(std::abs(turn) / kChord_rad - 1e-9)), 1, 96);
  std::vector<Vec2> points;
  for (int i = 0; i <= pieces; ++i) {
    const double angle = fromAngle + turn * i / pieces;
    points.push_back(centre + radius * Vec2(std::cos(angle), std::sin(angle)));
  }
  return points;
}

double readableAngle(double lineAngle) {
  constexpr double kUpright = 2 * kPi / 180;
  if (lineAngle > kPi / 2 + kUpright) return lineAngle - kPi;
  if (lineAngle <= -kPi / 2 + kUpright) return lineAngle + kPi;
  return lineAngle;
}

Text textAt(Layer layer, const Vec2& at, std::string text, TextAnchor anchor) {
  Text mark;
  mark.layer = layer;
  mark.at = at;
  mark.text = std::move(text);
  mark.anchor = anchor;
  return mark;
}

}  // namespace baywright::detail
