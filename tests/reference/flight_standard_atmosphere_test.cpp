// SPDX-License-Identifier: Apache-2.0
// ISO 2533:1975, Standard Atmosphere.
#include <gtest/gtest.h>

#include "flight/air.h"

namespace baywright {
namespace {

/// ISO 2533 section 2: geopotential from geometric altitude with the Earth's nominal radius of 6 356 766 m.
double geopotential(double geometric) {
  return 6356766 * geometric / (6356766 + geometric);
}

TEST(StandardAtmosphere, TableOfDensityAndViscosity) {
  // Relative density and kinematic viscosity (1e-5 m^2/s) over geometric altitude, as tabulated at
  // engineeringtoolbox.com, "International Standard Atmosphere".
  struct Row {
    double altitude, relativeDensity, viscosity;
  };
  const Row rows[] = {{-500, 1.0489, 1.405}, {0, 1.0000, 1.461},    {500, 0.9529, 1.520},
                      {1000, 0.9075, 1.581}, {1500, 0.8638, 1.646}, {2000, 0.8217, 1.715},
                      {3000, 0.7423, 1.863}, {5000, 0.6012, 2.211}, {8000, 0.4292, 2.904},
                      {10000, 0.3376, 3.525}};
  for (const Row& row : rows) {
    const auto air = standardAir(geopotential(row.altitude));
    ASSERT_TRUE(air);
    EXPECT_NEAR(air->density / 1.225, row.relativeDensity, 1e-4) << row.altitude << " m";
    EXPECT_NEAR(air->kinematicViscosity * 1e5, row.viscosity, 1e-3) << row.altitude << " m";
  }
}

TEST(StandardAtmosphere, DensityAtFiveThousandFeet) {
  // Density ratio 0.8617 at 5000 ft (1524 m), handbook table of the standard atmosphere; 1.0555 kg/m^3.
  EXPECT_NEAR(standardAir(1524)->density / 1.225, 0.8617, 1e-4);
  EXPECT_NEAR(standardAir(1524)->density, 1.0555, 5e-4);
}

TEST(DryAir, DensityOfHeatedRoomsAtSeaLevel) {
  // Dry air at 101.325 kPa, table of density against temperature (liquisearch.com, Density of air).
  struct Row {
    double celsius;
    double density;
  };
  for (const Row& row : {Row{35, 1.1455}, Row{30, 1.1644}, Row{25, 1.1839}, Row{20, 1.2041}, Row{15, 1.2250},
                         Row{10, 1.2466}, Row{5, 1.2690}, Row{0, 1.2922}, Row{-10, 1.3413}}) {
    EXPECT_NEAR(airAt(0, 273.15 + row.celsius)->density, row.density, 1e-4) << row.celsius;
  }
}

}  // namespace
}  // namespace baywright
