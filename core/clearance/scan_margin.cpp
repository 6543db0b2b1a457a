// SPDX-License-Identifier: Apache-2.0
#include "clearance/scan_margin.h"

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

}  // namespace

std::optional<SwingMargin> tightest(const SwingEnvelope& envelope, const PlacedSwing& swing,
                                    const ScanObstacle& scan, const SwingNeeds& needs, Search search) {
  std::optional<SwingMargin> worst;
  for (const SwingCapsule& capsule : swing.capsules) {
    const double reach = worst ? worst->closest.distance : kScanSearch;
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
