// SPDX-License-Identifier: Apache-2.0
#include "job/edit_people.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;

Golfer golferWithTwoClubs() {
  Golfer golfer;
  golfer.name = "Robin";
  golfer.clubs = {{Id{1}, "Driver", 1.15, 1.0}, {Id{2}, "Iron", 0.95, 1.05}};
  golfer.reach = MeasuredReach{Id{2}, taped(2.6), {}};
  return golfer;
}

TEST(AddGolfer, GivesNewIdsAndKeepsTheReachOnItsClub) {
  const auto after = addGolfer(garage(6, 4).job(), golferWithTwoClubs());
  ASSERT_TRUE(after) << after.error().sentence();
  const Golfer& golfer = after->golfers.back();
  EXPECT_EQ(golfer.id, Id{after->lastId});
  EXPECT_EQ(golfer.reach->club, golfer.clubs[1].id);
}

TEST(SetGolfer, TakesNewClubsAndForgetsAReachWithoutClub) {
  const Job before = *addGolfer(newJob(), golferWithTwoClubs());
  Golfer golfer = before.golfers[0];
  golfer.clubs.pop_back();
  golfer.clubs.push_back({Id{}, "Wedge", 0.9, 1.1});
  const auto after = setGolfer(before, golfer);
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_TRUE(after->golfers[0].clubs[1].id);
  EXPECT_FALSE(after->golfers[0].reach);
}

TEST(SetGolfer, RefusesAGiant) {
  const Job before = *addGolfer(newJob(), golferWithTwoClubs());
  Golfer golfer = before.golfers[0];
  golfer.stature = taped(5);
  const auto after = setGolfer(before, golfer);
  ASSERT_FALSE(after);
  EXPECT_NE(after.error().sentence().find("Robin"), std::string::npos);
}

TEST(Clubs, AreAddedAndSetById) {
  const Job before = *addGolfer(newJob(), golferWithTwoClubs());
  auto after = addClub(before, before.golfers[0].id, {Id{}, "Wedge", 0.9, 1.1});
  ASSERT_TRUE(after) << after.error().sentence();
  Club wedge = after->golfers[0].clubs[2];
  wedge.length = 0.88;
  EXPECT_EQ(setClub(*after, wedge)->golfers[0].clubs[2].length, 0.88);
  EXPECT_FALSE(addClub(before, Id{9999}, wedge));
  EXPECT_FALSE(setClub(before, Club{}));
}

TEST(Bystanders, AreAddedMovedAndSet) {
  auto job = addBystander(newJob(), Bystander{{}, "Sam", {1, 1}, 0.3, 1.3});
  const Id sam = job->bystanders[0].id;
  job = moveBystander(*job, sam, {0.5, -0.5});
  EXPECT_EQ(job->bystanders[0].position, Vec2(1.5, 0.5));
  Bystander seated = job->bystanders[0];
  seated.height = 1.1;
  EXPECT_EQ(setBystander(*job, seated)->bystanders[0].height, 1.1);
  EXPECT_FALSE(moveBystander(*job, Id{9999}, {0, 0}));
}

}  // namespace
}  // namespace baywright
