// SPDX-License-Identifier: Apache-2.0
#include "geometry/closest.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

const ConvexPolyhedron kUnitBox = boxFrom(TiltedBox{Vec3::Zero(), Mat3::Identity() * 0.5}).value();
const Cylinder kPipe{{0, 0, -1}, {0, 0, 1}, 0.5};

void expectAt(const Vec3& point, const Vec3& expected) {
  EXPECT_NEAR((point - expected).norm(), 0, 1e-12) << point.transpose() << " is not " << expected.transpose();
}

TEST(ClosestSegments, CrossAtARightAngleWithAGap) {
  const Closest c = closest(Segment3{{-1, 0, 1}, {1, 0, 1}}, Segment3{{0, -1, 0}, {0, 1, 0}});
  EXPECT_DOUBLE_EQ(c.distance, 1);
  expectAt(c.onFirst, {0, 0, 1});
  expectAt(c.onSecond, {0, 0, 0});
  expectAt(c.escape, {0, 0, 1});
}

TEST(ClosestSegments, ParallelAndShifted) {
  EXPECT_DOUBLE_EQ(closest(Segment3{{0, 0, 0}, {1, 0, 0}}, Segment3{{0.5, 2, 0}, {3, 2, 0}}).distance, 2);
  EXPECT_DOUBLE_EQ(closest(Segment3{{0, 0, 0}, {1, 0, 0}}, Segment3{{4, 4, 0}, {9, 4, 0}}).distance, 5);
}

TEST(ClosestSegments, AlmostParallelLosesNoDigits) {
  // They cross at x = 0.5 at an angle of 2e-8, where the usual quadratic form sees parallel lines.
  const double tilt = 1e-8;
  const Closest c = closest(Segment3{{0, 0, 0}, {1, 0, 0}}, Segment3{{0, -tilt, 1e-3}, {1, tilt, 1e-3}});
  EXPECT_NEAR(c.distance, 1e-3, 1e-18);
  EXPECT_NEAR(c.onFirst.x(), 0.5, 1e-6);
}

TEST(ClosestSegments, PointsAreSegmentsToo) {
  const Segment3 point{{1, 2, 3}, {1, 2, 3}};
  EXPECT_DOUBLE_EQ(closest(point, Segment3{{1, 2, 7}, {1, 2, 7}}).distance, 4);
  const Closest same = closest(point, point);
  EXPECT_EQ(same.distance, 0);
  expectAt(same.escape, {0, 0, 1});
}

TEST(ClosestSegments, CrossingOnesPartAcrossBoth) {
  const Closest c = closest(Segment3{{-1, 0, 0}, {1, 0, 0}}, Segment3{{0, -1, 0}, {0, 1, 0}});
  EXPECT_EQ(c.distance, 0);
  EXPECT_NEAR(std::abs(c.escape.z()), 1, 1e-15);
}

TEST(ClosestCapsules, OverlapByTheSumOfRadiiWhereCoresCross) {
  const Closest c = closest(Capsule{{-1, 0, 0}, {1, 0, 0}, 0.2}, Capsule{{0, -1, 0}, {0, 1, 0}, 0.3});
  EXPECT_DOUBLE_EQ(c.distance, -0.5);
  expectAt(c.onFirst - c.onSecond, -0.5 * c.escape);
}

TEST(ClosestCapsules, GapLessBothRadii) {
  const Closest c = closest(Capsule{{0, 0, 2}, {1, 0, 2}, 0.5}, Capsule{{0.5, 0, 0}, {0.5, 3, 0}, 0.25});
  EXPECT_DOUBLE_EQ(c.distance, 1.25);
  expectAt(c.onFirst, {0.5, 0, 1.5});
  expectAt(c.onSecond, {0.5, 0, 0.25});
}

TEST(ClosestTriangle, OverTheFaceAnEdgeAndACorner) {
  const Triangle t{{0, 0, 0}, {4, 0, 0}, {0, 4, 0}};
  EXPECT_DOUBLE_EQ(closest(Capsule{{1, 1, 2}, {1, 1, 5}, 0.5}, t).distance, 1.5);
  EXPECT_DOUBLE_EQ(closest(Segment3{{2, -3, 4}, {2, -3, 9}}, t).distance, 5);
  EXPECT_DOUBLE_EQ(closest(Segment3{{-2, -1, 2}, {-5, -1, 2}}, t).distance, 3);
}

TEST(ClosestTriangle, HasNoInside) {
  const Triangle t{{0, 0, 0}, {4, 0, 0}, {0, 4, 0}};
  const Closest c = closest(Capsule{{1, 1, -0.3}, {1, 1, 1}, 0.1}, t);
  EXPECT_DOUBLE_EQ(c.distance, -0.1);
  expectAt(c.escape, {0, 0, 1});  // less of the core lies below
  expectAt(c.onFirst, {1, 1, -0.1});
}

