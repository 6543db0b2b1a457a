// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>

#include "geometry/detail/nearest_pair.h"

namespace baywright::detail {

/// A convex shape, told by its farthest point along a direction (unit).
using Farthest = std::function<Vec3(const Vec3&)>;

/// Nearest points of two convex shapes that are a gap apart, by the algorithm of Gilbert, Johnson and Keerthi
/// (1988), for curved shapes whose features are too many to pair. Stops when upper and lower bound of the
/// distance agree within `tolerance`. Squared distance zero when the shapes overlap or are nearer than the
/// tolerance.
NearestPair nearestPairOfConvex(const Farthest& first, const Farthest& second, double tolerance);

}  // namespace baywright::detail
