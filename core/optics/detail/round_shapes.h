// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "geometry/shapes.h"

namespace baywright::detail {

/// Corners of a regular polygon round a circle that touches it from outside: the hull of these points holds
/// the disc. `normal` is unit.
void appendEnclosingPolygon(const Vec3& centre, const Vec3& normal, double radius, std::vector<Vec3>& points);

/// Points on the cone from `eye` round a ball, near the ball; nothing when the eye is within it. Seen from
/// the eye, the hull of these points holds the ball.
void appendOutlineOfBall(const Vec3& eye, const Vec3& centre, double radius, std::vector<Vec3>& points);

/// The part of a segment where `d` <= limit; none when there is none.
std::optional<Segment3> inFrontOf(const Segment3& segment, double limit);

/// Nearest distance from a point to a segment.
double distanceTo(const Segment3& segment, const Vec3& p);

}  // namespace baywright::detail
