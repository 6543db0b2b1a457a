// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "clearance/assessment.h"
#include "clearance/check.h"
#include "job/job.h"

namespace baywright {

/// Something that may stand in the light, in the bay frame.
struct LightBlocker {
  std::size_t index = 0;  ///< among the obstacles
  Solid inBay;
};

/// All that is fixed and known and reaches before the screen's face: not people, not the projector and its
/// own mount.
std::vector<LightBlocker> lightBlockers(std::span<const RoomObstacle> obstacles, const BayPose& bay);

/// Picture, corners and light: everything about a projector in its place that neither room nor people change.
/// Requires kit.hasProjector.
Result<PictureZone> pictureAlone(const Option& option, const Requirements& requirements);

/// Shadows of those who swing, each with the first club that has a swing; in the settings' order.
std::vector<PictureZone::GolferShadow> golferShadows(const Picture& picture,
                                                     std::span<const SwingSetting> swings,
                                                     double placementSigma);

/// Moments of a swing at which its shadow is taken, evenly from address to finish.
inline constexpr int kShadowMoments = 24;

}  // namespace baywright
