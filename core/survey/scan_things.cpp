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
constexpr double kJoined = 0.15;    ///< metres between boxes on the plan that may be one
constexpr double kJoinedUp = 0.40;  ///< and in height: boards of a rack
constexpr double kGrown = 1.5;      ///< times the volume of two boxes that the box round both may have
constexpr double kAdded = 0.08;     ///< or so many cubic metres more
constexpr double kDeepest = 0.90;   ///< metres that a thing reaches back to a wall it hides
constexpr double kWallSeen = 0.20;  ///< share of the wall behind it that may be seen
constexpr std::size_t kMostTrimmed = 25;
constexpr std::size_t kMostJoined = 400;  ///< things; more are not joined, for each pair is looked at
constexpr double kTrimmed = 0.005;  ///< share of a group's points that may lie out of its box, each side

class Sorter {
 public:
  Sorter(const LevelScan& scan, const ScanOutline& outline, const std::vector<CeilingPlane>& ceiling,
         const std::vector<WallGrid>& grids, double noise)
      : scan_(scan),
        outline_(outline),
        ceiling_(ceiling),
        grids_(grids),
        near_(std::max(kSurface, kNoises * noise)) {}

  ScanThings sort(const Progress& progress) {
    collect(progress);
    if (progress.stop()) return {};
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
  void collect(const Progress& progress) {
    CubeMap squares;
    std::vector<signed char> where;  // -1 outside, 0 near a wall, 1 inside
    for (std::size_t i = 0; i < scan_.samples.size(); ++i) {
      if (i % kSamplesBetweenLooks == 0 && progress.stop()) return;
      const Eigen::Vector3f& sample = scan_.samples[i];
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
    const double above = p.z() - scan_.floorAt(onPlan);
    if (std::abs(above) <= near_ || std::abs(p.z() - top) <= near_ || isOnStep(p))
      ++things_.surface;
    else if (above < 0 || p.z() > top)
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

  struct Span {
    double low = 0;
    double high = 0;
    double size() const { return high - low; }
  };

  struct Thing {
    std::vector<Vec3> points;
    BoxShape box;
    Span height;

    double volume() const { return box.width * box.depth * std::max(height.size(), 0.01); }
  };

  void propose(const std::vector<std::uint32_t>& groupOf) {
    std::vector<std::vector<Vec3>> members(groupCount_);
    for (std::size_t i = 0; i < loose_.size(); ++i) {
      const bool isThing = groupOf[i] != kNoPatch && sizes_[groupOf[i]] >= kFewestCubes;
      ++(isThing ? things_.inThings : things_.unrecognised);
      if (isThing) members[groupOf[i]].push_back(loose_[i].cast<double>());
    }
    std::vector<Thing> found;
    for (auto& points : members)
      if (!points.empty()) found.push_back(thingOf(std::move(points)));
    join(found);
    const auto isSmall = [](const Thing& thing) {
      return std::max({thing.box.width, thing.box.depth, thing.height.size()}) < kLeastThing;
    };
    things_.small = static_cast<std::size_t>(std::count_if(found.begin(), found.end(), isSmall));
    std::erase_if(found, isSmall);
    std::stable_sort(found.begin(), found.end(),
                     [](const Thing& a, const Thing& b) { return a.volume() > b.volume(); });
    things_.tooMany = found.size() - std::min(found.size(), kMostScanThings);
    found.resize(std::min(found.size(), kMostScanThings));
    for (const Thing& thing : found) things_.fixtures.push_back(fixtureOf(thing));
  }

  /// Boxes side by side that one box round both describes about as well.
  void join(std::vector<Thing>& found) const {
    if (found.size() > kMostJoined) return;
    for (bool changed = true; changed;) {
      changed = false;
      for (std::size_t i = 0; i < found.size(); ++i)
        for (std::size_t j = i + 1; j < found.size(); ++j) {
          if (!touch(found[i], found[j])) continue;
          std::vector<Vec3> both = found[i].points;
          both.insert(both.end(), found[j].points.begin(), found[j].points.end());
          Thing joined = thingOf(std::move(both));
          const double apart = found[i].volume() + found[j].volume();
          if (joined.volume() > std::max(kGrown * apart, apart + kAdded)) continue;
          found[i] = std::move(joined);
          found.erase(found.begin() + static_cast<std::ptrdiff_t>(j));
          changed = true;
          --j;
        }
    }
  }

  static bool touch(const Thing& a, const Thing& b) {
    if (a.height.low > b.height.high + kJoinedUp || b.height.low > a.height.high + kJoinedUp) return false;
    const Ring first = ringOf(a.box);
    const Ring second = ringOf(b.box);
    if (locate(first, b.box.centre) != Location::Outside || locate(second, a.box.centre) != Location::Outside)
      return true;
    for (std::size_t i = 0; i < 4; ++i)
      if (closestOnBoundary({first, {}}, Segment2{second[i], second[(i + 1) % 4]}).distance < kJoined)
        return true;
    return false;
  }

  static Ring ringOf(const BoxShape& box) {
    const Vec2 u = 0.5 * box.width * Vec2(std::cos(box.heading), std::sin(box.heading));
    const Vec2 v = 0.5 * box.depth * leftOf(Vec2(std::cos(box.heading), std::sin(box.heading)));
    return {box.centre - u - v, box.centre + u - v, box.centre + u + v, box.centre - u + v};
  }

  template <class Place>
  static Span spanOf(const std::vector<Vec3>& points, const Place& place) {
    std::vector<double> values;
    for (const Vec3& p : points) values.push_back(place(p));
    // A far end has few of the points: more may not be left out than stray.
    const auto trimmed =
        std::min(kMostTrimmed, static_cast<std::size_t>(kTrimmed * static_cast<double>(values.size())));
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

  Thing thingOf(std::vector<Vec3> points) const {
    Thing thing;
    thing.box = smallestBox(points);
    thing.height = spanOf(points, [](const Vec3& p) { return p.z(); });
    thing.points = std::move(points);
    return thing;
  }

  Fixture fixtureOf(const Thing& thing) const {
    BoxShape box = thing.box;
    Span height = thing.height;
    const double top = ceilingAt(box.centre);
    const bool stands = height.low < scan_.floorAt(box.centre) + near_ + kTouches;
    const bool hangs = height.high > top - near_ - kTouches;
    if (stands) height.low = 0;
    if (hangs) height.high = std::max(top, height.low + 0.01);
    toWalls(box, height);
    Fixture fixture;
    fixture.kind = kindOf(box, height, stands, hangs);
    fixture.shape = box;
    fixture.bottom = {height.low, Instrument::Scan, true};
    fixture.top = {std::max(height.high, height.low + 0.01), Instrument::Scan, true};
    fixture.planInstrument = Instrument::Scan;
    return fixture;
  }

  /// Whether a box keeps the wall of side `index`, as far as it faces it, from being seen.
  bool hides(std::size_t index, const BoxShape& box, const Span& height) const {
    const WallGrid& grid = grids_[index];
    const Vec2 along = -outline_.sides[index].along();
    const double middle = along.dot(box.centre - outline_.corners[index]);
    const Vec2 u(std::cos(box.heading), std::sin(box.heading));
    const double half = 0.5 * (std::abs(u.dot(along)) > 0.5 ? box.width : box.depth);
    constexpr double kWithin = 0.08;  // the edges of its shadow are not straight
    double seen = 0;
    double all = 0;
    for (int column = 0; column < grid.columns; ++column)
      for (int row = 0; row < grid.rows; ++row) {
        const double t = (column + 0.5) * kWallCell;
        const double z = (row + 0.5) * kWallCell;
        if (std::abs(t - middle) > half - kWithin || z < height.low + kWithin || z > height.high - kWithin)
          continue;
        all += 1;
        seen += grid.isWall[grid.at(column, row)] ? 1 : 0;
      }
    if (all == 0 || seen > kWallSeen * all) return false;
    return std::none_of(grid.beyond.begin(), grid.beyond.end(), [&](const WallPoint& p) {
      return std::abs(p.along - middle) < half && p.height > height.low && p.height < height.high;
    });
  }

  /// A box that nearly touches a wall was parted from it by the band that the wall's own points take.
  void toWalls(BoxShape& box, const Span& height) const {
    const Vec2 u(std::cos(box.heading), std::sin(box.heading));
    for (std::size_t i = 0; i < outline_.sides.size(); ++i)
      for (const bool isWidth : {true, false}) {
        const ScanLine& side = outline_.sides[i];
        const Vec2 axis = isWidth ? u : leftOf(u);
        double& size = isWidth ? box.width : box.depth;
        const double facing = side.normal.dot(axis);
        if (std::abs(facing) < 0.996) continue;
        const double gap = side.distance(box.centre) - size / 2;
        if (gap <= 0 || gap > kDeepest) continue;
        const double along = -side.along().dot(box.centre - outline_.corners[i]);
        if (along < 0 || along > grids_[i].length) continue;
        if (gap > near_ + 0.05 && !hides(i, box, height)) continue;
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
  const std::vector<WallGrid>& grids_;
  double near_;
  std::vector<Eigen::Vector3f> loose_;
  std::vector<std::size_t> sizes_;
  std::uint32_t groupCount_ = 0;
  ScanThings things_;
};

}  // namespace

ScanThings thingsOf(const LevelScan& scan, const ScanOutline& outline,
                    const std::vector<CeilingPlane>& ceiling, const std::vector<WallGrid>& grids,
                    double noise, const Progress& progress) {
  return Sorter(scan, outline, ceiling, grids, noise).sort(progress);
}

}  // namespace baywright
