// SPDX-License-Identifier: Apache-2.0
#include "optics/detail/round_shapes.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "optics/obstruction.h"

namespace baywright::detail {
namespace {

constexpr std::size_t kCorners = kRoundCorners;

std::array<Vec2, kCorners> enclosingUnitPolygon() {
  std::array<Vec2, kCorners> corners;
  const double step = 2 * kPi / kRoundCorners;
  for (std::size_t i = 0; i < kCorners; ++i) {
    const double angle = static_cast<double>(i) * step;
    corners[i] = Vec2{std::cos(angle), std::sin(angle)} / std::cos(0.5 * step);
  }
  return corners;
}

/// A unit vector square to `normal`, well conditioned: made from the axis least along it.
Vec3 squareTo(const Vec3& normal) {
  Eigen::Index least = 0;
  normal.cwiseAbs().minCoeff(&least);
  return normal.cross(Vec3::Unit(least)).normalized();
}

}  // namespace

void appendEnclosingPolygon(const Vec3& centre, const Vec3& normal, double radius,
                            std::vector<Vec3>& points) {
  static const std::array<Vec2, kCorners> kUnit = enclosingUnitPolygon();
  const Vec3 first = radius * squareTo(normal);
  const Vec3 second = normal.cross(first);
  for (const Vec2& p : kUnit) points.push_back(centre + p.x() * first + p.y() * second);
}

void appendOutlineOfBall(const Vec3& eye, const Vec3& centre, double radius, std::vector<Vec3>& points) {
  const Vec3 away = centre - eye;
  const double distance = away.norm();
  const double sine = radius / distance;
  if (!(sine < 1)) return;
  // The cone touches the ball along a circle a little nearer than its middle.
  const double square = 1 - sine * sine;
  appendEnclosingPolygon(eye + square * away, away / distance, radius * std::sqrt(square), points);
}

std::optional<Segment3> inFrontOf(const Segment3& segment, double limit) {
  const double a = segment.a.x() - limit;
  const double b = segment.b.x() - limit;
  if (a <= 0 && b <= 0) return segment;
  if (a > 0 && b > 0) return std::nullopt;
  const Vec3 cut = segment.a + (segment.b - segment.a) * (a / (a - b));
  return a > 0 ? Segment3{cut, segment.b} : Segment3{segment.a, cut};
}

double distanceTo(const Segment3& segment, const Vec3& p) {
  const Vec3 along = segment.b - segment.a;
  const double square = along.squaredNorm();
  const double t = square > 0 ? std::clamp((p - segment.a).dot(along) / square, 0.0, 1.0) : 0;
  return (segment.a + t * along - p).norm();
}

}  // namespace baywright::detail
