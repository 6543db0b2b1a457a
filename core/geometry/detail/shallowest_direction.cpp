// SPDX-License-Identifier: Apache-2.0
#include "geometry/detail/shallowest_direction.h"

#include <array>
#include <queue>

namespace baywright::detail {

namespace {

constexpr int kMostTriangles = 20000;

struct Direction {
  Vec3 normal;
  Vec3 farthest;  ///< point of second - first farthest along normal

  double overlap() const { return normal.dot(farthest); }
};

struct Patch {
  std::array<Direction, 3> corners;
  double bound = 0;  ///< no direction in the patch has a smaller overlap

  bool operator<(const Patch& other) const { return bound > other.bound; }  // least bound on top
};

/// Least n_i . x over the corners, for the best single choice of x among the corners' farthest points and
/// their mean.
double boundOf(const std::array<Direction, 3>& corners) {
  const auto least = [&](const Vec3& x) {
    return std::min({corners[0].normal.dot(x), corners[1].normal.dot(x), corners[2].normal.dot(x)});
  };
  const Vec3 mean = (corners[0].farthest + corners[1].farthest + corners[2].farthest) / 3;
  const double bound = std::max(
      {least(corners[0].farthest), least(corners[1].farthest), least(corners[2].farthest), least(mean)});
  // The weights of a unit vector sum to at least 1, and to at most sqrt(3) in an octant.
  return bound < 0 ? bound * std::sqrt(3.0) : bound;
}

class Descent {
 public:
  Descent(const Farthest& first, const Farthest& second, const Separation& known, double tolerance)
      : first_(first), second_(second), best_(known), tolerance_(tolerance) {}

  Separation run() {
    for (int octant = 0; octant < 8; ++octant) {
      const Vec3 x = (octant & 1 ? -1.0 : 1.0) * Vec3::UnitX();
      const Vec3 y = (octant & 2 ? -1.0 : 1.0) * Vec3::UnitY();
      const Vec3 z = (octant & 4 ? -1.0 : 1.0) * Vec3::UnitZ();
      open({look(x), look(y), look(z)});
    }
    for (int count = 0; count < kMostTriangles && !open_.empty(); ++count) {
      const Patch patch = open_.top();
      open_.pop();
      if (patch.bound >= -best_.gap - tolerance_) break;
      split(patch);
    }
    return best_;
  }

 private:
  Direction look(const Vec3& way) {
    const Vec3 normal = way.normalized();
    const Direction direction{normal, second_(normal) - first_(-normal)};
    best_.offer(-direction.overlap(), normal);
    return direction;
  }
  void open(const std::array<Direction, 3>& corners) {
    const double bound = boundOf(corners);
    if (bound < -best_.gap - tolerance_) open_.push({corners, bound});
  }
  void split(const Patch& patch) {
    const auto& [a, b, c] = patch.corners;
    const Direction ab = look(a.normal + b.normal);
    const Direction bc = look(b.normal + c.normal);
    const Direction ca = look(c.normal + a.normal);
    open({a, ab, ca});
    open({b, bc, ab});
    open({c, ca, bc});
    open({ab, bc, ca});
  }

  const Farthest& first_;
  const Farthest& second_;
  Separation best_;
  double tolerance_;
  std::priority_queue<Patch> open_;
};

}  // namespace

Separation shallowestDirection(const Farthest& first, const Farthest& second, const Separation& known,
                               double tolerance) {
  return Descent(first, second, known, tolerance).run();
}

}  // namespace baywright::detail
