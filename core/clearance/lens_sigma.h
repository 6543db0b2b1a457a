// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>

#include "job/job.h"
#include "optics/picture.h"

namespace baywright {

/// Standard uncertainty of a figure of the picture from how well the projector hangs where it is marked
/// (Placement::sigma along each of d, r, u): central differences, parts independent. A side on which no
/// picture is made is left out. Aim and zoom are set by eye on the real screen, so they add nothing.
double sigmaFromLens(const Option& option, const std::function<double(const Picture&)>& figure);

}  // namespace baywright
