// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_things.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "survey/scan_cube_map.h"

namespace baywright {
namespace {

constexpr double kCube = 0.10;     ///< metres; things nearer than that to each other are one
constexpr double kSurface = 0.06;  ///< metres from a surface that still belong to it
constexpr double kNoises = 4;      ///< or so many times the noise
constexpr std::size_t kFewestInCube = 2;
constexpr std::size_t kFewestCubes = 6;
constexpr double kTouches = 0.15;   ///< metres to floor, ceiling or wall that are taken for none
constexpr double kSmallest = 0.10;  ///< metres of a box's longest side
constexpr double kTrimmed = 0.005;  ///< share of a group's points that may lie out of its box, each side

class Sorter {
 public:
  Sorter(const LevelScan& scan, const ScanOutline& outline, const std::vector<CeilingPlane>& ceiling,
         double noise)
      : scan_(scan), outline_(outline), ceiling_(ceiling), near_(std::max(kSurface, kNoises * noise)) {}

  ScanThings sort() {
    collect();
    const auto group = groups();
    propose(group);
    return std::move(things_);
  }

 private:
  double ceilingAt(const Vec2& p) const {
    double lowest = std::numeric_limits<double>::infinity();
    for (const CeilingPlane& plane : ceiling_)
      if (plane.covers(p)) lowest = std::min(lowest, plane.at(p));
    return std::isfinite(lowest) ? lowest : scan_.ceiling;
  }

  /// Between a lower and a higher part of the ceiling, where they meet.
  bool isOnStep(const Vec3& p) const {
    if (ceiling_.size() < 2 || p.z() < RoofMap::kLeastHeadroom) return false;
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    for (const double dx : {-near_, 0.0, near_})
      for (const double dy : {-near_, 0.0, near_}) {
        const double top = ceilingAt(flat(p) + Vec2(dx, dy));
        low = std::min(low, top);
        high = std::max(high, top);
      }
    return p.z() > low - near_ && p.z() < high + near_;
  }

  double wallDistance(const Vec2& p) const { return closestOnBoundary({outline_.corners, {}}, p).distance; }

  /// Walls are asked by squares of the plan: far from all of them in most.
  void collect() {
    CubeMap squares;
    std::vector<signed char> where;  // -1 outside, 0 near a wall, 1 inside
    for (const Eigen::Vector3f& sample : scan_.samples) {
      CubeMap::Cube at = cubeAt(sample, kCube);
      at.z() = 0;
      const std::uint32_t square = squares.indexOf(at);
      if (square == where.size()) {
        const Vec2 middle = kCube * (Vec2(at.x(), at.y()) + Vec2(0.5, 0.5));
        const bool isIn = locate(outline_.corners, middle) == Location::Inside;
        const bool isFar = wallDistance(middle) > near_ + 0.71 * kCube;
        where.push_back(static_cast<signed char>(!isFar ? 0 : isIn ? 1 : -1));
      }
      sortOne(sample.cast<double>(), sample, where[square]);
    }
  }

  void sortOne(const Vec3& p, const Eigen::Vector3f& sample, int where) {
    const Vec2 onPlan = flat(p);
    if (where == 0) {
      if (wallDistance(onPlan) <= near_) {
        ++(p.z() < ceilingAt(onPlan) + near_ ? things_.surface : things_.outside);
        return;
      }
      where = locate(outline_.corners, onPlan) == Location::Inside ? 1 : -1;
    }
    if (where < 0) {
      ++things_.outside;
      return;
    }
    const double top = ceilingAt(onPlan);
    if (std::abs(p.z()) <= near_ || std::abs(p.z() - top) <= near_ || isOnStep(p))
      ++things_.surface;
    else if (p.z() < 0 || p.z() > top)
      ++things_.outside;
    else
      loose_.push_back(sample);
  }

  /// Each loose sample's group, kNoPatch for stray ones.
  std::vector<std::uint32_t> groups() {
    CubeMap cubes;
    std::vector<std::uint32_t> counts;
    std::vector<std::uint32_t> cubeOf;
    for (const Eigen::Vector3f& p : loose_) {
      const std::uint32_t cube = cubes.indexOf(cubeAt(p, kCube));
      if (cube == counts.size()) counts.push_back(0);
      ++counts[cube];
      cubeOf.push_back(cube);
    }
    std::vector<std::uint32_t> groupOf(counts.size(), kNoPatch);
    for (std::uint32_t start = 0; start < counts.size(); ++start) {
      if (groupOf[start] != kNoPatch || counts[start] < kFewestInCube) continue;
      std::vector<std::uint32_t> members{start};
      groupOf[start] = groupCount_;
      for (std::size_t i = 0; i < members.size(); ++i)
        for (int n = 0; n < 27; ++n) {
          const auto next =
              cubes.existing(cubes.cube(members[i]) + CubeMap::Cube(n % 3 - 1, n / 3 % 3 - 1, n / 9 - 1));
          if (!next || groupOf[*next] != kNoPatch || counts[*next] < kFewestInCube) continue;
          groupOf[*next] = groupCount_;
          members.push_back(*next);
        }
      sizes_.push_back(members.size());
      ++groupCount_;
    }
    for (std::uint32_t& cube : cubeOf) cube = groupOf[cube];
    return cubeOf;
  }

