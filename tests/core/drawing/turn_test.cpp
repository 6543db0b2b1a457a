// SPDX-License-Identifier: Apache-2.0
#include "drawing/turn.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

Job skewedRoom() {
  // Wall A leaves the corner at 20 degrees, B is square to it.
  const Vec2 along(std::cos(20_deg), std::sin(20_deg));
  return roomOver({{0, 0}, 8 * along, 8 * along + 6 * leftOf(along), 6 * leftOf(along)})
      .bayAt(2, 4, 0.2)
      .job();
}

TEST(Turn, FollowsTheHandRoundThePivot) {
  const Turnable turnable{{1, 1}, 0.5};
  EXPECT_NEAR(headingAfterDrag(turnable, {3, 1}, {1, 4}), 0.5 + 90_deg, 1e-12);
  EXPECT_NEAR(headingAfterDrag(turnable, {3, 1}, {1, -2}), 0.5 - 90_deg, 1e-12);
  EXPECT_NEAR(headingAfterDrag(turnable, {1, 1}, {5, 5}), 0.5, 1e-12);
  EXPECT_TRUE(pointAhead({{1, 1}, 90_deg}, 2).isApprox(Vec2(1, 3), 1e-12));
}

TEST(Turn, SnapsToWallsBeforeDegrees) {
  const Job job = skewedRoom();
  EXPECT_NEAR(snappedHeading(job, 18_deg).heading, 20_deg, 1e-12);
  EXPECT_EQ(snappedHeading(job, 18_deg).what, "parallel to wall A");
  EXPECT_NEAR(snappedHeading(job, 111_deg).heading, 110_deg, 1e-12);
  EXPECT_EQ(snappedHeading(job, 111_deg).what, "square to wall A");
  EXPECT_NEAR(snappedHeading(job, 46.5_deg).heading, 45_deg, 1e-12);
  EXPECT_EQ(snappedHeading(job, 46.5_deg).what, "45°");
  EXPECT_NEAR(snappedHeading(job, -72_deg).heading, -70_deg, 1e-12);
  EXPECT_NEAR(snappedHeading(job, 52_deg).heading, 52_deg, 1e-12);
  EXPECT_TRUE(snappedHeading(job, 52_deg).what.empty());
}

TEST(Turn, BringsEachThingToTheHeadingAsked) {
  const Job job = garage(10, 8)
                      .bayAt(6, 4, 0.2)
                      .withProjector(1.0, {-3, 0, 2.2})
                      .withBox("Box", {3, 3}, 1, 0.4, 0, 1.8, 0.3)
                      .job();
  for (const Id thing : {job.option().kit.frame.id, job.option().kit.projector.id, idNamed(job, "Box")}) {
    const auto turned = turnedTo(job, thing, 0.45);
    ASSERT_TRUE(turned) << turned.error().sentence();
    EXPECT_NEAR(turnableOf(*turned, thing)->heading, 0.45, 1e-12);
    EXPECT_TRUE(turnableOf(*turned, thing)->pivot.isApprox(turnableOf(job, thing)->pivot, 1e-12));
  }
}

TEST(Turn, KnowsWhatHasNoDirection) {
  const Job job = garage(10, 8).withColumn({4, 3}, 0.2, 2.7).withBystander({2, 2}).job();
  EXPECT_FALSE(turnableOf(job, idNamed(job, "Column")));
  EXPECT_FALSE(turnableOf(job, idNamed(job, "Onlooker")));
  EXPECT_FALSE(turnableOf(job, idNamed(job, "Wall A")));
  EXPECT_FALSE(turnedTo(job, idNamed(job, "Onlooker"), 1));
}

}  // namespace
}  // namespace baywright
