// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "drawing/view_input.h"

namespace baywright::detail {

/// What views draw of struck balls. Internal to `drawing`.

/// The zones of the assessment, those left out whose ball and shots are those of one before: two hands may
/// share a strike point.
std::vector<const BallZone*> differentShots(const Assessment& assessment);

/// The box on the screen's plane in which the shots of the fan arrive, (r, u); none when they do not get
/// there.
std::optional<Eigen::AlignedBox2d> arrivalBox(const BallZone& zone);

/// "comes back at 1.6 m/s", or "stops before the ball".
std::string reboundText(const ReboundSafety& rebound, const UnitSystem& units);

}  // namespace baywright::detail
