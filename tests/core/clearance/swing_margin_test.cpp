// SPDX-License-Identifier: Apache-2.0
#include "clearance/swing_margin.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <random>

#include "clearance/obstacles.h"
#include "clearance/worst_margin.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

struct Scene {
  Swing swing;
  PlacedSwing placedSwing;
  Obstacles obstacles;
  std::vector<std::size_t> all;
};

Scene sceneOf(const Job& job) {
  Scene scene;
  scene.swing = *swingOf(job.golfers[0], job.golfers[0].clubs[0]);
  RigidMap map = worldFromBay(job.option().placement.bay);
  map.offset = worldFromBay(job.option().placement.bay, job.option().placement.strikePoint(Hand::Right));
  scene.placedSwing = placed(scene.swing.expected, map);
  scene.obstacles = obstaclesOf(job);
  scene.all.resize(scene.obstacles.size());
  std::iota(scene.all.begin(), scene.all.end(), std::size_t{0});
  return scene;
}

JobBuilder busyGarage() {
  return garage(7, 5)
      .withSlopedCeiling(2.5, 3.1, 5)
      .withBeam({2, 0}, {2.5, 5}, 0.2, 2.5, 2.8)
      .withShelf("A", 2, 1.5, 0.5, 1.9)
      .withColumn({1.5, 4.0}, 0.15, 3)
      .withLight({3, 2.4}, 0.3, 2.5, 2.6)
      .withGolfer(1.86)
      .withClub();
}

bool same(const SwingMargin& a, const SwingMargin& b) {
  return a.obstacle == b.obstacle && a.capsule == b.capsule && a.closest.distance == b.closest.distance &&
         a.margin == b.margin;
}

TEST(SwingMargin, SearchAgreesWithLookingAtEverythingToTheLastBit) {
  std::mt19937 random(11);
  std::uniform_real_distribution<double> x(4.5, 6.8);
  std::uniform_real_distribution<double> y(1.5, 3.5);
  std::uniform_real_distribution<double> turn(-kPi, kPi);
  for (int i = 0; i < 40; ++i) {
    const Scene scene = sceneOf(busyGarage().bayAt(x(random), y(random), turn(random)).uncheckedJob());
    for (const double clearance : {0.0, 0.15, 0.6}) {
      const SwingNeeds needs{clearance, 0.005, 3.0};
      const auto fast = tightest(scene.swing.expected, scene.placedSwing, scene.obstacles, scene.all, needs);
      const auto slow = tightest(scene.swing.expected, scene.placedSwing, scene.obstacles, scene.all, needs,
                                 Search::Everything);
      ASSERT_TRUE(fast && slow);
      EXPECT_TRUE(same(*fast, *slow)) << fast->margin.value << " against " << slow->margin.value;
    }
  }
}

TEST(SwingMargin, IsTheGapLessTheClearance) {
  const Job job = garage(12, 9)
                      .withCeiling(4.5)
                      .withGolfer(1.8)
                      .withClub()
                      .bayAt(9, 4.5, 0)
                      .withoutProjector()
                      .withoutMonitor()
                      .job();
  const Scene scene = sceneOf(job);
  Obstacles wall;
  for (const RoomObstacle& obstacle : scene.obstacles) {
    if (obstacle.kind == ObstacleKind::Wall && obstacle.name == "wall A") wall.push_back(obstacle);
  }
  ASSERT_EQ(wall.size(), 1u);
  const std::size_t index = 0;
  const auto found = tightest(scene.swing.expected, scene.placedSwing, wall, {&index, 1}, {0.15, 0.005, 3});
  ASSERT_TRUE(found);
  // Shooting along x, a right-hander's far side from the ball is wall A's side (r points to -y).
  EXPECT_NEAR(found->closest.distance, 4.5 - scene.swing.expected.figures.beyondBall.value, 1e-9);
  EXPECT_NEAR(found->margin.value, found->closest.distance - 0.15, 1e-12);
}

TEST(SwingMargin, HasNoAnswerWithoutObstacles) {
  const Scene scene = sceneOf(busyGarage().job());
  EXPECT_FALSE(tightest(scene.swing.expected, scene.placedSwing, {}, {}, {}));
}

/// What the sigma of a margin says must be what happens when everything it is made of is drawn at random.
TEST(SwingMargin, SigmaAgreesWithMonteCarlo) {
  const Job job = busyGarage().bayAt(6, 2.5, 20_deg).job();
  const Scene scene = sceneOf(job);
  const SwingNeeds needs{0.15, 0.008, 3.0};
  std::mt19937 random(5);
  std::normal_distribution<double> n;
  for (std::size_t o = 0; o < scene.obstacles.size(); ++o) {
    const RoomObstacle& obstacle = scene.obstacles[o];
    const auto found = tightest(scene.swing.expected, scene.placedSwing, scene.obstacles, {&o, 1}, needs);
    ASSERT_TRUE(found);
    if (found->closest.distance < 0.05) continue;  // first order holds away from contact
    const Vec3 along = found->closest.escape;
    const double body =
        scene.swing.expected.sigmaAlong(scene.placedSwing.worldFromSwing.linear.transpose() * along);
    const double other = sigmaAlong(obstacle, found->closest.onSecond, along);
    double sum = 0;
    double squares = 0;
    const int draws = 1500;
    for (int i = 0; i < draws; ++i) {
      // The swing is turned about the strike point and put beside its mark; its surface and the obstacle's
      // come forward or stay back along the gap; a thing in the bay is put beside its own mark.
      const double turn = std::sqrt(2.0) * needs.placementSigma / needs.strikeDistance * n(random);
      const Mat3 about = Eigen::AngleAxisd(turn, Vec3::UnitZ()).toRotationMatrix();
      Vec3 by = needs.placementSigma * Vec3(n(random), n(random), 0) + body * n(random) * along -
                other * n(random) * along;
      if (obstacle.inBay) by -= needs.placementSigma * Vec3(n(random), n(random), n(random));
      const Vec3 origin = scene.placedSwing.origin();
      Capsule moved = found->capsule.capsule;
      moved.a = origin + about * (moved.a - origin) + by;
      moved.b = origin + about * (moved.b - origin) + by;
      const double distance = closest(moved, obstacle).distance;
      sum += distance;
      squares += distance * distance;
    }
    const double sigma = std::sqrt(squares / draws - (sum / draws) * (sum / draws));
    EXPECT_NEAR(sigma, found->margin.sigma, 0.08 * found->margin.sigma) << obstacle.name;
  }
}

}  // namespace
}  // namespace baywright
