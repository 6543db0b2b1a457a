// SPDX-License-Identifier: Apache-2.0
#include "clearance/placed_swing.h"

#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(PlacedSwing, HoldsEveryCapsuleInItsGroupAndBounds) {
  const Job job = roomyHall().job();
  const Swing swing = *swingOf(job.golfers[0], job.golfers[0].clubs[0]);
  RigidMap map = worldFromBay(BayPose{{3, 4}, 0.7});
  const PlacedSwing at = placed(swing.expected, map);
  ASSERT_EQ(at.capsules.size(), swing.expected.capsules.size());
  const auto holds = [](const Aabb3& box, const Aabb3& inner) {
    return (box.low.array() <= inner.low.array()).all() && (box.high.array() >= inner.high.array()).all();
  };
  for (std::size_t i = 0; i < at.capsules.size(); ++i) {
    EXPECT_TRUE(holds(at.groups[i / PlacedSwing::kGroup], boundsOf(at.capsules[i].capsule)));
    EXPECT_TRUE(holds(at.bounds, boundsOf(at.capsules[i].capsule)));
    EXPECT_EQ(at.capsules[i].moment, swing.expected.capsules[i].moment);
    EXPECT_NEAR((at.capsules[i].capsule.a - map(swing.expected.capsules[i].capsule.a)).norm(), 0, 1e-12);
  }
}

TEST(PlacedSwing, BoundsTheEnvelopesUncertainty) {
  const Job job = roomyHall().withMeasuredReach(2.75, 2.0).job();
  const Swing swing = *swingOf(job.golfers[0], job.golfers[0].clubs[0]);
  const PlacedSwing at = placed(swing.expected, {});
  for (double up = -1; up <= 1; up += 0.1) {
    const double level = std::sqrt(std::max(0.0, 1 - up * up));
    EXPECT_LE(swing.expected.sigmaAlong({level, 0, up}), at.sigmaLargest + 1e-12);
    EXPECT_LE(swing.expected.sigmaAlong({0, level, up}), at.sigmaLargest + 1e-12);
  }
}

}  // namespace
}  // namespace baywright
