// SPDX-License-Identifier: Apache-2.0
#include "job/edit_fixtures.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;
using testing::idNamed;

constexpr double kExact = 1e-12;

const FixtureShape kShapes[] = {BoxShape{{1, 2}, 0.3, 2, 0.5}, CylinderShape{{1, 2}, 0.2},
                                PrismShape{{{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 4}, {0, 4}}}};

TEST(MiddleOf, IsTheCentreOfArea) {
  EXPECT_EQ(middleOf(kShapes[0]), Vec2(1, 2));
  EXPECT_EQ(middleOf(kShapes[1]), Vec2(1, 2));
  // An L of 3 x 1 and 1 x 3: (3 * (1.5, 0.5) + 3 * (0.5, 2.5)) / 6.
  EXPECT_NEAR((middleOf(kShapes[2]) - Vec2(1, 1.5)).norm(), 0, kExact);
}

TEST(Turned, KeepsTheDistanceToThePivot) {
  const Vec2 pivot(-1, 3);
  for (const FixtureShape& shape : kShapes) {
    const FixtureShape after = turned(shape, 0.7, pivot);
    EXPECT_NEAR((middleOf(after) - pivot).norm(), (middleOf(shape) - pivot).norm(), kExact);
    EXPECT_NEAR((middleOf(turned(after, -0.7, pivot)) - middleOf(shape)).norm(), 0, kExact);
  }
}

TEST(Turned, TurnsCounterClockwise) {
  const auto box = std::get<BoxShape>(turned(BoxShape{{1, 0}, 0, 1, 1}, kPi / 2, {0, 0}));
  EXPECT_NEAR((box.centre - Vec2(0, 1)).norm(), 0, kExact);
  EXPECT_NEAR(box.heading, kPi / 2, kExact);
}

TEST(Translated, MovesTheMiddle) {
  for (const FixtureShape& shape : kShapes)
    EXPECT_NEAR((middleOf(translated(shape, {0.5, -2})) - middleOf(shape) - Vec2(0.5, -2)).norm(), 0, kExact);
}

TEST(FixtureVerbs, AddMoveTurnAndSet) {
  Fixture column;
  column.name = "Column";
  column.shape = CylinderShape{{3, 1}, 0.1};
  auto job = addFixture(garage(6, 4).job(), column);
  ASSERT_TRUE(job) << job.error().sentence();
  const Id id = idNamed(*job, "Column");
  job = moveFixture(*job, id, {0.5, 0.25});
  EXPECT_EQ(middleOf(job->room.fixtures[0].shape), Vec2(3.5, 1.25));
  job = turnFixture(*job, id, 1);
  EXPECT_EQ(middleOf(job->room.fixtures[0].shape), Vec2(3.5, 1.25)) << "about its own middle";
  Fixture taller = job->room.fixtures[0];
  taller.top = taped(2);
  EXPECT_EQ(setFixture(*job, taller)->room.fixtures[0].top.value, 2);
}

TEST(FixtureVerbs, RefuseWhatIsNotThereOrNotFinite) {
  const Job job = garage(6, 4).withColumn({3, 1}, 0.1, 2).job();
  EXPECT_FALSE(moveFixture(job, Id{9999}, {1, 1}));
  EXPECT_FALSE(turnFixture(job, Id{9999}, 1));
  EXPECT_FALSE(setFixture(job, Fixture{}));
  EXPECT_FALSE(moveFixture(job, idNamed(job, "Column"), {std::nan(""), 0}));
  EXPECT_FALSE(moveFixture(job, idNamed(job, "Column"), {1e9, 0}));
}

}  // namespace
}  // namespace baywright
