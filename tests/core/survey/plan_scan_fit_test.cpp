// SPDX-License-Identifier: Apache-2.0
#include "survey/plan_scan_fit.h"

#include <gtest/gtest.h>

#include "geometry/homography.h"

namespace baywright {
namespace {

PlanScan freshScan() {
  PlanScan scan;
  scan.worldFromPixel = worldFromFreshPixels({2000, 1000}, {3, 2}, 10);
  return scan;
}

Vec2 worldOf(const PlanScan& scan, const Vec2& pixel) {
  return mapped(Homography{scan.worldFromPixel}, pixel).value_or(Vec2(NAN, NAN));
}

/// How a tilted camera sees a point of the true plan: a map that is no similarity.
Vec2 photographed(const Vec2& p) {
  const double w = 1 + 0.04 * p.x() - 0.02 * p.y();
  return {(1.1 * p.x() + 0.2 * p.y() + 1) / w, (-0.1 * p.x() + 0.9 * p.y() + 2) / w};
}

TEST(PlanScanFit, LaysAFreshPictureUprightAboutItsMiddle) {
  const PlanScan scan = freshScan();
  EXPECT_TRUE(worldOf(scan, {1000, 500}).isApprox(Vec2(3, 2), 1e-12));
  EXPECT_TRUE(worldOf(scan, {0, 0}).isApprox(Vec2(-2, 4.5), 1e-12));
  EXPECT_TRUE(worldOf(scan, {2000, 1000}).isApprox(Vec2(8, -0.5), 1e-12));
}

TEST(PlanScanFit, ScalesByTwoPointsAboutTheFirst) {
  const Vec2 a = worldOf(freshScan(), {200, 300});
  const Vec2 b = worldOf(freshScan(), {800, 1100});
  const auto scan = scaledByLine(freshScan(), a, b, 7.25);
  ASSERT_TRUE(scan);
  EXPECT_TRUE(scan->scaled);
  EXPECT_TRUE(worldOf(*scan, {200, 300}).isApprox(a, 1e-12));
  EXPECT_NEAR((worldOf(*scan, {800, 1100}) - worldOf(*scan, {200, 300})).norm(), 7.25, 1e-12);
  // 600 by 800 pixels are 1000 along: 7.25 mm each.
  EXPECT_NEAR((worldOf(*scan, {0, 1}) - worldOf(*scan, {0, 0})).norm(), 0.00725, 1e-12);
}

TEST(PlanScanFit, RefusesAScaleFromOnePointOrNoLength) {
  EXPECT_FALSE(scaledByLine(freshScan(), {1, 1}, {1, 1}, 3));
  EXPECT_FALSE(scaledByLine(freshScan(), {1, 1}, {2, 1}, 0));
  EXPECT_FALSE(scaledByLine(freshScan(), {1, 1}, {2, 1}, -2));
}

TEST(PlanScanFit, LevelsASheetThatLayAskew) {
  const Vec2 a = worldOf(freshScan(), {100, 100});
  const Vec2 b = worldOf(freshScan(), {1900, 160});
  const PlanScan scan = levelledByLine(freshScan(), a, b);
  EXPECT_NEAR(worldOf(scan, {1900, 160}).y(), worldOf(scan, {100, 100}).y(), 1e-12);
  EXPECT_NEAR((worldOf(scan, {1900, 160}) - worldOf(scan, {100, 100})).norm(), (b - a).norm(), 1e-12);
  // Upright lines stay upright, and whoever clicks from right to left gets no upside-down plan.
  EXPECT_TRUE(levelledByLine(freshScan(), b, a)
                  .worldFromPixel.topLeftCorner(2, 2)
                  .isApprox(scan.worldFromPixel.topLeftCorner(2, 2), 1e-12));
}

TEST(PlanScanFit, LeavesASlantedLineSlanted) {
  const Vec2 a = worldOf(freshScan(), {100, 100});
  const Vec2 b = worldOf(freshScan(), {1100, 400});
  EXPECT_EQ(levelledByLine(freshScan(), a, b).worldFromPixel, freshScan().worldFromPixel);
}

TEST(PlanScanFit, StraightensAPhotographedPlan) {
  // The picture's world is what the camera saw of a sheet; four corners of a 6 by 4 m room give the true one
  // back.
  PlanScan scan;
  scan.worldFromPixel = Mat3::Identity();
  SeenRectangle seen;
  seen.corners = {photographed({0, 0}), photographed({6, 0}), photographed({6, 4}), photographed({0, 4})};
  seen.first = 6;
  seen.second = 4;
  const auto straight = straightened(scan, seen);
  ASSERT_TRUE(straight) << straight.error().sentence();
  const auto distance = [&](const Vec2& p, const Vec2& q) {
    return (worldOf(*straight, photographed(p)) - worldOf(*straight, photographed(q))).norm();
  };
  EXPECT_NEAR(distance({0, 0}, {6, 0}), 6, 1e-9);
  EXPECT_NEAR(distance({6, 0}, {6, 4}), 4, 1e-9);
  EXPECT_NEAR(distance({1, 1}, {4, 3}), std::hypot(3, 2), 1e-9);
  EXPECT_NEAR(distance({-1, 5}, {7, -1}), 10, 1e-9);
  EXPECT_TRUE(worldOf(*straight, seen.corners[0]).isApprox(seen.corners[0], 1e-9));
  EXPECT_NEAR(worldOf(*straight, seen.corners[1]).y(), seen.corners[0].y(), 1e-9);
}

TEST(PlanScanFit, TakesTheFourPointsEitherWayRound) {
  PlanScan scan;
  scan.worldFromPixel = Mat3::Identity();
  SeenRectangle seen;
  seen.corners = {photographed({0, 0}), photographed({0, 4}), photographed({6, 4}), photographed({6, 0})};
  seen.first = 4;
  seen.second = 6;
  const auto straight = straightened(scan, seen);
  ASSERT_TRUE(straight);
  // Not mirrored: turning from the room's x to its y stays counter-clockwise.
  const Vec2 x = worldOf(*straight, photographed({1, 0})) - worldOf(*straight, photographed({0, 0}));
  const Vec2 y = worldOf(*straight, photographed({0, 1})) - worldOf(*straight, photographed({0, 0}));
  EXPECT_NEAR(cross(x, y), 1, 1e-9);
}

TEST(PlanScanFit, RefusesPointsThatAreNoRectangle) {
  SeenRectangle seen;
  seen.first = seen.second = 1;
  seen.corners = {Vec2(0, 0), Vec2(1, 0), Vec2(2, 0), Vec2(0, 1)};
  EXPECT_FALSE(straightened(freshScan(), seen));
  seen.corners = {Vec2(0, 0), Vec2(1, 1), Vec2(1, 0), Vec2(0, 1)};
  EXPECT_FALSE(straightened(freshScan(), seen));
  seen.corners = {Vec2(0, 0), Vec2(1, 0), Vec2(1, 1), Vec2(0, 1)};
  EXPECT_TRUE(straightened(freshScan(), seen));
  seen.second = 0;
  EXPECT_FALSE(straightened(freshScan(), seen));
}

TEST(PlanScanFit, CutsOffWhatRunsTowardTheHorizon) {
  PlanScan scan = freshScan();
  EXPECT_EQ(usablePixels(scan, {2000, 1000}).size(), 4u);
  // Depth 1 at the lower edge, nothing at row 250, negative above.
  scan.worldFromPixel << 1, 0, 0, 0, -1, 0, 0, 1.0 / 750, -250.0 / 750;
  const Ring usable = usablePixels(scan, {2000, 1000});
  ASSERT_EQ(usable.size(), 4u);
  for (const Vec2& pixel : usable) EXPECT_GE(pixel.y(), 250 + 750 * kSmallestScale - 1e-9);
  for (const Vec2& p : scanOutline(scan, {2000, 1000})) EXPECT_TRUE(p.allFinite());
}

TEST(PlanScanFit, KnowsWhereThePictureIsSeen) {
  EXPECT_TRUE(coversPoint(freshScan(), {2000, 1000}, {3, 2}));
  EXPECT_TRUE(coversPoint(freshScan(), {2000, 1000}, {-1.99, 4.49}));
  EXPECT_FALSE(coversPoint(freshScan(), {2000, 1000}, {-2.01, 4}));
}

TEST(FreshPlan, LiesBesideThoseThatAreThere) {
  const Vec2 pixels(2000, 1000);
  const auto at = [](const Mat3& map, double x, double y) { return *mapped(Homography{map}, {x, y}); };
  Job job;
  const Mat3 first = worldFromFreshPixels(pixels, job);
  EXPECT_NEAR(at(first, 2000, 0).x() - at(first, 0, 0).x(), kFreshPlanWidth, 1e-12);
  job.planScans.emplace_back();
  const Mat3 second = worldFromFreshPixels(pixels, job);
  EXPECT_GT(at(second, 0, 0).x(), at(first, 2000, 0).x());
}

}  // namespace
}  // namespace baywright
