// SPDX-License-Identifier: Apache-2.0
#include "flight/arrival.h"

#include <gtest/gtest.h>

#include <random>

#include "flight_scene.h"

namespace baywright {
namespace {

using scene::bay;
using scene::box;
using scene::degrees;

Meets meets(const CaptureInput& input, double launchDegrees, double directionDegrees) {
  return arrivalOf(input, degrees(launchDegrees), degrees(directionDegrees))->meets;
}

TEST(Arrival, NamesEveryPartOfTheBay) {
  const CaptureInput input = bay();
  EXPECT_EQ(meets(input, 16, 0), Meets::Screen);
  EXPECT_EQ(meets(input, -5, 0), Meets::Floor);
  EXPECT_EQ(meets(input, 38, 0), Meets::Surround);
  EXPECT_EQ(meets(input, 45, 0), Meets::RoofFabric);
  EXPECT_EQ(meets(input, 56, 0), Meets::FrameTube);
  EXPECT_EQ(meets(input, 65, 0), Meets::Nothing);
  EXPECT_EQ(meets(input, 16, 27), Meets::Surround);
  EXPECT_EQ(meets(input, 16, 35), Meets::SideFabric);
  EXPECT_EQ(meets(input, 16, -35), Meets::SideFabric);
  EXPECT_EQ(meets(input, 16, 45), Meets::FrameTube);
  EXPECT_EQ(meets(input, 16, 60), Meets::Nothing);
  EXPECT_EQ(meets(input, 16, 150), Meets::Nothing);
}

TEST(Arrival, StopsAtTheFirstThingInTheWay) {
  CaptureInput input = bay();
  const std::vector<Obstacle> room = {box(1, {-1.5, -2, 0}, {-1.3, 2, 3}),
                                      box(2, {-2.2, -0.2, 0}, {-2, 0.2, 1})};
  input.obstacles = room;
  const auto low = arrivalOf(input, degrees(5), 0);
  EXPECT_EQ(low->obstacle, Id{2});
  EXPECT_NEAR(low->position.x(), -2.2 - kBallRadius, 1e-9);
  const auto beside = arrivalOf(input, degrees(5), degrees(20));
  EXPECT_EQ(beside->obstacle, Id{1});
  EXPECT_NEAR(beside->position.x(), -1.5 - kBallRadius, 1e-9);
}

TEST(Arrival, LeavesTheScreenToWhatStandsBehindIt) {
  CaptureInput input = bay();
  const std::vector<Obstacle> wall = {box(9, {0.5, -3, 0}, {0.6, 3, 3})};
  input.obstacles = wall;
  EXPECT_EQ(meets(input, 16, 0), Meets::Screen);
  EXPECT_EQ(meets(input, 16, 60), Meets::Nothing);
}

TEST(Arrival, CountsTheBallsBreadthAgainstPostsAndPicture) {
  CaptureInput input = bay();
  const double down = 3;
  const double edge = input.screen.width / 2;
  const auto at = [&](double across) { return meets(input, 16, std::atan2(across, down) * 180 / kPi); };
  EXPECT_EQ(at(edge - kBallRadius - 1e-4), Meets::Screen);
  EXPECT_EQ(at(edge - kBallRadius + 1e-4), Meets::Surround);
}

/// Along the integrated path with short steps: what the ball's centre is inside of first.
Id bruteForce(const CaptureInput& input, double launchAngle, double direction, double until) {
  Launch launch;
  launch.from = input.ball;
  launch.speed = input.shots.speed;
  launch.spin = input.shots.spin;
  launch.launchAngle = launchAngle;
  launch.direction = direction;
  const NearFlight flight = nearFlight(launch, input.surroundings, -input.ball.x());
  for (double t = 0; t <= until; t += 2e-5) {
    const Vec3 p = flight.at(t);
    for (const Obstacle& obstacle : input.obstacles) {
      const auto& faces = std::get<ConvexPolyhedron>(obstacle.body).faces();
      const bool inside = std::ranges::all_of(
          faces, [&](const auto& f) { return f.normal.dot(p) <= f.offset + input.surroundings.ball.radius; });
      if (inside) return obstacle.id;
    }
  }
  return {};
}

TEST(Arrival, AgreesWithSmallStepsThroughRandomRooms) {
  std::mt19937_64 random(11);
  std::uniform_real_distribution<double> share(0, 1);
  int hits = 0;
  for (int i = 0; i < 60; ++i) {
    CaptureInput input = bay();
    input.frame.width = 20;  // out of the way: only obstacles and the screen's plane count
    input.frame.height = 20;
    input.frame.depth = 0.1;
    input.shots.speed = 20 + 60 * share(random);
    std::vector<Obstacle> room;
    for (std::uint32_t k = 1; k <= 5; ++k) {
      const Vec2 centre(-2.5 + 2.3 * share(random), 2 * share(random) - 1);
      const UprightBox body{centre,
                            3 * share(random),
                            {0.1 + share(random), 0.1 + 0.5 * share(random)},
                            1.5 * share(random),
                            2.0};
      room.push_back({Id{k}, *boxFrom(body)});
    }
    input.obstacles = room;
    for (int shot = 0; shot < 12; ++shot) {
      const double launch = 1.0 * share(random);
      const double direction = 0.9 * (share(random) - 0.5);
      const auto found = arrivalOf(input, launch, direction);
      ASSERT_TRUE(found);
      const double until = found->time + 1e-4;
      if (found->meets != Meets::Obstacle) {
        EXPECT_EQ(bruteForce(input, launch, direction, found->time), Id{});
        continue;
      }
      ++hits;
      const Id expected = bruteForce(input, launch, direction, until);
      // A graze shorter than one step may escape the small steps.
      if (expected) {
        EXPECT_EQ(found->obstacle, expected);
      }
    }
  }
  EXPECT_GT(hits, 200);
}

TEST(Arrival, SeesCylindersAtLeastAsLargeAsTheyAre) {
  CaptureInput input = bay();
  const std::vector<Obstacle> duct = {{Id{4}, Cylinder{{-1, -3, 2}, {-1, 3, 2}, 0.2}}};
  input.obstacles = duct;
  const double distance = std::hypot(2.0, 1.95);
  const double middle = std::atan2(1.95, 2.0);
  const double half = std::asin((0.2 + kBallRadius) / distance);
  // The path lies a few centimetres off a ray; half a degree covers it.
  const auto at = [&](double angle) { return arrivalOf(input, angle, 0)->meets == Meets::Obstacle; };
  EXPECT_TRUE(at(middle - half + degrees(0.5)));
  EXPECT_TRUE(at(middle));
  EXPECT_TRUE(at(middle + half - degrees(0.5)));
  EXPECT_FALSE(at(middle - half - degrees(1)));
}

TEST(Arrival, IsMirroredWithTheBay) {
  std::mt19937_64 random(3);
  std::uniform_real_distribution<double> share(0, 1);
  CaptureInput right = bay();
  right.ball.y() = 0.4;
  const std::vector<Obstacle> lamp = {box(1, {-2, 0.3, 1}, {-1.5, 0.9, 2})};
  right.obstacles = lamp;
  CaptureInput left = right;
  left.ball.y() = -0.4;
  const std::vector<Obstacle> mirrored = {box(1, {-2, -0.9, 1}, {-1.5, -0.3, 2})};
  left.obstacles = mirrored;
  for (int i = 0; i < 300; ++i) {
    const double launch = 1.3 * share(random) - 0.1;
    const double direction = 2 * share(random) - 1;
    const auto a = arrivalOf(right, launch, direction);
    const auto b = arrivalOf(left, launch, -direction);
    EXPECT_EQ(a->meets, b->meets);
    EXPECT_NEAR(a->position.y(), -b->position.y(), 1e-9);
    EXPECT_NEAR(a->time, b->time, 1e-12);
  }
}

TEST(Arrival, FromBesideTheFrameMeetsItsSideFromOutside) {
  CaptureInput input = bay();
  input.ball = {-2.5, 2.5, 0.05};
  const auto arrival = arrivalOf(input, degrees(16), degrees(-30));
  ASSERT_TRUE(arrival);
  EXPECT_EQ(arrival->meets, Meets::SideFabric);
  EXPECT_NEAR(arrival->position.y(), input.frame.width / 2 + kBallRadius, 1e-9);
  EXPECT_EQ(meets(input, 16, 0), Meets::Nothing);
}

TEST(HeightAtScreen, IsThatOfTheIntegratedFlight) {
  CaptureInput input = bay();
  for (const double angle : {0.0, 10.0, 25.0, 40.0}) {
    Launch launch;
    launch.from = input.ball;
    launch.speed = input.shots.speed;
    launch.spin = input.shots.spin;
    launch.launchAngle = degrees(angle);
    launch.direction = degrees(10);
    FlightLimits limits;
    limits.atDown = 0;
    const auto truth = flightOf(launch, {}, limits);
    ASSERT_TRUE(truth);
    EXPECT_NEAR(heightAtScreen(input, degrees(angle), degrees(10)).value(), truth->points.back().position.z(),
                0.0005);
  }
}

TEST(HeightAtScreen, KnowsNothingOfShotsThatFlyAway) {
  EXPECT_FALSE(heightAtScreen(bay(), 0.2, degrees(95)));
}

TEST(LaunchSpans, JoinAndEachHoldsItsOutcome) {
  const CaptureInput input = bay();
  const auto spans = launchSpans(input, {0.1, -0.3, 1.4});
  ASSERT_TRUE(spans);
  EXPECT_EQ(spans->front().from, -0.3);
  EXPECT_EQ(spans->back().to, 1.4);
  for (std::size_t i = 0; i < spans->size(); ++i) {
    const LaunchSpan& span = (*spans)[i];
    if (i > 0) {
      EXPECT_EQ(span.from, (*spans)[i - 1].to);
    }
    for (const double inset : {2e-6, 0.25 * (span.to - span.from), span.to - span.from - 2e-6})
      EXPECT_EQ(arrivalOf(input, span.from + inset, 0.1)->meets, span.middle.meets);
  }
  ASSERT_GE(spans->size(), 6u);
  EXPECT_EQ(spans->front().middle.meets, Meets::Floor);
}

}  // namespace
}  // namespace baywright
