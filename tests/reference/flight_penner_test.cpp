// SPDX-License-Identifier: Apache-2.0
// A. R. Penner: "The physics of golf: The optimum loft of a driver", Am. J. Phys. 69 (2001) 563-568; "The run
// of a golf ball", Can. J. Phys. 80 (2002) 931-940; "The physics of putting", Can. J. Phys. 80 (2002) 83-96.
// Second-hand: constants as quoted by public programs.
#include <gtest/gtest.h>

#include "flight/impact.h"
#include "flight/rebound.h"

namespace baywright {
namespace {

TEST(Penner2001, ImpactOfADriver) {
  // 45 m/s, loft 11 degrees, head 200 g, ball 45.9 g and 21.3 mm: worked out from the paper's equations.
  const Impact impact = impactOf({45, 11 * kPi / 180, 0.2, {0.0459, 0.0213}});
  EXPECT_NEAR(impact.restitution, 0.7319, 0.0007);
  EXPECT_NEAR(impact.ballSpeed, 62.27, 0.06);
  EXPECT_NEAR(impact.launchAngle * 180 / kPi, 8.88, 0.01);
  EXPECT_NEAR(impact.spin * 30 / kPi, 2580, 2.6);
}

TEST(Penner2002, RestitutionOfTurf) {
  EXPECT_NEAR(turfRestitution(10), 0.2253, 5e-4);
  EXPECT_NEAR(turfRestitution(20), 0.1212, 5e-4);
  EXPECT_NEAR(turfRestitution(30), 0.120, 5e-4);
}

/// How far a ball rolls that starts with that speed, scaled from one that comes off the screen.
double rollFrom(double speed, double rolling) {
  ReboundInput input;
  input.screen.restitution = 0.03;
  input.alongFabric = 0;
  input.floor = {0.0, 0.0, rolling};
  const auto rebound = reboundOf(input, 0.05, 0);
  // A ball that slides onto the floor without spin rolls with 5/7 of its speed.
  const double started = 5.0 / 7.0 * -rebound->velocityOut.x();
  return (rebound->landing.x() - rebound->rest.x()) * (speed / started) * (speed / started);
}

TEST(Penner2002, RollsOffAStimpmeterAsFarAsGreensAreRated) {
  // A stimpmeter starts a ball with 6.00 ft/s; greens are rated in feet of roll, from 4.5 (slow) to 8.5
  // (fast), 10.5 and more for championships (pinerygcm.blogspot.com, June 2009, after the USGA). Penner's
  // rolling resistance: 0.196 slow, 0.131 medium, 0.065 fast.
  const double start = 6.00 * 0.3048;
  EXPECT_NEAR(rollFrom(start, 0.196) / 0.3048, 4.0, 0.1);
  EXPECT_NEAR(rollFrom(start, 0.131) / 0.3048, 6.0, 0.1);
  EXPECT_NEAR(rollFrom(start, 0.065) / 0.3048, 12.1, 0.1);
}

}  // namespace
}  // namespace baywright