TEST(ClosestTriangle, WithoutAreaIsItsLongestEdge) {
  const Triangle line{{0, 0, 0}, {1, 0, 0}, {3, 0, 0}};
  EXPECT_DOUBLE_EQ(closest(Segment3{{2.5, 1, 0}, {2.5, 2, 0}}, line).distance, 1);
  const Triangle dot{{1, 1, 1}, {1, 1, 1}, {1, 1, 1}};
  EXPECT_DOUBLE_EQ(closest(Segment3{{1, 1, 3}, {1, 1, 4}}, dot).distance, 2);
}

TEST(ClosestTriangle, SliverKeepsItsPlane) {
  // Ten nanometres high and two metres long; the segment ends one millimetre over it.
  const Triangle sliver{{-1, 0, 0}, {1, 0, 0}, {0.3, 1e-8, 0}};
  EXPECT_NEAR(closest(Segment3{{0.2, 5e-9, 1e-3}, {0.2, 0, 1}}, sliver).distance, 1e-3, 1e-15);
}

TEST(ClosestBox, FaceEdgeAndCorner) {
  EXPECT_DOUBLE_EQ(closest(Capsule{{0, 0, 1}, {0, 0, 2}, 0.1}, kUnitBox).distance, 0.4);
  EXPECT_DOUBLE_EQ(closest(Capsule{{-1, 3.5, 4.5}, {1, 3.5, 4.5}, 1}, kUnitBox).distance, 4);
  EXPECT_DOUBLE_EQ(closest(Capsule{{1.5, 2.5, 2.5}, {1.5, 2.5, 2.5}, 0}, kUnitBox).distance, 3);
}

TEST(ClosestBox, CoreThroughTheMiddleLeavesByTheNearestSide) {
  const Closest c = closest(Capsule{{-2, 0, 0.3}, {2, 0, 0.3}, 0.05}, kUnitBox);
  EXPECT_NEAR(c.distance, -0.25, 1e-15);
  expectAt(c.escape, {0, 0, 1});
  EXPECT_NEAR(c.onSecond.z(), 0.5, 1e-15);
  EXPECT_LE(c.onSecond.cwiseAbs().maxCoeff(), 0.5 + 1e-15);
}

TEST(ClosestBox, CoreThatCutsAnEdgeLeavesAcrossIt) {
  // A long core near the vertical edge at (0.5, 0.5), turned 45 degrees: the way out is the diagonal.
  const Closest c = closest(Capsule{{1.4, -0.5, 0}, {-0.5, 1.4, 0}, 0}, kUnitBox);
  EXPECT_NEAR(c.distance, -0.1 / std::sqrt(2.0), 1e-15);
  expectAt(c.escape, Vec3(1, 1, 0).normalized());
  expectAt(c.onSecond, {0.5, 0.5, c.onSecond.z()});
}

TEST(ClosestBox, TouchingIsZeroWithAUsableEscape) {
  const Closest c = closest(Capsule{{0.2, 0.1, 0.75}, {0.2, 0.1, 3}, 0.25}, kUnitBox);
  EXPECT_EQ(c.distance, 0);
  expectAt(c.escape, {0, 0, 1});
  const Closest core = closest(Capsule{{-1, 0, 0.5}, {1, 0, 0.5}, 0}, kUnitBox);
  EXPECT_EQ(core.distance, 0);
  expectAt(core.escape, {0, 0, 1});
}

TEST(ClosestPoint, InsideIsNegative) {
  EXPECT_DOUBLE_EQ(closest(Vec3(0.4, 0, 0), Solid(kUnitBox)).distance, -0.1);
  EXPECT_DOUBLE_EQ(closest(Vec3(0.4, 0, 0), Solid(kPipe)).distance, -0.1);
  EXPECT_DOUBLE_EQ(closest(Vec3(0, 0, 0), Solid(kPipe)).distance, -0.5);
  EXPECT_DOUBLE_EQ(closest(Vec3(0.1, 0, 0.9), Solid(kPipe)).distance, -0.1);
}

TEST(ClosestCylinder, SideEndAndRim) {
  EXPECT_DOUBLE_EQ(closest(Capsule{{2, -1, 0.3}, {2, 1, 0.3}, 0.5}, kPipe).distance, 1);
  EXPECT_DOUBLE_EQ(closest(Capsule{{0.1, 0, 2}, {0.1, 0, 3}, 0.25}, kPipe).distance, 0.75);
  // Point at (0.5 + 3, 0, 1 + 4) from the rim at (0.5, 0, 1).
  const Closest c = closest(Capsule{{3.5, 0, 5}, {6, 0, 9}, 0}, kPipe);
  EXPECT_DOUBLE_EQ(c.distance, 5);
  expectAt(c.onSecond, {0.5, 0, 1});
}

