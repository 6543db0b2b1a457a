// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "geometry/polygon.h"
#include "job/fixture.h"

namespace baywright {

/// What a fixture covers on the plan, world metres; a cylinder as a polygon of 48 corners on its circle.
Ring outlineOf(const FixtureShape& shape);

}  // namespace baywright
