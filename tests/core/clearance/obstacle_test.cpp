// SPDX-License-Identifier: Apache-2.0
#include "clearance/obstacle.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace baywright {
namespace {

Solid box(const Vec3& low, const Vec3& high) {
  return *boxFrom(TiltedBox{0.5 * (low + high), Mat3((0.5 * (high - low)).asDiagonal())});
}

TEST(Obstacle, MixesItsEndsAlongTheRun) {
  RoomObstacle wall;
  wall.uncertainty.run = {{0, 0}, {4, 0}};
  wall.uncertainty.atFrom = PlanCovariance::isotropic(0.01);
  wall.uncertainty.atTo = PlanCovariance::isotropic(0.03);
  EXPECT_NEAR(sigmaAlong(wall, {0, 0, 1}, {0, 1, 0}), 0.01, 1e-12);
  EXPECT_NEAR(sigmaAlong(wall, {4, 0, 1}, {0, 1, 0}), 0.03, 1e-12);
  EXPECT_NEAR(sigmaAlong(wall, {2, 0, 1}, {0, 1, 0}), std::hypot(0.005, 0.015), 1e-12);
  EXPECT_NEAR(sigmaAlong(wall, {9, 0, 1}, {0, 1, 0}), 0.03, 1e-12);  // beyond its end
}

TEST(Obstacle, IsAsUncertainAsTheSideThatIsMet) {
  RoomObstacle beam;
  beam.uncertainty.bottom = 0.02;
  beam.uncertainty.top = 0.05;
  EXPECT_DOUBLE_EQ(sigmaAlong(beam, {0, 0, 2}, {0, 0, -1}), 0.02);
  EXPECT_DOUBLE_EQ(sigmaAlong(beam, {0, 0, 3}, {0, 0, 1}), 0.05);
  EXPECT_NEAR(sigmaAlong(beam, {0, 0, 2}, Vec3(0, 0.6, -0.8)), 0.016, 1e-12);
  EXPECT_DOUBLE_EQ(sigmaAlong(beam, {0, 0, 2}, {1, 0, 0}), 0);
}

TEST(Obstacle, BoundsItsUncertainty) {
  RoomObstacle any;
  any.uncertainty = {{4e-4, 1e-4, 1e-4}, {1e-4, 0, 9e-4}, {{0, 0}, {2, 1}}, 0.01, 0.02, 0.005};
  std::mt19937 random(3);
  std::normal_distribution<double> n;
  for (int i = 0; i < 2000; ++i) {
    const Vec3 along = Vec3(n(random), n(random), n(random)).normalized();
    EXPECT_LE(sigmaAlong(any, {n(random), n(random), n(random)}, along), largestSigma(any) + 1e-15);
  }
}

TEST(Obstacle, LowerBoundsHoldForGapsAndOverlaps) {
  std::mt19937 random(4);
  std::uniform_real_distribution<double> place(-2, 2);
  RoomObstacle wedge = withSolid(
      {}, *convexPrismFrom(
              {{{-1, -0.5}, {1, -0.5}, {0.4, 0.8}}, SlopedPlane::level(-0.6), {{0, 0}, 0.5, {0.2, 0.1}}}));
  RoomObstacle sharing = wedge;
  sharing.sharedSides = {{Vec3(0, -1, 0), {}}};
  const RoomObstacle round = withSolid({}, Cylinder{{0, 0, -1}, {0.2, 0, 1}, 0.5});
  for (int i = 0; i < 5000; ++i) {
    const Capsule capsule{
        {place(random), place(random), place(random)}, {place(random), place(random), place(random)}, 0.05};
    const Aabb3 around = joined(boundsOf(capsule), Aabb3{capsule.a, capsule.a + Vec3(0.3, 0.2, 0.1)});
    for (const RoomObstacle* obstacle :
         std::initializer_list<const RoomObstacle*>{&wedge, &sharing, &round}) {
      const double distance = closest(capsule, *obstacle).distance;
      EXPECT_LE(lowerBound(capsule, *obstacle), distance + 1e-9);
      EXPECT_LE(lowerBound(around, *obstacle), distance + 1e-9);
    }
  }
}

TEST(Obstacle, IsNotLeftThroughASharedSide) {
  // A ceiling piece whose side x = 1 borders on more ceiling; a club stands 0.3 m up into it, close to that
  // side.
  RoomObstacle ceiling = withSolid({}, box({-1, -1, 2.5}, {1, 1, 4}));
  const Capsule club{{0.95, 0, 1}, {0.95, 0, 2.8}, 0.01};
  EXPECT_NEAR(closest(club, ceiling).distance, -0.06, 1e-9);  // sideways, into the next piece
  ceiling.sharedSides = {{Vec3::UnitX(), {}}};
  const Closest down = closest(club, ceiling);
  EXPECT_NEAR(down.distance, -0.31, 1e-9);
  EXPECT_NEAR((down.escape - Vec3(0, 0, -1)).norm(), 0, 1e-12);
  EXPECT_NEAR((down.onFirst - down.onSecond - down.distance * down.escape).norm(), 0, 1e-12);
}

TEST(Obstacle, SharedSidesChangeNothingAboutGaps) {
  RoomObstacle ceiling = withSolid({}, box({-1, -1, 2.5}, {1, 1, 4}));
  ceiling.sharedSides = {{Vec3::UnitX(), {}}};
  EXPECT_NEAR(closest(Capsule{{1.5, 0, 3}, {1.5, 0, 3.5}, 0.1}, ceiling).distance, 0.4, 1e-12);
}

TEST(Obstacle, StandsInTheWayBetweenAnkleAndHead) {
  EXPECT_TRUE(standsInTheWay(withSolid({}, box({0, 0, 0}, {1, 1, 0.5})), 2.0));
  EXPECT_FALSE(standsInTheWay(withSolid({}, box({0, 0, 0}, {1, 1, 0.03})), 2.0));
  EXPECT_FALSE(standsInTheWay(withSolid({}, box({0, 0, 2.1}, {1, 1, 2.3})), 2.0));
}

}  // namespace
}  // namespace baywright