  void propose(const std::vector<std::uint32_t>& groupOf) {
    std::vector<std::vector<Vec3>> members(groupCount_);
    for (std::size_t i = 0; i < loose_.size(); ++i) {
      const bool isThing = groupOf[i] != kNoPatch && sizes_[groupOf[i]] >= kFewestCubes;
      ++(isThing ? things_.inThings : things_.unrecognised);
      if (isThing) members[groupOf[i]].push_back(loose_[i].cast<double>());
    }
    std::vector<std::pair<double, Fixture>> found;
    for (const auto& points : members) {
      if (points.empty()) continue;
      const auto fixture = boxed(points);
      if (fixture)
        found.emplace_back(volume(*fixture), *fixture);
      else {
        things_.inThings -= points.size();
        things_.unrecognised += points.size();
      }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    for (auto& [size, fixture] : found)
      if (things_.fixtures.size() < kMostScanThings) things_.fixtures.push_back(std::move(fixture));
  }

  static double volume(const Fixture& fixture) {
    const auto& box = std::get<BoxShape>(fixture.shape);
    return box.width * box.depth * (fixture.top.value - fixture.bottom.value);
  }

  struct Span {
    double low = 0;
    double high = 0;
    double size() const { return high - low; }
  };

  template <class Place>
  static Span spanOf(const std::vector<Vec3>& points, const Place& place) {
    std::vector<double> values;
    for (const Vec3& p : points) values.push_back(place(p));
    const auto trimmed = static_cast<std::size_t>(kTrimmed * static_cast<double>(values.size()));
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(trimmed), values.end());
    const double low = values[trimmed];
    const std::size_t upper = values.size() - 1 - trimmed;
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(upper), values.end());
    return {low, values[upper]};
  }

  /// Smallest on the plan among the walls' directions and every five degrees.
  BoxShape smallestBox(const std::vector<Vec3>& points) const {
    std::vector<Vec2> directions;
    for (const ScanLine& side : outline_.sides) directions.push_back(side.along());
    const std::size_t preferred = directions.size();
    for (int degrees = 0; degrees < 90; degrees += 5)
      directions.emplace_back(std::cos(degrees * kPi / 180), std::sin(degrees * kPi / 180));
    BoxShape best;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t d = 0; d < directions.size(); ++d) {
      const Vec2 u = directions[d];
      const Span along = spanOf(points, [&](const Vec3& p) { return u.dot(flat(p)); });
      const Span across = spanOf(points, [&](const Vec3& p) { return leftOf(u).dot(flat(p)); });
      constexpr double kAskew = 1.15;  // a box askew must be clearly smaller than one along the walls
      const double size = (d < preferred ? 1 : kAskew) * along.size() * across.size();
      if (size >= least) continue;
      least = size;
      best.centre = 0.5 * (along.low + along.high) * u + 0.5 * (across.low + across.high) * leftOf(u);
      best.heading = std::atan2(u.y(), u.x());
      best.width = std::max(along.size(), 0.01);
      best.depth = std::max(across.size(), 0.01);
    }
    return best;
  }

  std::optional<Fixture> boxed(const std::vector<Vec3>& points) const {
    BoxShape box = smallestBox(points);
    Span height = spanOf(points, [](const Vec3& p) { return p.z(); });
    if (std::max({box.width, box.depth, height.size()}) < kSmallest) return std::nullopt;
    const double top = ceilingAt(box.centre);
    const bool stands = height.low < near_ + kTouches;
    const bool hangs = height.high > top - near_ - kTouches;
    if (stands) height.low = 0;
    if (hangs) height.high = std::max(top, height.low + 0.01);
    toWalls(box);
    Fixture fixture;
    fixture.kind = kindOf(box, height, stands, hangs);
    fixture.shape = box;
    fixture.bottom = {height.low, Instrument::Scan, true};
    fixture.top = {std::max(height.high, height.low + 0.01), Instrument::Scan, true};
    fixture.planInstrument = Instrument::Scan;
    return fixture;
  }

  /// A box that nearly touches a wall was parted from it by the band that the wall's own points take.
  void toWalls(BoxShape& box) const {
    const Vec2 u(std::cos(box.heading), std::sin(box.heading));
    for (const ScanLine& side : outline_.sides)
      for (const bool isWidth : {true, false}) {
        const Vec2 axis = isWidth ? u : leftOf(u);
        double& size = isWidth ? box.width : box.depth;
        const double facing = side.normal.dot(axis);
        if (std::abs(facing) < 0.996) continue;
        const double gap = side.distance(box.centre) - size / 2;
        if (gap <= 0 || gap > near_ + 0.05) continue;
        box.centre -= 0.5 * gap * side.normal;
        size += gap;
      }
  }

  static FixtureKind kindOf(const BoxShape& box, const Span& height, bool stands, bool hangs) {
    const double longest = std::max(box.width, box.depth);
    const double shortest = std::min(box.width, box.depth);
    constexpr double kOverhead = 1.8;
    if (stands && hangs) return longest < 0.7 ? FixtureKind::Column : FixtureKind::Shelving;
    if (stands) return height.high > 1.2 && shortest < 0.9 ? FixtureKind::Shelving : FixtureKind::Furniture;
    if (height.low < kOverhead) return FixtureKind::Other;
    if (hangs && longest > 1.7 && longest > 3 * shortest) return FixtureKind::Beam;
    if (longest > 1.7 && longest > 3 * shortest) return FixtureKind::Duct;
    return height.size() < 0.5 && longest < 1.7 ? FixtureKind::Light : FixtureKind::Other;
  }

  const LevelScan& scan_;
  const ScanOutline& outline_;
  const std::vector<CeilingPlane>& ceiling_;
  double near_;
  std::vector<Eigen::Vector3f> loose_;
  std::vector<std::size_t> sizes_;
  std::uint32_t groupCount_ = 0;
  ScanThings things_;
};

}  // namespace

ScanThings thingsOf(const LevelScan& scan, const ScanOutline& outline,
                    const std::vector<CeilingPlane>& ceiling, double noise) {
  return Sorter(scan, outline, ceiling, noise).sort();
}

}  // namespace baywright
