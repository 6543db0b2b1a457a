// SPDX-License-Identifier: Apache-2.0
#include "geometry/detail/shallowest_direction.h"

#include <Eigen/LU>
#include <array>
#include <cmath>
#include <limits>
#include <queue>
#include <utility>

namespace baywright::detail {

namespace {

constexpr int kMostTriangles = 4000;  // seven times what random cylinders ever took

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

/// Overlap that a corner direction (row) has at least, by the farthest point of a corner (column).
using Game = std::array<std::array<double, 3>, 3>;

double leastRow(const Game& game, const std::array<double, 3>& weights) {
  const auto row = [&](std::size_t i) {
    return game[i][0] * weights[0] + game[i][1] * weights[1] + game[i][2] * weights[2];
  };
  return std::min({row(0), row(1), row(2)});
}

/// Largest least row over mixtures of the columns j and k: it lies at an end or where two rows are equal.
double bestOfTwo(const Game& game, std::size_t j, std::size_t k) {
  double best = -std::numeric_limits<double>::infinity();
  const auto offer = [&](double share) {
    if (!(share >= 0 && share <= 1)) return;
    std::array<double, 3> weights{};
    weights[j] = share;
    weights[k] = 1 - share;
    best = std::max(best, leastRow(game, weights));
  };
  offer(0);
  offer(1);
  for (const auto& [r, s] : {std::pair<std::size_t, std::size_t>{0, 1}, {1, 2}, {2, 0}}) {
    const double atK = game[s][k] - game[r][k];
    const double atJ = game[r][j] - game[s][j];
    offer(atK / (atJ + atK));
  }
  return best;
}

/// The mixture of all three columns for which the rows are equal, if it is one.
double evenMixture(const Game& game) {
  Mat3 rows;
  for (Eigen::Index i = 0; i < 3; ++i) {
    for (Eigen::Index j = 0; j < 3; ++j)
      rows(i, j) = game[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)];
  }
  const Vec3 a = rows.row(0) - rows.row(1);
  const Vec3 b = rows.row(0) - rows.row(2);
  const Vec3 weights = a.cross(b);
  const double sum = weights.sum();
  const Vec3 share = weights / sum;
  if (!(share.minCoeff() >= 0)) return -std::numeric_limits<double>::infinity();
  return leastRow(game, {share.x(), share.y(), share.z()});
}

/// No direction between the corners has a smaller overlap: the value of the game in which we mix farthest
/// points and the direction is then chosen against us. (Any mixture is valid; the best one makes the bound
/// quadratic.)
double boundOf(const std::array<Direction, 3>& corners) {
  Game game;
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t j = 0; j < 3; ++j) game[i][j] = corners[i].normal.dot(corners[j].farthest);
  }
  const double bound =
      std::max({bestOfTwo(game, 0, 1), bestOfTwo(game, 1, 2), bestOfTwo(game, 2, 0), evenMixture(game)});
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

/// Newton's method on the sphere for the direction along which the farthest point itself lies: the search
/// pins the overlap to the square of its angle only, the touching points need the angle. Where the shapes
/// have flat sides or edges there is no such smooth minimum, and the direction stays.
Separation polished(const Farthest& first, const Farthest& second, const Separation& found) {
  constexpr double kStep =
      1e-6;  // of the difference quotients; the search is nearer than this scale of curvature
  Separation best = found;
  for (int round = 0; round < 6; ++round) {
    const Vec3 n = best.normal;
    const Vec3 u = anyPerpendicular(n);
    const Vec3 v = n.cross(u);
    const auto tangent = [&](const Vec3& way) {
      const Vec3 normal = way.normalized();
      const Vec3 x = second(normal) - first(-normal);
      // Across the direction itself, in the fixed frame u, v.
      const Vec3 across = x - normal * x.dot(normal);
      return Vec2(across.dot(u), across.dot(v));
    };
    Mat2 slope;
    slope.col(0) = (tangent(n + kStep * u) - tangent(n - kStep * u)) / (2 * kStep);
    slope.col(1) = (tangent(n + kStep * v) - tangent(n - kStep * v)) / (2 * kStep);
    const Vec2 move = -slope.fullPivLu().solve(tangent(n));
    if (!(move.norm() < 0.1)) break;
    const Vec3 next = (n + move.x() * u + move.y() * v).normalized();
    const double gap = -next.dot(second(next) - first(-next));
    if (!(gap >= best.gap)) break;
    best = {gap, next};
  }
  return best;
}

}  // namespace

Separation shallowestDirection(const Farthest& first, const Farthest& second, const Separation& known,
                               double tolerance) {
  return polished(first, second, Descent(first, second, known, tolerance).run());
}

}  // namespace baywright::detail
