// SPDX-License-Identifier: Apache-2.0
#include "optics/mounting_zone.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace baywright {
namespace {

/// Distances tried along one slice before the ends of what works are refined.
constexpr int kSteps = 24;
/// Edges of the zone are found to this, metres: finer than a fitter can hang anything.
constexpr double kEdge = 1e-3;
/// From any focus range that makes sense to a millimetre, and an end for any that does not.
constexpr int kHalvings = 30;

enum class Fit { Works, TooNear, TooFar, Neither };

struct Sample {
  double distance = 0;
  Fit fit = Fit::Neither;
};

struct Range {
  double near = 0;
  double far = 0;
};

/// Halves the way from a good to a bad value until it is short enough.
template <class Works>
double lastGood(double good, double bad, const Works& works) {
  for (int i = 0; i < kHalvings && std::abs(good - bad) > kEdge; ++i) {
    const double middle = 0.5 * (good + bad);
    (works(middle) ? good : bad) = middle;
  }
  return good;
}

struct Search {
  const Screen& screen;
  const Projector& projector;
  MountKind kind;
  double height;
  const AimNeeds& needs;

  Fit fitAt(double distance, double side) const {
    ProjectorMount mount;
    mount.kind = kind;
    mount.lens = {-distance, side, height};
    const auto aim = aimAt(screen, projector, mount, needs);
    if (!aim) return Fit::Neither;
    if (aim->works) return Fit::Works;
    const bool covers = aim->margins.coverage >= 0, spills = aim->margins.spill < 0;
    if (covers == spills) return covers ? Fit::TooFar : Fit::TooNear;
    return Fit::Neither;
  }

  /// A distance that works between one that is too near and one that is too far: a projector without zoom may
  /// have only a few centimetres.
  std::optional<double> workingBetween(double near, double far, double side) const {
    for (int i = 0; i < kHalvings && far - near > kEdge; ++i) {
      const double middle = 0.5 * (near + far);
      switch (fitAt(middle, side)) {
        case Fit::Works:
          return middle;
        case Fit::TooNear:
          near = middle;
          break;
        case Fit::TooFar:
          far = middle;
          break;
        case Fit::Neither:
          return std::nullopt;
      }
    }
    return std::nullopt;
  }

  std::vector<Sample> samplesAt(double side) const {
    std::vector<Sample> samples;
    for (int i = 0; i <= kSteps; ++i) {
      const double share = static_cast<double>(i) / kSteps;
      const double distance = projector.distanceMin + share * (projector.distanceMax - projector.distanceMin);
      const Sample sample{distance, fitAt(distance, side)};
      if (!samples.empty() && samples.back().fit == Fit::TooNear && sample.fit == Fit::TooFar)
        if (const auto between = workingBetween(samples.back().distance, distance, side))
          samples.push_back({*between, Fit::Works});
      samples.push_back(sample);
    }
    return samples;
  }

  std::optional<Range> rangeAt(double side) const {
    const auto works = [&](double distance) { return fitAt(distance, side) == Fit::Works; };
    const std::vector<Sample> samples = samplesAt(side);
    std::optional<Range> longest;
    for (std::size_t i = 0; i < samples.size(); ++i) {
      if (samples[i].fit != Fit::Works) continue;
      const std::size_t first = i;
      while (i + 1 < samples.size() && samples[i + 1].fit == Fit::Works) ++i;
      Range range{samples[first].distance, samples[i].distance};
      if (first > 0) range.near = lastGood(range.near, samples[first - 1].distance, works);
      if (i + 1 < samples.size()) range.far = lastGood(range.far, samples[i + 1].distance, works);
      if (!longest || range.far - range.near > longest->far - longest->near) longest = range;
    }
    return longest;
  }

  /// The farthest to the right that has a range.
  double widest() const {
    return lastGood(0, 2 * projector.distanceMax, [&](double side) {
      const std::vector<Sample> samples = samplesAt(side);
      return std::any_of(samples.begin(), samples.end(), [](const Sample& s) { return s.fit == Fit::Works; });
    });
  }
};

/// The slices of the right half, from the middle outward, and their mirror images: the model knows no side.
Ring outlineOf(const Search& search) {
  const double widest = search.widest();
  if (widest < kEdge) return {};
  constexpr int kHalf = kZoneSlices / 2;
  std::vector<Vec2> near, far;
  for (int i = 0; i <= kHalf; ++i) {
    const double side = widest * i / kHalf;
    const auto range = search.rangeAt(side);
    if (!range) continue;
    near.emplace_back(-range->near, side);
    if (range->far > range->near) far.emplace_back(-range->far, side);
  }
  Ring outline = near;
  outline.insert(outline.end(), far.rbegin(), far.rend());
  const auto mirror = [&](const Vec2& p) { outline.emplace_back(p.x(), -p.y()); };
  for (std::size_t i = 1; i < far.size(); ++i) mirror(far[i]);
  for (std::size_t i = near.size(); i-- > 1;) mirror(near[i]);
  return outline;
}

Result<void> checked(const Projector& projector) {
  if (!(projector.distanceMin > 0) || !(projector.distanceMin < projector.distanceMax) ||
      !std::isfinite(projector.distanceMax))
    return fail("The projector's focus range is empty.", "kit / projector",
                "Give its nearest and farthest distance, nearest first.");
  if (!(projector.throwMin > 0) || !(projector.throwMin <= projector.throwMax))
    return fail("The projector's throw range is empty.", "kit / projector",
                "Give its widest and longest throw ratio, the smaller first.");
  return {};
}

}  // namespace

Result<MountingZone> mountingZone(const Screen& screen, const Projector& projector, MountKind kind,
                                  double height, const AimNeeds& needs) {
  if (const auto good = checked(projector); !good) return tl::unexpected(good.error());
  ProjectorMount farthest;
  farthest.kind = kind;
  farthest.lens = {-projector.distanceMax, 0, height};
  if (const auto aim = aimAt(screen, projector, farthest, needs); !aim) return tl::unexpected(aim.error());

  const Search search{screen, projector, kind, height, needs};
  MountingZone zone;
  const auto middle = search.rangeAt(0);
  if (!middle) return zone;
  zone.nearest = middle->near;
  zone.farthest = middle->far;
  zone.region = outlineOf(search);
  return zone;
}

}  // namespace baywright
