// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_ceiling.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "survey/scan_ceiling_regions.h"
#include "survey/scan_cube_map.h"
#include "survey/scan_robust.h"

namespace baywright {
namespace {

constexpr double kLowestCeiling = 1.3;  ///< metres; a slope may come down to knee walls
constexpr double kSteepest = 0.5;       ///< z of the normal: 60 degrees
constexpr double kColumn = 0.20;        ///< metres: columns of the plan in which the highest patch counts
constexpr double kOnPlane = 0.06;       ///< metres
constexpr double kLeastPart = 0.6;      ///< square metres
constexpr double kLeastShare = 0.03;    ///< of the floor
constexpr std::size_t kMostPlanes = 8;
constexpr std::size_t kMostTries = 300;

struct Candidate {
  Vec3 place = Vec3::Zero();
  Vec3 normal = Vec3::UnitZ();
  double area = 0;
  std::uint32_t patch = 0;
};

/// The highest lying patch over each column of the floor.
std::vector<Candidate> highest(const LevelScan& scan, const Ring& corners) {
  std::map<std::pair<long, long>, Candidate> columns;
  for (std::size_t i = 0; i < scan.flat.patches.size(); ++i) {
    const ScanPatch& patch = scan.flat.patches[i];
    const Vec2 p = flat(patch.centre);
    if (patch.centre.z() < kLowestCeiling || std::abs(patch.normal.z()) < kSteepest) continue;
    if (locate(corners, p) != Location::Inside) continue;
    const std::pair key(std::lround(std::floor(p.x() / kColumn)), std::lround(std::floor(p.y() / kColumn)));
    const Vec3 normal = patch.normal.z() < 0 ? Vec3(-patch.normal) : patch.normal;
    const Candidate candidate{patch.centre, normal, patch.size * patch.size, static_cast<std::uint32_t>(i)};
    const auto [found, isNew] = columns.emplace(key, candidate);
    if (!isNew && found->second.place.z() < candidate.place.z()) found->second = candidate;
  }
  std::vector<Candidate> list;
  for (const auto& [key, candidate] : columns) list.push_back(candidate);
  return list;
}

/// Sums for z = a + b . (p - anchor).
struct PlaneSums {
  explicit PlaneSums(const Vec2& anchorPoint) : anchor(anchorPoint) {}
  Vec2 anchor;
  Mat3 products = Mat3::Zero();
  Vec3 sums = Vec3::Zero();
  double weights = 0;
  double squares = 0;

