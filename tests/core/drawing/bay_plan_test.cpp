// SPDX-License-Identifier: Apache-2.0
#include "drawing/bay_plan.h"

#include <gtest/gtest.h>

#include "drawn_job.h"

namespace baywright::detail {
namespace {

using namespace baywright::testing;

TEST(BayPlan, AgreesWithTheFrames) {
  const BayPose pose{{3, 1}, 0.7};
  const BayPlan plan{pose};
  EXPECT_TRUE(plan(-2, 0.5).isApprox(flat(worldFromBay(pose, {-2, 0.5, 0})), 1e-12));
}

TEST(BayPlan, BoxesRunCounterClockwise) {
  EXPECT_NEAR(signedArea(BayPlan{{{3, 1}, 0.7}}.box(-1, 0.5, -2, 2)), 6, 1e-12);
}

TEST(BayPlan, CarriesSwingsToTheirStrikePoint) {
  SwingZone zone;
  zone.bay = {{5, 2}, 0};
  zone.strikePointInBay = {-2.6, 0.3, 0};
  const auto rings = planRings({{{0, 0}, {1, 0}, {0, 1}}}, zone);
  // heading 0: d is x, r is -y
  EXPECT_TRUE(rings[0][0].isApprox(Vec2(2.4, 1.7), 1e-12));
  EXPECT_TRUE(rings[0][2].isApprox(Vec2(2.4, 0.7), 1e-12));
}

TEST(StrikePoints, AreThoseOfTheHandsInUse) {
  EXPECT_EQ(strikePoints(smallGarage()).size(), 1u);
  EXPECT_EQ(strikePoints(slopedWorkshop()).size(), 2u);
  Job nobody = slopedWorkshop();
  nobody.golfers.clear();
  EXPECT_EQ(strikePoints(nobody).size(), 2u);
  Job watching = slopedWorkshop();
  watching.golfers[1].swings = false;
  EXPECT_EQ(strikePoints(watching).size(), 1u);
}

TEST(StrikePoints, ThatAreSharedAreOne) {
  Job job = slopedWorkshop();
  job.option().placement.strikeLeftHanded = job.option().placement.strikeRightHanded;
  EXPECT_EQ(strikePoints(job).size(), 1u);
}

}  // namespace
}  // namespace baywright::detail
