// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "geometry/convex_polyhedron.h"
#include "job/kit.h"
#include "job/placement.h"

namespace baywright {

/// The projector's housing as a box in the bay frame, turned as the mount says; the lens lies in the middle
/// of its front. Refused: a body without size, numbers that are not finite.
Result<ConvexPolyhedron> projectorBody(const Projector& projector, const ProjectorMount& mount);

}  // namespace baywright