  void add(const Vec3& p, double weight, double residual) {
    const Vec2 d = flat(p) - anchor;
    const Vec3 row(1, d.x(), d.y());
    products += weight * row * row.transpose();
    sums += weight * p.z() * row;
    weights += weight;
    squares += weight * residual * residual;
  }
  bool solve(CeilingPlane& plane) const {
    const Eigen::LDLT<Mat3> solver(products);
    if (weights <= 0 || solver.info() != Eigen::Success || solver.rcond() < 1e-6) return false;
    const Vec3 x = solver.solve(sums);
    if (!x.allFinite()) return false;
    plane.anchor = anchor;
    plane.height = x[0];
    plane.slope = x.tail<2>();
    plane.rms = std::sqrt(squares / weights);
    return true;
  }
};

double distanceTo(const CeilingPlane& plane, const Vec3& p) {
  return (p.z() - plane.at(flat(p))) / std::sqrt(1 + plane.slope.squaredNorm());
}

/// A first plane from a candidate and its neighbours.
std::optional<CeilingPlane> planeAbout(const std::vector<Candidate>& candidates, const Candidate& seed) {
  constexpr double kNeighbourhood = 0.7;
  CeilingPlane plane;
  plane.anchor = flat(seed.place);
  plane.height = seed.place.z();
  plane.slope = -flat(seed.normal) / seed.normal.z();
  for (const double reach : {0.15, 0.08}) {
    PlaneSums sums(flat(seed.place));
    for (const Candidate& c : candidates) {
      if ((flat(c.place) - flat(seed.place)).cwiseAbs().maxCoeff() > kNeighbourhood) continue;
      const double residual = distanceTo(plane, c.place);
      if (const double weight = c.area * biweight(residual, reach); weight > 0)
        sums.add(c.place, weight, residual);
    }
    if (!sums.solve(plane)) return std::nullopt;
  }
  return plane;
}

double supportOf(const CeilingPlane& plane, const std::vector<Candidate>& candidates) {
  double area = 0;
  for (const Candidate& c : candidates)
    if (std::abs(distanceTo(plane, c.place)) < kOnPlane) area += c.area;
  return area;
}

void refitOnCandidates(CeilingPlane& plane, const std::vector<Candidate>& candidates) {
  for (const double reach : {0.10, 0.08, 0.06, 0.06}) {
    PlaneSums sums(plane.anchor);
    for (const Candidate& c : candidates) {
      const double residual = distanceTo(plane, c.place);
      if (const double weight = c.area * biweight(residual, reach); weight > 0)
        sums.add(c.place, weight, residual);
    }
    if (!sums.solve(plane)) return;
  }
}

/// On all samples near the plane over the columns of the candidates on it, each column with the same say.
void refitOnSamples(CeilingPlane& plane, const LevelScan& scan, const std::vector<Candidate>& on,
                    const Progress& progress) {
  CubeMap columns;
  const auto columnOf = [](const Eigen::Vector3f& p) {
    CubeMap::Cube at = cubeAt(p, kColumn);
    at.z() = 0;
    return at;
  };
  for (const Candidate& c : on) columns.indexOf(columnOf(c.place.cast<float>()));
  std::vector<std::pair<Vec3, std::uint32_t>> near;
  std::vector<double> counts(columns.size(), 0);
  for (std::size_t i = 0; i < scan.samples.size(); ++i) {
    if (i % kSamplesBetweenLooks == 0 && progress.stop()) return;
    const Vec3 p = scan.samples[i].cast<double>();
    if (std::abs(distanceTo(plane, p)) > 2 * kOnPlane) continue;
    const std::uint32_t patch = scan.flat.patchOf[i];
    if (patch != kNoPatch && std::abs(scan.flat.patches[patch].normal.z()) < kSteepest) continue;
    const auto column = columns.existing(columnOf(scan.samples[i]));
    if (!column) continue;
    near.emplace_back(p, *column);
    counts[*column] += 1;
  }
  plane.rms = kOnPlane / 2;
  for (int round = 0; round < 6; ++round) {
    if (progress.stop()) return;
    const double reach = std::clamp(4.685 * plane.rms, 0.02, 2 * kOnPlane);
    PlaneSums sums(plane.anchor);
    for (const auto& [p, column] : near) {
      const double residual = distanceTo(plane, p);
      if (const double weight = biweight(residual, reach) / counts[column]; weight > 0)
        sums.add(p, weight, residual);
    }
    if (!sums.solve(plane)) return;
  }
}

/// Along and across the first wall, where most walls run.
std::array<Vec2, 2> wallAxes(const ScanOutline& outline) {
  std::size_t longest = 0;
  const auto length = [&](std::size_t i) {
    return (outline.corners[(i + 1) % outline.corners.size()] - outline.corners[i]).norm();
  };
  for (std::size_t i = 1; i < outline.corners.size(); ++i)
    if (length(i) > length(longest)) longest = i;
  const Vec2 along = outline.sides[longest].along();
  return {along, leftOf(along)};
}

struct Extent {
  double low = 0;
  double high = 0;
};

/// Of the middle 98 % of the area along a direction.
Extent extentOf(const std::vector<Candidate>& on, const Vec2& axis) {
  std::vector<std::pair<double, double>> places;
  double all = 0;
  for (const Candidate& c : on) {
    places.emplace_back(axis.dot(flat(c.place)), c.area);
    all += c.area;
  }
  std::sort(places.begin(), places.end());
  Extent extent{places.front().first, places.back().first};
  double sum = 0;
  for (const auto& [place, area] : places) {
    if (sum < 0.01 * all) extent.low = place;
    if (sum < 0.99 * all) extent.high = place;
    sum += area;
  }
  extent.low -= kColumn / 2;
  extent.high += kColumn / 2;
  return extent;
}

void level(CeilingPlane& plane, const std::array<Vec2, 2>& axes, const std::vector<Candidate>& on) {
  double fall = 0;
  Vec2 middle = Vec2::Zero();
  for (const Vec2& axis : axes) {
    const Extent extent = extentOf(on, axis);
    fall = std::max(fall, std::abs(plane.slope.dot(axis)) * (extent.high - extent.low));
    middle += 0.5 * (extent.low + extent.high) * axis;
  }
  plane.height = plane.at(middle);
  plane.anchor = middle;
  if (fall <= kLevelFall) plane.slope.setZero();
}

std::vector<CeilingSpot> spotsOn(const std::vector<CeilingPlane>& planes,
                                 const std::vector<Candidate>& candidates) {
  std::vector<CeilingSpot> spots;
  for (const Candidate& c : candidates) {
    CeilingSpot spot{flat(c.place), c.area, -1};
    double nearest = kOnPlane;
    for (std::size_t p = 0; p < planes.size(); ++p)
      if (const double distance = std::abs(distanceTo(planes[p], c.place)); distance < nearest) {
        nearest = distance;
        spot.plane = static_cast<int>(p);
      }
    spots.push_back(spot);
  }
  return spots;
}

}  // namespace

bool CeilingPlane::covers(const Vec2& p) const {
  if (!isPartial) return true;
  return std::any_of(regions.begin(), regions.end(),
                     [&](const Ring& region) { return locate(region, p) != Location::Outside; });
}

std::vector<CeilingPlane> ceilingOf(const LevelScan& scan, const ScanOutline& outline,
                                    const std::vector<ScanLine>& lines, const Progress& progress) {
  const auto all = highest(scan, outline.corners);
  const auto axes = wallAxes(outline);
  const double least = std::max(kLeastPart, kLeastShare * signedArea(outline.corners));
  auto rest = all;
  std::vector<CeilingPlane> planes;
  for (std::size_t tries = 0; tries < 4 * kMostPlanes && planes.size() < kMostPlanes && rest.size() > 3;
       ++tries) {
    if (progress.stop()) return planes;
    std::optional<CeilingPlane> best;
    const std::size_t stride = rest.size() / kMostTries + 1;
    for (std::size_t i = 0; i < rest.size(); i += stride) {
      auto plane = planeAbout(rest, rest[i]);
      if (!plane) continue;
      plane->area = supportOf(*plane, rest);
      if (!best || plane->area > best->area) best = plane;
    }
    if (!best || best->area < least) break;
    refitOnCandidates(*best, rest);
    std::vector<Candidate> on;
    std::vector<Candidate> off;
    for (const Candidate& c : rest) (std::abs(distanceTo(*best, c.place)) < kOnPlane ? on : off).push_back(c);
    if (on.size() < 3) break;
    rest = std::move(off);
    const Extent along = extentOf(on, axes[0]);
    const Extent across = extentOf(on, axes[1]);
    if (along.high - along.low < kNarrowest || across.high - across.low < kNarrowest) continue;
    refitOnSamples(*best, scan, on, progress);
    level(*best, axes, on);
    best->area = 0;
    for (const Candidate& c : on) best->area += c.area;
    planes.push_back(std::move(*best));
  }
  std::stable_sort(planes.begin(), planes.end(),
                   [](const CeilingPlane& a, const CeilingPlane& b) { return a.area > b.area; });
  giveRegions(planes, spotsOn(planes, all), scan, outline, lines, progress);
  return planes;
}

}  // namespace baywright
