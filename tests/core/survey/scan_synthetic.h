// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>
#include <functional>
#include <random>
#include <vector>

#include "geometry/polygon.h"
#include "survey/scan_geometry.h"

/// Scans of rooms that never were, with everything known of them.
namespace baywright::testing {

/// Part of a wall that is not there, metres: along the wall from its start, and heights.
struct WallHole {
  std::size_t wall = 0;
  double from = 0;
  double to = 0;
  double bottom = 0;
  double top = 0;
  double reveal = 0;      ///< depth of its sides, metres; 0: nothing is seen of them
  bool isClosed = false;  ///< a leaf stands at the back of the reveal
};

/// A thing in the room: its sides and top are seen.
struct ScannedBox {
  Vec3 low = Vec3::Zero();
  Vec3 high = Vec3::Zero();
};

struct FakeScan {
  Ring outline;  ///< counter-clockwise
  std::function<double(const Vec2&)> ceiling = [](const Vec2&) { return 2.6; };
  std::vector<WallHole> holes;
  std::vector<ScannedBox> things;
  double noise = 0.005;   ///< standard deviation along each axis, metres
  double spacing = 0.03;  ///< metres between points
  double yaw = 0;         ///< radians
  double tilt = 0;        ///< radians, about a level axis that lies askew
  Vec3 shift = Vec3::Zero();
  int outliers = 0;  ///< some inside the room, some kilometres away
  unsigned seed = 1;
};

class FakeScanner {
 public:
  explicit FakeScanner(const FakeScan& fake) : fake_(fake), engine_(fake.seed) {}

  /// In metres, z up but for the tilt.
  ScanGeometry scan() {
    walls();
    floorAndCeiling();
    for (const ScannedBox& thing : fake_.things) box(thing);
    outliers();
    return std::move(scan_);
  }

 private:
  double uniform() { return static_cast<double>(engine_()) / 4294967296.0; }
  double normal() {  // Box and Muller; the library's distribution differs between makers
    return std::sqrt(-2 * std::log(1 - uniform())) * std::cos(2 * kPi * uniform());
  }

  void add(const Vec3& p) {
    const Vec3 noisy = p + fake_.noise * Vec3(normal(), normal(), normal());
    const Eigen::AngleAxisd turn(fake_.yaw, Vec3::UnitZ());
    const Eigen::AngleAxisd lean(fake_.tilt, Vec3(0.8, 0.6, 0));
    scan_.points.push_back((lean * (turn * noisy) + fake_.shift).cast<float>());
  }

  /// Nothing is seen within a thing, nor between it and what it stands against.
  static constexpr double kHidden = 0.04;

  bool isInThing(const Vec3& p) const {
    for (const ScannedBox& thing : fake_.things)
      if ((p.array() > thing.low.array() - kHidden).all() && (p.array() < thing.high.array() + kHidden).all())
        return true;
    return false;
  }

  void walls() {
    for (std::size_t w = 0; w < fake_.outline.size(); ++w) {
      const Vec2 a = fake_.outline[w];
      const Vec2 b = fake_.outline[(w + 1) % fake_.outline.size()];
      const double length = (b - a).norm();
      for (double t = fake_.spacing / 2; t < length; t += fake_.spacing) {
        const Vec2 p = a + t / length * (b - a);
        for (double z = fake_.spacing / 2; z < fake_.ceiling(p); z += fake_.spacing) {
          bool isHole = isInThing(raised(p, z));
          for (const WallHole& hole : fake_.holes)
            isHole |= hole.wall == w && t > hole.from && t < hole.to && z > hole.bottom && z < hole.top;
          if (!isHole) add(raised(p, z));
        }
      }
    }
    for (const WallHole& hole : fake_.holes) reveal(hole);
  }

