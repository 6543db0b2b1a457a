// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "geometry/detail/gjk.h"
#include "geometry/detail/polyhedron_pair.h"

namespace baywright::detail {

/// The separation of two convex shapes with the largest gap, which is the exact penetration depth, negative,
/// when they overlap. Branch and bound over all directions: in a spherical triangle with corners n_i and the
/// farthest points x_j of the shapes' difference there, every unit n = sum l_i n_i (l_i >= 0, sum l_i >= 1)
/// has an overlap of at least sum l_i n_i.x_j for each j. `known` is any separation found otherwise; the
/// nearer it is to the answer, the fewer directions are looked at. The result's gap is within `tolerance` of
/// the largest, unless equally good directions fill a whole curve: then the search stops after kMostTriangles
/// with the best so far.
Separation shallowestDirection(const Farthest& first, const Farthest& second, const Separation& known,
                               double tolerance);

}  // namespace baywright::detail
