// SPDX-License-Identifier: Apache-2.0
#include "clearance/scan_margin.h"

#include <algorithm>
#include <cmath>

namespace baywright {
namespace {

std::optional<Closest> nearestTo(const ScanObstacle& scan, const Capsule& capsule, double upperBound,
                                 Search search) {
  std::optional<Closest> best;
  if (scan.triangles) {
    if (const auto found = scan.triangles->nearest(capsule, upperBound, search)) best = found->closest;
  }
  if (scan.points) {
    const auto found = scan.points->nearest(capsule, best ? best->distance : upperBound, search);
    if (found) best = found->closest;
  }
  return best;
}

/// A distance that the swing's least is not above, from a few of its capsules: all others are then asked with
/// a bound near the answer, which spares most of a large scan's tree. The answer does not depend on it.
double firstBound(const PlacedSwing& swing, const ScanObstacle& scan, Search search) {
  constexpr std::size_t kStride = 16;
  double bound = kScanSearch;
  for (std::size_t i = 0; i < swing.capsules.size(); i += kStride)
    if (const auto found = nearestTo(scan, swing.capsules[i].capsule, bound, search)) bound = found->distance;
  return std::min(kScanSearch, std::nextafter(bound, kScanSearch));  // distances below it are looked for
}

}  // namespace

std::optional<SwingMargin> tightest(const SwingEnvelope& envelope, const PlacedSwing& swing,
                                    const ScanObstacle& scan, const SwingNeeds& needs, Search search) {
  std::optional<SwingMargin> worst;
  const double first = search == Search::Tree ? firstBound(swing, scan, search) : kScanSearch;
  for (const SwingCapsule& capsule : swing.capsules) {
    const double reach = worst ? worst->closest.distance : first;
    const auto found = nearestTo(scan, capsule.capsule, reach, search);
    if (!found) continue;
    worst.emplace();
    worst->capsule = capsule;
    worst->closest = *found;
  }
  if (!worst) return worst;
  RoomObstacle surface;
  surface.uncertainty.surface = scan.sigma;
  worst->margin.value = worst->closest.distance - needs.clearance;
  worst->margin.sigma = swingMarginSigma(envelope, swing, surface, worst->closest, needs);
  return worst;
}

}  // namespace baywright
