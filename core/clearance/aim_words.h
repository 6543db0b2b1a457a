// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "job/placement.h"
#include "units/unit_system.h"

namespace baywright {

/// "a throw ratio of 1.21, a lens shift of 12.0 % down and 0.0 % to the right, turned 2.0° up and 0.0° to the
/// right"; what is nothing both ways is left out.
std::string aimWords(const ProjectorMount& mount, const UnitSystem& units);

}  // namespace baywright
