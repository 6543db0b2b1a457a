// SPDX-License-Identifier: Apache-2.0
#include "clearance/ways.h"

#include <set>

#include "clearance/obstacles.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(WalkInput, HoldsWhatOneWalksRound) {
  const Job job = garage(8, 6)
                      .withShelf("A", 1, 2, 0.4, 1.9)                 // walked round
                      .withBox("Rug", {2, 3}, 1, 1, 0, 0.02)          // stepped on
                      .withBeam({0, 2}, {8, 2}, 0.2, 2.3, 2.6)        // walked under
                      .withBox("Low beam", {5, 3}, 0.2, 2, 1.9, 2.3)  // ducked under: in the way
                      .withBystander({1, 5})
                      .withoutMonitor()
                      .withoutProjector()
                      .job();
  const WalkInput input = walkInput(job, obstaclesOf(job));
  EXPECT_EQ(input.obstacles.size(), 2u + 3u);  // and the frame's sides and screen; its roof is above heads
  EXPECT_EQ(input.floor.size(), 4u);
}

TEST(WalkInput, StartsWhereSomebodySwings) {
  JobBuilder left =
      garage(8, 6).withGolfer(1.7, Hand::Left).withClub().bayAt(7, 3, 0).strikingFrom(3, 0.2, -0.4);
  const auto from = walkInput(left.job(), {}).from;
  ASSERT_EQ(from.size(), 1u);
  EXPECT_NEAR((from[0] - Vec2(4, 3.4)).norm(), 0, 1e-12);  // r = -0.4 lies to the left, along y
  const Job both = left.withGolfer(1.8, Hand::Right, "Other").withClub().job();
  ASSERT_EQ(walkInput(both, {}).from.size(), 2u);
  EXPECT_NEAR((walkInput(both, {}).from[0] - Vec2(4, 2.8)).norm(), 0, 1e-12);
}

TEST(WalkInput, RoundThingsLoseNothing) {
  const Job job = garage(8, 6).withColumn({4, 3}, 0.3, 2.5).withoutMonitor().withoutProjector().job();
  const WalkInput input = walkInput(job, fixtureObstacles(job));
  ASSERT_EQ(input.obstacles.size(), 1u);
  EXPECT_GT(signedArea(input.obstacles[0]), kPi * 0.09);
  EXPECT_LT(signedArea(input.obstacles[0]), kPi * 0.09 * 1.005);
}

TEST(WaysOf, IsLessSureBetweenThingsThatWereGuessed) {
  const auto sigma = [](Instrument how) {
    const Job job = garage(8, 6)
                        .bayAt(7, 3, 0)
                        .withDoor("D", 2.5)
                        .withBox("Boxes", {2, 2.6}, 0.4, 5.2, 0, 1.9)
                        .with([&](Job& j) { j.room.fixtures[0].planInstrument = how; })
                        .job();
    return waysOf(job, obstaclesOf(job)).at(0).sigma;
  };
  EXPECT_NEAR(sigma(Instrument::Guess), 0.05, 0.002);
  EXPECT_LT(sigma(Instrument::Laser), 0.005);
}

TEST(WaysOf, IsOneAnExit) {
  const Job job = garage(8, 6)
                      .withDoor("D", 1)
                      .withDoor("D", 4, 0.9)
                      .withPassage("C", 2, 1.2)
                      .withWindow("A", 1, 1, 1, 1)
                      .job();
  EXPECT_EQ(waysOf(job, obstaclesOf(job)).size(), 3u);
}

TEST(DoorSweeps, LeaveOutWhatNeedsNoFloor) {
  const Job job = garage(8, 6)
                      .withDoor("D", 1)
                      .withDoor("D", 4, 0.9, HingeSide::Start, LeafSwing::OutOfRoom)
                      .withPassage("C", 5, 1.2)
                      .withSectionalDoor("C", 1, 2.4, 2.1)
                      .job();
  const auto sweeps = doorSweeps(job);
  ASSERT_EQ(sweeps.size(), 2u);
  EXPECT_EQ(sweeps[0].opening, job.room.openings[0].id);
  EXPECT_EQ(sweeps[1].opening, job.room.openings[3].id);
}

TEST(WaysOf, PassBetweenThingsThatHaveNames) {
  const Job job = garage(8, 6)
                      .bayAt(7, 3, 0)
                      .withDoor("D", 2.5)
                      .withBox("Boxes", {2, 2.6}, 0.4, 5.2, 0, 1.9)
                      .withoutMonitor()
                      .withoutProjector()
                      .job();
  const Obstacles obstacles = obstaclesOf(job);
  const Way way = waysOf(job, obstacles).at(0);
  const std::set<std::string> sides = {sideName(obstacles, way.narrowA), sideName(obstacles, way.narrowB)};
  EXPECT_EQ(sides, (std::set<std::string>{"the boxes", "wall C"}));
  EXPECT_EQ(sideName(obstacles, {4, 3}), "");
}

}  // namespace
}  // namespace baywright
