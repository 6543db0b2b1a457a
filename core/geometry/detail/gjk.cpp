// SPDX-License-Identifier: Apache-2.0
#include "geometry/detail/gjk.h"

#include <array>
#include <cmath>

namespace baywright::detail {

namespace {

/// A point of the difference of the shapes, and the two points that it comes from.
struct Corner {
  Vec3 first;
  Vec3 second;
  Vec3 apart() const { return first - second; }
};

/// Up to four corners, and the weights of their point nearest to the origin.
struct Simplex {
  std::array<Corner, 4> corners;
  std::array<double, 4> weights{};
  int size = 0;

  Vec3 apartOf(int i) const { return corners[static_cast<std::size_t>(i)].apart(); }
  void add(const Corner& corner) { corners[static_cast<std::size_t>(size++)] = corner; }
};

struct Weights {
  std::array<double, 4> share{};
  double squared = std::numeric_limits<double>::infinity();
};

void offer(Weights& best, const Simplex& s, const std::array<double, 4>& share) {
  Vec3 point = Vec3::Zero();
  for (int i = 0; i < s.size; ++i) point += share[static_cast<std::size_t>(i)] * s.apartOf(i);
  if (point.squaredNorm() < best.squared) best = {share, point.squaredNorm()};
}

void offerEdge(Weights& best, const Simplex& s, int i, int j) {
  const Vec3 a = s.apartOf(i);
  const Vec3 along = s.apartOf(j) - a;
  const double squared = along.squaredNorm();
  const double t = squared > 0 ? std::clamp(-along.dot(a) / squared, 0.0, 1.0) : 0;
  std::array<double, 4> share{};
  share[static_cast<std::size_t>(i)] = 1 - t;
  share[static_cast<std::size_t>(j)] = t;
  offer(best, s, share);
}

/// The foot of the origin, if it lies inside the triangle.
void offerTriangle(Weights& best, const Simplex& s, int i, int j, int k) {
  const Vec3 a = s.apartOf(i);
  const Vec3 b = s.apartOf(j);
  const Vec3 c = s.apartOf(k);
  const Vec3 normal = (b - a).cross(c - a);
  const double squared = normal.squaredNorm();
  if (!(squared > 0)) return;
  const double atA = normal.dot(b.cross(c)) / squared;
  const double atB = normal.dot(c.cross(a)) / squared;
  const double atC = 1 - atA - atB;
  if (atA < 0 || atB < 0 || atC < 0) return;
  std::array<double, 4> share{};
  share[static_cast<std::size_t>(i)] = atA;
  share[static_cast<std::size_t>(j)] = atB;
  share[static_cast<std::size_t>(k)] = atC;
  offer(best, s, share);
}

bool holdsOrigin(const Simplex& s) {
  if (s.size < 4) return false;
  for (int i = 0; i < 4; ++i) {
    const Vec3 a = s.apartOf((i + 1) % 4);
    const Vec3 normal = (s.apartOf((i + 2) % 4) - a).cross(s.apartOf((i + 3) % 4) - a);
    const double inner = normal.dot(s.apartOf(i) - a);
    const double origin = -normal.dot(a);
    if (!(inner * origin > 0)) return false;
  }
  return true;
}

/// Weights of the nearest point, over every corner, edge and triangle; four corners make few.
Weights nearestToOrigin(const Simplex& s) {
  Weights best;
  for (int i = 0; i < s.size; ++i) {
    std::array<double, 4> share{};
    share[static_cast<std::size_t>(i)] = 1;
    offer(best, s, share);
    for (int j = i + 1; j < s.size; ++j) {
      offerEdge(best, s, i, j);
      for (int k = j + 1; k < s.size; ++k) offerTriangle(best, s, i, j, k);
    }
  }
  return best;
}

Simplex reduced(const Simplex& s, const Weights& weights) {
  Simplex kept;
  for (std::size_t i = 0; i < static_cast<std::size_t>(s.size); ++i) {
    if (!(weights.share[i] > 0)) continue;
    kept.weights[static_cast<std::size_t>(kept.size)] = weights.share[i];
    kept.add(s.corners[i]);
  }
  return kept;
}

NearestPair pairOf(const Simplex& s) {
  NearestPair pair;
  pair.onFirst = pair.onSecond = Vec3::Zero();
  for (std::size_t i = 0; i < static_cast<std::size_t>(s.size); ++i) {
    pair.onFirst += s.weights[i] * s.corners[i].first;
    pair.onSecond += s.weights[i] * s.corners[i].second;
  }
  pair.squared = (pair.onFirst - pair.onSecond).squaredNorm();
  return pair;
}

}  // namespace

NearestPair nearestPairOfConvex(const Farthest& first, const Farthest& second, double tolerance) {
  constexpr int kMostSteps = 300;  // curved shapes take 10 to 60
  Simplex simplex;
  simplex.add({first(Vec3::UnitX()), second(-Vec3::UnitX())});
  simplex.weights[0] = 1;
  NearestPair best = pairOf(simplex);
  for (int step = 0; step < kMostSteps; ++step) {
    const double distance = std::sqrt(best.squared);
    if (distance <= tolerance) return {0, best.onFirst, best.onSecond};
    const Vec3 towards = (best.onSecond - best.onFirst) / distance;
    const Corner next{first(towards), second(-towards)};
    if (distance + next.apart().dot(towards) <= tolerance) return best;
    simplex.add(next);
    if (holdsOrigin(simplex)) return {0, best.onFirst, best.onSecond};
    simplex = reduced(simplex, nearestToOrigin(simplex));
    const NearestPair pair = pairOf(simplex);
    if (!(pair.squared < best.squared)) return best;  // rounding allows no further
    best = pair;
  }
  return best;
}

}  // namespace baywright::detail
