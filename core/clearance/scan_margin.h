// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "clearance/scan_obstacle.h"
#include "clearance/swing_margin.h"

namespace baywright {

/// As tightest() for solids, against a scanned surface; nothing when it is farther than kScanSearch from the
/// swing. The nearest place is meant, since a scan is equally uncertain everywhere. Where the swing passes
/// through the surface the distance is minus the radius of what passes.
std::optional<SwingMargin> tightest(const SwingEnvelope& envelope, const PlacedSwing& swing,
                                    const ScanObstacle& scan, const SwingNeeds& needs,
                                    Search search = Search::Tree);
inline constexpr double kScanSearch = 3.0;

}  // namespace baywright
