// SPDX-License-Identifier: Apache-2.0
// The Equipment Rules (R&A and USGA), Part 4, and Rules of Golf 2016, Appendix III: the ball. Overall
// Distance Standard and Initial Velocity Standard: the speeds that balls are tested at.
#include <gtest/gtest.h>

#include "flight/ball.h"

namespace baywright {
namespace {

constexpr double kMph = 0.44704;  // m/s, exact

TEST(EquipmentRules, BallIsAsHeavyAndAsSmallAsAllowed) {
  // 1.620 oz avoirdupois, 1.680 in.
  EXPECT_NEAR(kBallMass * 1000, 45.926, 0.001);
  EXPECT_NEAR(2 * kBallRadius * 1000, 42.672, 0.001);
}

TEST(EquipmentRules, EnergyOfBallsAtTheTestSpeeds) {
  // Initial velocity limit 250 ft/s: 133.3 J and 3.50 kg m/s; distance test until 2027, 176 mph: 142.2 J.
  // Computed from the stated speeds as m v^2 / 2.
  EXPECT_NEAR(kineticEnergy({}, 250 * 0.3048), 133.3, 0.05);
  EXPECT_NEAR(kBallMass * 250 * 0.3048, 3.50, 0.005);
  EXPECT_NEAR(kineticEnergy({}, 176 * kMph), 142.2, 0.1);
}

}  // namespace
}  // namespace baywright