TEST(ClosestCylinder, CoreAlongTheAxisLeavesSidewaysOrByTheEnd) {
  const Closest through = closest(Capsule{{0, 0, -2}, {0, 0, 2}, 0.1}, kPipe);
  EXPECT_DOUBLE_EQ(through.distance, -0.6);
  EXPECT_NEAR(through.escape.z(), 0, 1e-15);
  const Closest end = closest(Capsule{{0, 0, 0.8}, {0, 0, 2}, 0.1}, kPipe);
  EXPECT_NEAR(end.distance, -0.3, 1e-15);
  expectAt(end.escape, {0, 0, 1});
}

TEST(ClosestCylinder, CoreThatCutsARimLeavesAcrossIt) {
  // In the plane y = 0 the core runs at 45 degrees past the rim at (0.5, 1), 0.1 deep.
  const Vec3 out = Vec3(1, 0, 1).normalized();
  const Vec3 along = Vec3(1, 0, -1).normalized();
  const Vec3 deep = Vec3(0.5, 0, 1) - 0.1 * out;
  const Closest c = closest(Capsule{deep - 2 * along, deep + 2 * along, 0.02}, kPipe);
  EXPECT_NEAR(c.distance, -0.12, 1e-14);
  expectAt(c.escape, out);
  expectAt(c.onSecond, {0.5, 0, 1});
}

TEST(ClosestBodies, BoxesByFaceEdgeAndOverlap) {
  const auto at = [](const Vec3& centre) {
    return boxFrom(TiltedBox{centre, Mat3::Identity() * 0.5}).value();
  };
  EXPECT_DOUBLE_EQ(closest(kUnitBox, at({3, 0.2, 0})).distance, 2);
  EXPECT_DOUBLE_EQ(closest(kUnitBox, at({4, 5, 0})).distance, 5);
  const Closest c = closest(kUnitBox, at({0.7, 0.1, 0}));
  EXPECT_NEAR(c.distance, -0.3, 1e-15);
  expectAt(c.escape, {-1, 0, 0});
  EXPECT_EQ(closest(kUnitBox, at({1, 0, 0})).distance, 0);
}

TEST(ClosestBodies, BoxInsideABoxLeavesByTheNearestSide) {
  const auto small = boxFrom(TiltedBox{{0.3, 0, 0}, Mat3::Identity() * 0.1}).value();
  const Closest c = closest(small, kUnitBox);
  EXPECT_NEAR(c.distance, -0.3, 1e-15);
  expectAt(c.escape, {1, 0, 0});
}

TEST(ClosestBodies, PipeAndBox) {
  const auto shelf = boxFrom(UprightBox{{2, 0}, 0, {1, 4}, -0.1, 0.1}).value();
  EXPECT_DOUBLE_EQ(closest(kPipe, shelf).distance, 1);
  // A pipe through a slab touches none of its edges and has its middle outside.
  const auto slab = boxFrom(UprightBox{{0, 0}, 0, {4, 4}, 0.7, 0.75}).value();
  const Closest c = closest(kPipe, slab);
  EXPECT_NEAR(c.distance, -0.3, 1e-15);
  expectAt(c.escape, {0, 0, -1});
  EXPECT_NEAR(reversed(closest(slab, kPipe)).distance, c.distance, 1e-15);
}

TEST(ClosestBodies, PipesCrossedParallelAndEndToEnd) {
  EXPECT_NEAR(closest(kPipe, Cylinder{{-3, 2, 0}, {3, 2, 0}, 0.25}).distance, 1.25, 1e-9);
  EXPECT_NEAR(closest(kPipe, Cylinder{{3, 4, -9}, {3, 4, 9}, 1}).distance, 3.5, 1e-9);
  EXPECT_NEAR(closest(kPipe, Cylinder{{0.2, 0, 1.5}, {0.2, 0, 9}, 1}).distance, 0.5, 1e-9);
  EXPECT_NEAR(closest(kPipe, Cylinder{{0, 0.3, -3}, {0, 0.3, 9}, 0.1}).distance, -0.3, 1e-9);
  EXPECT_NEAR(closest(kPipe, kPipe).distance, -1, 1e-9);
}

TEST(LowerBound, IsTheGapOfTheBoxesOrTheShallowestAxis) {
  const Aabb3 box{Vec3(0, 0, 0), Vec3(1, 2, 3)};
  EXPECT_DOUBLE_EQ(lowerBound(Capsule{{4, 6, 1}, {5, 7, 2}, 0.5}, box), 4.5);
  EXPECT_DOUBLE_EQ(lowerBound(Capsule{{0.7, 1, 1}, {0.8, 1, 1}, 0.1}, box), -0.4);
}

}  // namespace
}  // namespace baywright
