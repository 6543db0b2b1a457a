// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>

#include "base/problem.h"
#include "geometry/polygon.h"
#include "job/job.h"

namespace baywright {

// How a scanned or photographed plan comes to lie on the world's plan. All points are where one sees them
// now, in world metres: what was clicked on the drawing. Pixels count from the picture's top left corner, y
// down.

/// Where a fresh picture of this many pixels lies: upright, its middle at `middle`, `width` metres wide.
Mat3 worldFromFreshPixels(const Vec2& pixels, const Vec2& middle, double width);

/// The same in a job, kFreshPlanWidth wide until its scale is set: to the right of the fresh ones that are
/// there, so that all can be seen until one is laid on the other.
Mat3 worldFromFreshPixels(const Vec2& pixels, const Job& job);
inline constexpr double kFreshPlanWidth = 10;  // metres

/// The scan grown or shrunk about `a`, so that a and b are `length` metres apart. Refused: points that
/// coincide, a length that is not positive, a factor beyond kLargestFactor either way.
Result<PlanScan> scaledByLine(PlanScan scan, const Vec2& a, const Vec2& b, double length);
inline constexpr double kLargestFactor = 1e5;

/// The scan turned about `a` by at most kLargestTilt, so that the line from a to b runs level or upright; as
/// it was where the line is farther off: then it is a slanted line and not a sheet that lay askew.
PlanScan levelledByLine(PlanScan scan, const Vec2& a, const Vec2& b);
inline constexpr double kLargestTilt = 0.087;  // radians, 5 degrees: how askew a sheet lies in a scanner

/// Four corners of what is a rectangle in truth, going round, and its two lengths: from corner 0 to 1 and
/// from corner 1 to 2, metres.
struct SeenRectangle {
  std::array<Vec2, 4> corners{};
  double first = 0;
  double second = 0;
};

/// The scan straightened by the homography that makes the four points that rectangle: corner 0 stays where it
/// is, the side to corner 1 becomes level or upright, whichever is nearer. Refused: three of the points on a
/// line or nearly, corners in crossed order, lengths that are not positive.
Result<PlanScan> straightened(PlanScan scan, const SeenRectangle& seen);

/// The part of a picture of `pixels` width and height that can be drawn, in pixels: all of it, unless it was
/// photographed so flat that part of it runs off toward the horizon. That part is cut where things look
/// kSmallestScale as large as where they are largest. Counter-clockwise or clockwise; empty when nothing is
/// left.
Ring usablePixels(const PlanScan& scan, const Vec2& pixels);
inline constexpr double kSmallestScale = 0.05;

/// usablePixels() on the world's plan.
Ring scanOutline(const PlanScan& scan, const Vec2& pixels);

/// True where one sees the scan's picture.
bool coversPoint(const PlanScan& scan, const Vec2& pixels, const Vec2& world);

}  // namespace baywright
