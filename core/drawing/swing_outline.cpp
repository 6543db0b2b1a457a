// SPDX-License-Identifier: Apache-2.0
#include "drawing/swing_outline.h"

#include <algorithm>
#include <cmath>

#include "geometry/polygon_sets.h"

namespace baywright {
namespace {

// Half a circle at a capsule's end in this many pieces.
constexpr int kHalfCirclePieces = 8;

Vec2 seen(const Vec3& p, SwingSight sight) {
  switch (sight) {
    case SwingSight::FromAbove:
      return {p.x(), p.y()};
    case SwingSight::DownRange:
      return {p.y(), p.z()};
    case SwingSight::FromTheSide:
      return {p.x(), p.z()};
  }
  return Vec2::Zero();
}

// The capsule's outline, drawn with tangents so that it is never too small.
Ring outlineOf(const Capsule& capsule, SwingSight sight) {
  const Vec2 a = seen(capsule.a, sight);
  const Vec2 b = seen(capsule.b, sight);
  const Vec2 along = b - a;
  const double heading = along.norm() > 0 ? std::atan2(along.y(), along.x()) : 0;
  const double radius = capsule.radius / std::cos(kPi / kHalfCirclePieces / 2);
  Ring ring;
  for (const auto& [centre, from] : {std::pair{b, heading - kPi / 2}, std::pair{a, heading + kPi / 2}}) {
    for (int i = 0; i < kHalfCirclePieces; ++i) {
      const double angle = from + kPi * (i + 0.5) / kHalfCirclePieces;
      ring.push_back(centre + radius * Vec2(std::cos(angle), std::sin(angle)));
    }
  }
  return ring;
}

// Neighbours overlap nearly everywhere, so merging them first keeps the crossings of each step few.
PolygonSet merged(std::vector<PolygonSet> sets) {
  if (sets.empty()) return {};
  while (sets.size() > 1) {
    std::vector<PolygonSet> next;
    for (std::size_t i = 0; i + 1 < sets.size(); i += 2)
      next.push_back(unionOf(sets[i], sets[i + 1]).value_or(PolygonSet{}));
    if (sets.size() % 2 == 1) next.push_back(std::move(sets.back()));
    sets = std::move(next);
  }
  return std::move(sets.front());
}

PolygonSet regionOf(const std::vector<SwingCapsule>& capsules, SwingSight sight) {
  std::vector<PolygonSet> sets;
  sets.reserve(capsules.size());
  for (const SwingCapsule& each : capsules) sets.push_back({Polygon{outlineOf(each.capsule, sight), {}}});
  return merged(std::move(sets));
}

// From the side nothing of a swing shows under the floor, not even its clearance.
PolygonSet aboveFloor(const PolygonSet& set, SwingSight sight) {
  if (sight == SwingSight::FromAbove) return set;
  constexpr double kFar = 100;
  return intersectionOf(set, {Polygon{{{-kFar, 0}, {kFar, 0}, {kFar, kFar}, {-kFar, kFar}}, {}}})
      .value_or(set);
}

// Holes smaller than a hand's breadth are gaps between capsules, not places to be.
constexpr double kSmallestHole_m2 = 0.01;

std::vector<Ring> ringsOf(const PolygonSet& set) {
  std::vector<Ring> rings;
  const auto keep = [&](const Ring& ring) {
    Ring simple = simplified(ring, kOutlineTolerance);
    if (!simple.empty()) rings.push_back(std::move(simple));
  };
  for (const Polygon& polygon : set) {
    keep(polygon.outer);
    for (const Ring& hole : polygon.holes) {
      if (std::abs(signedArea(hole)) > kSmallestHole_m2) keep(hole);
    }
  }
  return rings;
}

}  // namespace

SwingOutline outlineOf(const Swing& swing, SwingSight sight, double clearance) {
  const PolygonSet expected = regionOf(swing.expected.capsules, sight);
  SwingOutline outline;
  const auto ringsAbove = [&](const PolygonSet& set) { return ringsOf(aboveFloor(set, sight)); };
  outline.expected = ringsAbove(expected);
  outline.clearance = ringsAbove(offsetOf(expected, clearance, OffsetCorner::Round).value_or(PolygonSet{}));
  outline.fullExtension = ringsAbove(regionOf(swing.fullExtension.capsules, sight));
  outline.address = ringsAbove(regionOf(poseAt(swing, 0), sight));
  return outline;
}

const SwingOutline& SwingOutlines::of(const std::shared_ptr<const Swing>& swing, SwingSight sight,
                                      double clearance) {
  std::erase_if(entries_, [](const std::unique_ptr<Entry>& entry) { return entry->swing.expired(); });
  const auto found = std::find_if(entries_.begin(), entries_.end(), [&](const std::unique_ptr<Entry>& entry) {
    return entry->swing.lock() == swing && entry->sight == sight && entry->clearance == clearance;
  });
  if (found != entries_.end()) return (*found)->outline;
  entries_.push_back(
      std::make_unique<Entry>(Entry{swing, sight, clearance, outlineOf(*swing, sight, clearance)}));
  return entries_.back()->outline;
}

}  // namespace baywright
