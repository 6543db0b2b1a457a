// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>
#include <cstdint>
#include <random>
#include <vector>

#include "geometry/polygon.h"
#include "geometry/solid.h"

namespace baywright::test {

/// Shapes of the size of rooms and people, the same on every machine for the same number. A share of them is
/// degenerate on purpose: on a grid, along an axis, of no length.
class RandomShapes {
 public:
  explicit RandomShapes(std::uint64_t start) : bits_(start) {}

  double between(double low, double high) {
    return low + (high - low) * static_cast<double>(bits_() >> 11) * 0x1p-53;
  }
  bool oneIn(int n) { return bits_() % static_cast<std::uint64_t>(n) == 0; }
  int upTo(int n) { return static_cast<int>(bits_() % static_cast<std::uint64_t>(n)); }

  Vec2 point2(double half) { return {between(-half, half), between(-half, half)}; }
  Vec3 point(double half) {
    Vec3 p(between(-half, half), between(-half, half), between(-half, half));
    if (oneIn(4)) p = (p * 2).array().round() / 2;
    return p;
  }
  Vec3 direction() {
    if (oneIn(4)) return Vec3::Unit(upTo(3));
    for (;;) {
      const Vec3 v(between(-1, 1), between(-1, 1), between(-1, 1));
      if (v.norm() > 0.1 && v.norm() < 1) return v.normalized();
    }
  }
  Mat3 rotation() {
    if (oneIn(4)) return Mat3::Identity();
    return Eigen::AngleAxisd(between(0, 2 * kPi), direction()).toRotationMatrix();
  }
  RigidMap motion(double half) { return {rotation(), point(half)}; }

  Segment3 segment(double half) {
    const Vec3 a = point(half);
    if (oneIn(10)) return {a, a};
    return {a, a + between(0.01, 1.5) * direction()};
  }
  Capsule capsule(double half) {
    const Segment3 s = segment(half);
    return {s.a, s.b, oneIn(8) ? 0 : between(0.005, 0.2)};
  }
  Triangle triangle(double half) {
    const Vec3 a = point(half);
    return {a, a + between(0.01, 1) * direction(), a + between(0.01, 1) * direction()};
  }

  ConvexPolyhedron box(double half) {
    const Mat3 axes =
        rotation() * Vec3(between(0.01, 0.8), between(0.01, 0.8), between(0.01, 0.8)).asDiagonal();
    return boxFrom(TiltedBox{point(half), axes}).value();
  }
  /// Convex outline with up to eight corners between a level and a sloped plane, turned in space.
  ConvexPolyhedron prism(double half) {
    std::vector<Vec2> points;
    for (int i = 3 + upTo(6); i > 0; --i) points.push_back(point2(0.8));
    Prism shape{convexHull(points),
                SlopedPlane::level(-0.7),
                {Vec2::Zero(), 0.5, {between(-0.3, 0.3), between(-0.3, 0.3)}}};
    return transformed(convexPrismFrom(shape).value(), motion(half));
  }
  ConvexPolyhedron polyhedron(double half) { return oneIn(2) ? box(half) : prism(half); }
  Cylinder cylinder(double half) {
    const Vec3 a = point(half);
    return {a, a + between(0.05, 1.5) * direction(), between(0.02, 0.5)};
  }
  Solid solid(double half) {
    if (oneIn(2)) return polyhedron(half);
    return cylinder(half);
  }

 private:
  std::mt19937_64 bits_;
};

}  // namespace baywright::test
