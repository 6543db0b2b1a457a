// SPDX-License-Identifier: Apache-2.0
#include "flight/air.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(Air, ThinsWithAltitude) {
  double last = 2;
  for (double altitude = -1000; altitude <= 11000; altitude += 500) {
    const auto air = standardAir(altitude);
    ASSERT_TRUE(air);
    EXPECT_LT(air->density, last);
    last = air->density;
  }
}

TEST(Air, DefaultIsTheStandardAtSeaLevel) {
  const auto air = standardAir(0);
  ASSERT_TRUE(air);
  EXPECT_NEAR(Air{}.density, air->density, 5e-6);
  EXPECT_NEAR(Air{}.kinematicViscosity, air->kinematicViscosity, 5e-10);
}

TEST(Air, ThinsInProportionToItsTemperature) {
  const auto cold = airAt(1500, 280);
  const auto warm = airAt(1500, 308);
  ASSERT_TRUE(cold && warm);
  EXPECT_NEAR(cold->density / warm->density, 1.1, 1e-12);
}

TEST(Air, RefusesWhatIsNoPlaceForABay) {
  EXPECT_FALSE(standardAir(-1001));
  EXPECT_FALSE(standardAir(11001));
  EXPECT_FALSE(standardAir(std::numeric_limits<double>::quiet_NaN()));
  const auto furnace = airAt(0, 400);
  ASSERT_FALSE(furnace);
  EXPECT_EQ(furnace.error().sentence(), "An air temperature of 400 K cannot be computed. Give 216 to 333 K.");
}

}  // namespace
}  // namespace baywright
