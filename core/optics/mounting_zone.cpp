// SPDX-License-Identifier: Apache-2.0
#include "optics/mounting_zone.h"

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

namespace baywright {
namespace {

/// Distances tried along one slice before its ends are refined; a working range shorter than a step may be
/// missed.
constexpr int kSteps = 32;
/// Edges of the zone are found to this, metres: finer than a fitter can hang anything.
constexpr double kEdge = 1e-3;

struct Range {
  double near = 0;
  double far = 0;
};

struct Search {
  const Screen& screen;
  const Projector& projector;
  MountKind kind;
  double height;
  const AimNeeds& needs;

  bool works(double distance, double side) const {
    const ProjectorMount mount{.kind = kind, .lens = {-distance, side, height}};
    const auto aim = aimAt(screen, projector, mount, needs);
    return aim && aim->works;
  }

  /// Between a distance that works and one that does not: the last that works.
  double edge(double good, double bad, double side) const {
    while (std::abs(good - bad) > kEdge) {
      const double middle = 0.5 * (good + bad);
      (works(middle, side) ? good : bad) = middle;
    }
    return good;
  }

  double distance(int step) const {
    const double share = static_cast<double>(step) / kSteps;
    return projector.distanceMin + share * (projector.distanceMax - projector.distanceMin);
  }

  std::optional<Range> rangeAt(double side) const {
    int bestFirst = 0, bestLast = -1, first = -1;
    for (int i = 0; i <= kSteps + 1; ++i) {
      const bool good = i <= kSteps && works(distance(i), side);
      if (good && first < 0) first = i;
      if (!good && first >= 0) {
        if (i - 1 - first > bestLast - bestFirst) bestFirst = first, bestLast = i - 1;
        first = -1;
      }
    }
    if (bestLast < bestFirst) return std::nullopt;
    Range range{distance(bestFirst), distance(bestLast)};
    if (bestFirst > 0) range.near = edge(range.near, distance(bestFirst - 1), side);
    if (bestLast < kSteps) range.far = edge(range.far, distance(bestLast + 1), side);
    return range;
  }

  bool worksSomewhere(double side) const {
    for (int i = 0; i <= kSteps; ++i)
      if (works(distance(i), side)) return true;
    return false;
  }

  /// The farthest to the right that has a range; the model is the same to the left.
  double widest() const {
    double good = 0, bad = 2 * projector.distanceMax;
    while (bad - good > kEdge) {
      const double middle = 0.5 * (good + bad);
      (worksSomewhere(middle) ? good : bad) = middle;
    }
    return good;
  }
};

}  // namespace

Result<MountingZone> mountingZone(const Screen& screen, const Projector& projector, MountKind kind,
                                  double height, const AimNeeds& needs) {
  if (!(projector.distanceMin > 0) || !(projector.distanceMin < projector.distanceMax))
    return fail("The projector's focus range is empty.", "kit / projector",
                "Give its nearest and farthest distance, nearest first.");
  if (!(projector.throwMin > 0) || !(projector.throwMin <= projector.throwMax))
    return fail("The projector's throw range is empty.", "kit / projector",
                "Give its widest and longest throw ratio, the smaller first.");
  const Search search{screen, projector, kind, height, needs};
  const ProjectorMount sample{.kind = kind, .lens = {-projector.distanceMax, 0, height}};
  if (const auto aim = aimAt(screen, projector, sample, needs); !aim) return tl::unexpected(aim.error());

  MountingZone zone;
  const auto middle = search.rangeAt(0);
  if (!middle) return zone;
  zone.nearest = middle->near;
  zone.farthest = middle->far;
  const double widest = search.widest();
  constexpr int kHalf = kZoneSlices / 2;
  std::vector<Vec2> nearSide, farSide;
  for (int i = -kHalf; i <= kHalf; ++i) {
    const double side = widest * i / kHalf;
    const auto range = search.rangeAt(std::abs(side));
    if (!range) continue;
    nearSide.emplace_back(-range->near, side);
    farSide.emplace_back(-range->far, side);
  }
  zone.region = nearSide;
  zone.region.insert(zone.region.end(), farSide.rbegin(), farSide.rend());
  return zone;
}

}  // namespace baywright
