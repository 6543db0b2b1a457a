// SPDX-License-Identifier: Apache-2.0
#include "job/ceiling_regions.h"

#include <algorithm>
#include <cmath>

#include "geometry/polygon_sets.h"

namespace baywright {
namespace {

constexpr double kFar = 5000;  // metres: farther than any room reaches
constexpr double kSamePlane = 1e-9;

/// Where `other` lies below `part`: half a plane, all of it or nothing. Of equals the earlier one counts.
PolygonSet below(const CeilingPart& other, const CeilingPart& part, bool isEarlier) {
  const Vec2 up = part.slope - other.slope;  // the way in which `part` gains on `other`
  const double above = part.heightAt(Vec2::Zero()) - other.heightAt(Vec2::Zero());
  if (up.norm() < kSamePlane) {
    const bool isBelow = above > kSamePlane || (isEarlier && above > -kSamePlane);
    if (!isBelow) return {};
    return {Polygon{{{-kFar, -kFar}, {kFar, -kFar}, {kFar, kFar}, {-kFar, kFar}}, {}}};
  }
  const Vec2 way = up.normalized();
  const Vec2 along = leftOf(way);
  const Vec2 crease = -above / up.squaredNorm() * up;
  return {Polygon{{crease - kFar * along, crease - kFar * along + kFar * way,
                   crease + kFar * along + kFar * way, crease + kFar * along},
                  {}}};
}

}  // namespace

std::vector<Ring> seenRegions(const Room& room, const CeilingPart& part) {
  const Ring whole = ceilingRegion(room, part);
  if (!part.region.empty() || !part.height.known || whole.size() < 3) return {whole};
  PolygonSet seen{Polygon{whole, {}}};
  bool isEarlier = true;
  for (const CeilingPart& other : room.ceiling) {
    if (other.id == part.id) {
      isEarlier = false;
      continue;
    }
    if (!other.region.empty() || !other.height.known) continue;
    const PolygonSet lower = below(other, part, isEarlier);
    if (lower.empty()) continue;
    auto rest = differenceOf(seen, lower);
    if (!rest) return {whole};
    seen = std::move(*rest);
  }
  std::vector<Ring> rings;
  for (Polygon& polygon : seen) rings.push_back(std::move(polygon.outer));
  std::stable_sort(rings.begin(), rings.end(), [](const Ring& a, const Ring& b) {
    return std::abs(signedArea(a)) > std::abs(signedArea(b));
  });
  return rings;
}

CeilingSpan seenSpan(const Room& room, const CeilingPart& part) {
  const auto regions = seenRegions(room, part);
  if (regions.empty()) return spanOver(part, ceilingRegion(room, part));
  CeilingSpan span = spanOver(part, regions.front());
  for (const Ring& region : regions) {
    const CeilingSpan here = spanOver(part, region);
    span = {std::min(span.low, here.low), std::max(span.high, here.high)};
  }
  return span;
}

}  // namespace baywright
