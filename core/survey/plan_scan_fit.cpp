// SPDX-License-Identifier: Apache-2.0
#include "survey/plan_scan_fit.h"

#include <algorithm>
#include <cmath>

#include "geometry/homography.h"

namespace baywright {
namespace {

Mat3 shift(const Vec2& by) {
  Mat3 map = Mat3::Identity();
  map.topRightCorner<2, 1>() = by;
  return map;
}

/// Linear `about` a point that stays.
Mat3 about(const Vec2& centre, const Mat2& linear) {
  Mat3 map = Mat3::Identity();
  map.topLeftCorner<2, 2>() = linear;
  return shift(centre) * map * shift(-centre);
}

/// The unit vector along x or y, either way, that is nearest to a direction.
Vec2 nearestAxis(const Vec2& direction) {
  if (std::abs(direction.x()) >= std::abs(direction.y())) return {std::copysign(1.0, direction.x()), 0};
  return {0, std::copysign(1.0, direction.y())};
}

Problem noLength() {
  return {"The true length must be more than nothing.", {}, "Type the length that stands on the plan."};
}

double depthAt(const Mat3& map, const Vec2& pixel) {
  return map.row(2).dot(Vec3(pixel.x(), pixel.y(), 1));
}

/// The part of a convex ring where the map's third component is at least `least` (Sutherland and Hodgman).
Ring clippedByDepth(const Ring& ring, const Mat3& map, double least) {
  Ring kept;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Vec2& here = ring[i];
    const Vec2& next = ring[(i + 1) % ring.size()];
    const double a = depthAt(map, here) - least;
    const double b = depthAt(map, next) - least;
    if (a >= 0) kept.push_back(here);
    if ((a >= 0) != (b >= 0)) kept.push_back(here + a / (a - b) * (next - here));
  }
  return kept;
}

}  // namespace

Mat3 worldFromFreshPixels(const Vec2& pixels, const Vec2& middle, double width) {
  const double metresPerPixel = width / std::max(pixels.x(), 1.0);
  Mat3 map = Mat3::Identity();
  map(0, 0) = metresPerPixel;
  map(1, 1) = -metresPerPixel;
  map(0, 2) = middle.x() - metresPerPixel * pixels.x() / 2;
  map(1, 2) = middle.y() + metresPerPixel * pixels.y() / 2;
  return map;
}

Mat3 worldFromFreshPixels(const Vec2& pixels, const Job& job) {
  constexpr double kPitch = 1.1 * kFreshPlanWidth;
  return worldFromFreshPixels(pixels, Vec2(kPitch * static_cast<double>(job.planScans.size()), 0),
                              kFreshPlanWidth);
}

Result<PlanScan> scaledByLine(PlanScan scan, const Vec2& a, const Vec2& b, double length) {
  if (!(length > 0)) return tl::unexpected(noLength());
  const double seen = (b - a).norm();
  const double factor = length / seen;
  if (!(factor < kLargestFactor) || !(factor > 1 / kLargestFactor)) {
    return fail("The two points are too near each other to set a scale.", {},
                "Choose two points as far apart as the plan gives a length for.");
  }
  scan.worldFromPixel = about(a, factor * Mat2::Identity()) * scan.worldFromPixel;
  scan.scaled = true;
  return scan;
}

PlanScan levelledByLine(PlanScan scan, const Vec2& a, const Vec2& b) {
  const Vec2 line = b - a;
  if (!(line.norm() > 0)) return scan;
  const Vec2 axis = nearestAxis(line);
  const double angle = std::atan2(cross(line, axis), line.dot(axis));
  if (std::abs(angle) > kLargestTilt) return scan;
  scan.worldFromPixel = about(a, Eigen::Rotation2Dd(angle).toRotationMatrix()) * scan.worldFromPixel;
  return scan;
}

Result<PlanScan> straightened(PlanScan scan, const SeenRectangle& seen) {
  if (!(seen.first > 0) || !(seen.second > 0)) return tl::unexpected(noLength());
  const auto& from = seen.corners;
  const Vec2 along = nearestAxis(from[1] - from[0]);
  // The corners may have been clicked either way round.
  const double sense = signedArea(from) < 0 ? -1 : 1;
  const Vec2 side = seen.first * along;
  const Vec2 up = sense * seen.second * leftOf(along);
  const std::array<PointPair, 4> pairs{PointPair{from[0], from[0]}, PointPair{from[1], from[0] + side},
                                       PointPair{from[2], from[0] + side + up},
                                       PointPair{from[3], from[0] + up}};
  const auto fit = homographyFrom(pairs);
  if (!fit) return tl::unexpected(fit.error());
  if (fit->condition > kPoorConditioning) {
    return fail("Three of the four points lie almost on a line, so the plan cannot be straightened by them.",
                {}, "Choose the four corners of a large rectangle.");
  }
  scan.worldFromPixel = fit->map.matrix * scan.worldFromPixel;
  scan.worldFromPixel /= scan.worldFromPixel.cwiseAbs().maxCoeff();
  scan.scaled = true;
  return scan;
}

Ring usablePixels(const PlanScan& scan, const Vec2& pixels) {
  const Ring all{{0, 0}, {pixels.x(), 0}, pixels, {0, pixels.y()}};
  double deepest = 0;
  for (const Vec2& corner : all) deepest = std::max(deepest, depthAt(scan.worldFromPixel, corner));
  if (!(deepest > 0)) return {};
  return clippedByDepth(all, scan.worldFromPixel, kSmallestScale * deepest);
}

Ring scanOutline(const PlanScan& scan, const Vec2& pixels) {
  Ring outline;
  for (const Vec2& pixel : usablePixels(scan, pixels)) {
    const Vec3 mapped = scan.worldFromPixel * Vec3(pixel.x(), pixel.y(), 1);
    outline.push_back(mapped.head<2>() / mapped.z());
  }
  return outline;
}

bool coversPoint(const PlanScan& scan, const Vec2& pixels, const Vec2& world) {
  const Ring outline = scanOutline(scan, pixels);
  return outline.size() >= 3 && locate(outline, world) != Location::Outside;
}

}  // namespace baywright
