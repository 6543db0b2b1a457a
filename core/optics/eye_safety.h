// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "optics/lens.h"

namespace baywright {

/// Height above the floor that the beam of a risk group 3 projector must keep wherever it is within the
/// hazard distance that its maker states: IEC 62471-5:2015 6.6.5, as three makers' manuals quote it.
/// Guidance; the maker's instructions decide.
inline constexpr double kRg3BeamHeight = 2.0;
/// The same where people are not restrained from climbing or jumping.
inline constexpr double kRg3BeamHeightUnrestrained = 3.0;

/// Lowest height of the beam between the lens and `hazardDistance` (metres, > 0) measured along the optical
/// axis, so a little beyond that distance off the axis: never too high.
double lowestLight(const ProjectorLens& lens, double hazardDistance);

}  // namespace baywright