  void reveal(const WallHole& hole) {
    const Vec2 a = fake_.outline[hole.wall];
    const Vec2 along = (fake_.outline[(hole.wall + 1) % fake_.outline.size()] - a).normalized();
    const auto at = [&](double t, double z, double depth) {
      add(raised(Vec2(a + t * along - depth * leftOf(along)), z));
    };
    const double step = fake_.spacing;
    for (double depth = step / 2; depth < hole.reveal; depth += step) {
      for (double z = hole.bottom + step / 2; z < hole.top; z += step)
        for (const double t : {hole.from, hole.to}) at(t, z, depth);
      for (double t = hole.from + step / 2; t < hole.to; t += step)
        for (const double z : {hole.bottom, hole.top}) at(t, z, depth);
    }
    if (!hole.isClosed) return;
    for (double t = hole.from + step / 2; t < hole.to; t += step)
      for (double z = hole.bottom + step / 2; z < hole.top; z += step) at(t, z, hole.reveal);
  }

  void floorAndCeiling() {
    Vec2 low = fake_.outline[0];
    Vec2 high = low;
    for (const Vec2& p : fake_.outline) {
      low = low.cwiseMin(p);
      high = high.cwiseMax(p);
    }
    for (double x = low.x() + fake_.spacing / 2; x < high.x(); x += fake_.spacing)
      for (double y = low.y() + fake_.spacing / 2; y < high.y(); y += fake_.spacing) {
        const Vec2 p(x, y);
        if (locate(fake_.outline, p) != Location::Inside) continue;
        if (!isInThing({x, y, 0})) add({x, y, 0});
        const double top = fake_.ceiling(p);
        if (!isInThing({x, y, top})) add({x, y, top});
        // The face of a step in the ceiling.
        const double beside = fake_.ceiling(p + Vec2(fake_.spacing, 0));
        if (std::abs(beside - top) > 0.1)
          for (double z = std::min(top, beside); z < std::max(top, beside); z += fake_.spacing)
            add({x + fake_.spacing / 2, y, z});
      }
  }

  void box(const ScannedBox& b) {
    const Vec3 size = b.high - b.low;
    for (int axis = 0; axis < 3; ++axis) {
      const int u = (axis + 1) % 3;
      const int v = (axis + 2) % 3;
      for (double s = fake_.spacing / 2; s < size[u]; s += fake_.spacing)
        for (double t = fake_.spacing / 2; t < size[v]; t += fake_.spacing)
          for (const double end : {b.low[axis], b.high[axis]}) {
            Vec3 p = b.low;
            p[axis] = end;
            p[u] += s;
            p[v] += t;
            const bool isFree =
                closestOnBoundary({fake_.outline, {}}, flat(p)).distance > kHidden || axis == 2;
            const bool isSeen = isFree && locate(fake_.outline, flat(p)) == Location::Inside &&
                                p.z() > 0.005 && p.z() < fake_.ceiling(flat(p)) - 0.005;
            if (isSeen) add(p);
          }
    }
  }

  void outliers() {
    for (int i = 0; i < fake_.outliers; ++i) {
      const double reach = i % 3 == 0 ? 4000 : i % 3 == 1 ? 25 : 3;
      add(reach * (2 * Vec3(uniform(), uniform(), uniform()) - Vec3::Ones()));
    }
  }

  const FakeScan& fake_;
  std::mt19937 engine_;
  ScanGeometry scan_;
};

inline ScanGeometry scanned(const FakeScan& fake) {
  return FakeScanner(fake).scan();
}

inline FakeScan rectangleRoom(double length, double width) {
  FakeScan fake;
  fake.outline = {{0, 0}, {length, 0}, {length, width}, {0, width}};
  return fake;
}

/// 7.2 by 5.4 m without a 2.7 by 2.1 m corner.
inline FakeScan lShapedRoom() {
  FakeScan fake;
  fake.outline = {{0, 0}, {7.2, 0}, {7.2, 3.3}, {4.5, 3.3}, {4.5, 5.4}, {0, 5.4}};
  return fake;
}

}  // namespace baywright::testing
