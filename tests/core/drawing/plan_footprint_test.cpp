// SPDX-License-Identifier: Apache-2.0
#include "drawing/plan_footprint.h"

#include <gtest/gtest.h>

#include "job/thing_lookup.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(PlanFootprint, IsTheFramesForTheWholeBay) {
  const Job job = garage(10, 8).withFrame(3, 2.5, 1.5).bayAt(7, 4, 90_deg).job();
  const double behind = job.option().kit.frame.behindScreen;
  for (const Id thing : {job.option().kit.frame.id, job.option().kit.screen.id, job.option().id}) {
    const auto footprint = planFootprint(job, thing);
    ASSERT_TRUE(footprint);
    EXPECT_NEAR(std::abs(signedArea(footprint->ring)), 4.5, 1e-12);
    double top = -1e9;
    for (const Vec2& corner : footprint->ring) top = std::max(top, corner.y());
    EXPECT_NEAR(top, 4 + behind, 1e-12);
    EXPECT_FALSE(footprint->gaps.empty());
  }
}

TEST(PlanFootprint, ExistsForAllThatADragMoves) {
  const Job job = garage(10, 8)
                      .withFrame(3, 2.5)
                      .withGolfer(1.8)
                      .withClub()
                      .withDoor("A", 2)
                      .withBystander({2, 2})
                      .withColumn({4, 3}, 0.2, 2.7)
                      .withPrism("Prism", {{1, 4}, {2, 4}, {1, 5}}, 0, 1)
                      .withCeilingPart({{0, 0}, {1, 0}, {1, 1}}, 2.3)
                      .job();
  for (const Thing& thing : allThings(job)) {
    const bool isDragged = thing.kind != ThingKind::Wall && thing.name != "Ceiling";
    EXPECT_EQ(planFootprint(job, thing.id).has_value(), isDragged) << thing.name;
  }
  EXPECT_FALSE(planFootprint(job, Id{99999}));
}

}  // namespace
}  // namespace baywright
