// SPDX-License-Identifier: Apache-2.0
#include "drawing/hit_test.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "geometry/polygon.h"

namespace baywright {
namespace {

bool isZone(Layer layer) {
  switch (layer) {
    case Layer::Floor:
    case Layer::Standing:
    case Layer::SwingBound:
    case Layer::SwingClearance:
    case Layer::Swing:
    case Layer::Capture:
    case Layer::Rebound:
    case Layer::Beam:
    case Layer::Ways:
      return true;
    default:
      return false;
  }
}

bool canBeHit(Layer layer) {
  return layer != Layer::Floor && layer != Layer::Tightest && layer != Layer::Dimensions &&
         layer != Layer::Labels;
}

double distanceTo(const Vec2& a, const Vec2& b, const Vec2& p) {
  const Vec2 along = b - a;
  const double square = along.squaredNorm();
  const double share = square > 0 ? std::clamp((p - a).dot(along) / square, 0.0, 1.0) : 0;
  return (a + share * along - p).norm();
}

double distanceToLines(const Path& path, const Vec2& p) {
  double nearest = std::numeric_limits<double>::infinity();
  for (const auto& ring : path.rings) {
    const std::size_t sides = path.closed ? ring.size() : ring.size() - std::min<std::size_t>(ring.size(), 1);
    for (std::size_t i = 0; i < sides; ++i)
      nearest = std::min(nearest, distanceTo(ring[i], ring[(i + 1) % ring.size()], p));
  }
  return nearest;
}

/// The area of a closed path that holds the point, holes taken off (even-odd).
std::optional<double> areaAround(const Path& path, const Vec2& p) {
  if (!path.closed) return std::nullopt;
  bool inside = false;
  double area = 0;
  for (const auto& ring : path.rings) {
    if (locate(ring, p) != Location::Outside) inside = !inside;
    area = std::max(area, std::abs(signedArea(ring)));
  }
  return inside ? std::optional(area) : std::nullopt;
}

std::optional<Hit> hitOn(const Path& path, const Vec2& p, double reach) {
  if (const auto area = areaAround(path, p)) return Hit{path.id, path.layer, 0, *area};
  const double distance = distanceToLines(path, p);
  if (distance > reach) return std::nullopt;
  return Hit{path.id, path.layer, distance, 0};
}

bool isBetter(const Hit& a, const Hit& b) {
  if (isZone(a.layer) != isZone(b.layer)) return !isZone(a.layer);
  if (a.area != b.area) return a.area < b.area;
  return a.distance < b.distance;
}

}  // namespace

std::vector<Hit> hitsAt(const Linework& linework, const Vec2& point, const HitReach& reach) {
  std::vector<Hit> hits;
  const auto add = [&](const Hit& hit) {
    const auto known =
        std::find_if(hits.begin(), hits.end(), [&](const Hit& other) { return other.id == hit.id; });
    if (known == hits.end())
      hits.push_back(hit);
    else if (isBetter(hit, *known))
      *known = hit;
  };
  // From the top of the drawing down, so that the stable sort leaves the upper of two equals first.
  for (auto symbol = linework.symbols.rbegin(); symbol != linework.symbols.rend(); ++symbol) {
    const double distance = (symbol->at - point).norm() - symbol->sizeMm / 2 * reach.unitsPerMm;
    if (symbol->id && canBeHit(symbol->layer) && distance <= reach.reach)
      add({symbol->id, symbol->layer, std::max(distance, 0.0), 0});
  }
  for (auto path = linework.paths.rbegin(); path != linework.paths.rend(); ++path) {
    if (!path->id || !canBeHit(path->layer)) continue;
    if (const auto hit = hitOn(*path, point, reach.reach)) add(*hit);
  }
  std::stable_sort(hits.begin(), hits.end(), isBetter);
  return hits;
}

}  // namespace baywright
