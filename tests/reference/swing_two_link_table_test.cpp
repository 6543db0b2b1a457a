// SPDX-License-Identifier: Apache-2.0
// Heights of the club's end in an inclined plane, z = ((R + L) - R cos th - L cos(th + b)) sin(phi), worked
// by hand from published inputs: R 0.62, L 1.10 m (Jorgensen); plane of 60 degrees (MacDonald and Hanzely,
// Am. J. Phys. 59, 213, 1991), 45 (teaching convention), 47 (Kwon et al. 2012, driver, from memory); arms of
// the 95th percentile man (ANSUR II); clubs of 45 in and of 48 in, the longest the Rules allow.
#include <gtest/gtest.h>

#include "swing/two_link.h"

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;
constexpr double kTenthOfAMillimetre = 1e-4;

struct Row {
  double arm, club, slope;
  double hubHeight, hubDistance;
  double longTop;    ///< arms 135, wrists 120
  double armsLevel;  ///< arms 90, wrists 90: club up the plane
  double lateCock;   ///< arms 135, wrists 45
  double bound;
};
constexpr Row kRows[] = {
    {0.620, 1.100, 60, 1.4896, 0.8600, 2.1158, 2.4422, 2.8219, 2.9791},
    {0.620, 1.100, 45, 1.2162, 1.2162, 1.7275, 1.9940, 2.3040, 2.4324},
    {0.740, 1.143, 47, 1.3771, 1.2842, 1.9762, 2.2131, 2.5958, 2.7543},
    {0.740, 1.2192, 47, 1.4329, 1.3362, 2.0463, 2.3245, 2.7072, 2.8657},
};

class PlanarTable : public testing::TestWithParam<Row> {};

TEST_P(PlanarTable, PutsTheHubAndTheClubWhereHandCalculationDoes) {
  const Row& row = GetParam();
  const TwoLink links{row.arm, row.club, row.slope * kDegree};
  const auto height = [&](double arms, double cock) {
    return links.clubEnd(arms * kDegree, (arms + cock) * kDegree).z();
  };
  EXPECT_NEAR(links.hub().z(), row.hubHeight, kTenthOfAMillimetre);
  EXPECT_NEAR(-links.hub().y(), row.hubDistance, kTenthOfAMillimetre);
  EXPECT_NEAR(height(135, 120), row.longTop, kTenthOfAMillimetre);
  EXPECT_NEAR(height(90, 90), row.armsLevel, kTenthOfAMillimetre);
  EXPECT_NEAR(height(135, 45), row.lateCock, kTenthOfAMillimetre);
  EXPECT_NEAR(links.heightBound(), row.bound, kTenthOfAMillimetre);
}

INSTANTIATE_TEST_SUITE_P(Swing, PlanarTable, testing::ValuesIn(kRows));

}  // namespace
}  // namespace baywright
