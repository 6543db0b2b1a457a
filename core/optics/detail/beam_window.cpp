// SPDX-License-Identifier: Apache-2.0
#include "optics/detail/beam_window.h"

#include <algorithm>
#include <cmath>

#include "optics/detail/convex.h"
#include "optics/detail/round_shapes.h"
#include "optics/obstruction.h"

namespace baywright::detail {
namespace {

/// What lies nearer to the lens than this along the axis is not looked at: no fixture is, and its projection
/// would run to infinity.
constexpr double kNearest = 1e-3;

/// The part of the hull of some points where `side` >= 0, as points: those inside, and where lines from
/// inside to outside cross. Those lines include every edge of the hull, and none leaves it.
template <class Side>
void keepWhere(std::vector<Vec3>& points, const Side& side) {
  const auto outside =
      std::stable_partition(points.begin(), points.end(), [&](const Vec3& p) { return side(p) >= 0; });
  if (outside == points.end()) return;
  std::vector<Vec3> kept(points.begin(), outside);
  for (auto in = points.begin(); in != outside; ++in)
    for (auto out = outside; out != points.end(); ++out) {
      const double a = side(*in), b = side(*out);
      kept.push_back(*in + (*out - *in) * (a / (a - b)));
    }
  points = std::move(kept);
}

double beforeScreen(const Vec3& p) {
  return -p.x();
}

/// Normals in lens coordinates (axis, right, up) of the planes round the part of the panel, then in the bay.
std::array<Vec3, 4> enclosingPlanes(const ProjectorLens& lens, const Ring& panel) {
  Vec2 low = panel.front(), high = panel.front();
  for (const Vec2& p : panel) {
    low = low.cwiseMin(p);
    high = high.cwiseMax(p);
  }
  const auto slope = [&](const Vec2& pixel) -> Vec2 {
    const Vec3 ray = bayRayFromPanel(lens, pixel);
    return {ray.dot(lens.right), ray.dot(lens.up)};
  };
  const Vec2 topLeft = slope(low), bottomRight = slope(high);
  const auto inBay = [&](double axis, double right, double up) -> Vec3 {
    return (axis * lens.axis + right * lens.right + up * lens.up).normalized();
  };
  return {inBay(-topLeft.x(), 1, 0), inBay(bottomRight.x(), -1, 0), inBay(topLeft.y(), 0, -1),
          inBay(-bottomRight.y(), 0, 1)};
}

bool holds(const Cylinder& cylinder, const Vec3& p) {
  const Vec3 axis = cylinder.b - cylinder.a;
  const double along = (p - cylinder.a).dot(axis) / axis.squaredNorm();
  if (along < 0 || along > 1) return false;
  return (p - cylinder.a - along * axis).norm() <= cylinder.radius;
}

bool holds(const ConvexPolyhedron& body, const Vec3& p) {
  return std::all_of(body.faces().begin(), body.faces().end(),
                     [&](const auto& face) { return face.normal.dot(p) <= face.offset; });
}

}  // namespace

BeamWindow::BeamWindow(const Picture& picture)
    : lens_(picture.lens), panel_(picture.litOnPanel), area_(signedArea(picture.litOnPanel)) {
  if (!panel_.empty()) inward_ = enclosingPlanes(lens_, panel_);
}

bool BeamWindow::mayHide(std::span<const Vec3> points, double radius) const {
  if (panel_.empty()) return false;
  const auto allOut = [&](const auto& distance) {
    return std::all_of(points.begin(), points.end(), [&](const Vec3& p) { return distance(p) <= -radius; });
  };
  if (allOut(beforeScreen)) return false;
  if (allOut([&](const Vec3& p) { return (p - lens_.centre).dot(lens_.axis) - kNearest; })) return false;
  for (const Vec3& normal : inward_)
    if (allOut([&](const Vec3& p) { return (p - lens_.centre).dot(normal); })) return false;
  return true;
}

Ring BeamWindow::hiddenByHull(std::vector<Vec3> points) const {
  keepWhere(points, [&](const Vec3& p) { return (p - lens_.centre).dot(lens_.axis) - kNearest; });
  std::vector<Vec2> pixels;
  pixels.reserve(points.size());
  for (const Vec3& p : points) pixels.push_back(panelFromLens(lens_, lensFromBay(lens_, p)));
  return clipped(convexHull(std::move(pixels)), panel_);
}

Ring BeamWindow::hiddenBy(const ConvexPolyhedron& body) const {
  if (!mayHide(body.vertices(), 0)) return {};
  if (holds(body, lens_.centre)) return panel_;
  std::vector<Vec3> points = body.vertices();
  keepWhere(points, beforeScreen);
  return hiddenByHull(std::move(points));
}

Ring BeamWindow::hiddenBy(const Cylinder& cylinder) const {
  const std::array<Vec3, 2> ends{cylinder.a, cylinder.b};
  if (!mayHide(ends, cylinder.radius)) return {};
  if (holds(cylinder, lens_.centre)) return panel_;
  std::vector<Vec3> points;
  points.reserve(2 * kRoundCorners);
  const Vec3 axis = (cylinder.b - cylinder.a).normalized();
  for (const Vec3& end : ends) appendEnclosingPolygon(end, axis, cylinder.radius, points);
  keepWhere(points, beforeScreen);
  return hiddenByHull(std::move(points));
}

// The outline of a ball lies on its cone, not on the ball: cutting it at the screen could lose a part that
// still stands before it. So only the axis is cut, a radius beyond the screen.
Ring BeamWindow::hiddenBy(const Capsule& capsule) const {
  const auto core = inFrontOf(capsule.core(), capsule.radius);
  if (!core) return {};
  const std::array<Vec3, 2> ends{core->a, core->b};
  if (!mayHide(ends, capsule.radius)) return {};
  if (distanceTo(*core, lens_.centre) <= capsule.radius) return panel_;
  std::vector<Vec3> points;
  points.reserve(2 * kRoundCorners);
  for (const Vec3& end : ends) appendOutlineOfBall(lens_.centre, end, capsule.radius, points);
  return hiddenByHull(std::move(points));
}

}  // namespace baywright::detail
