// SPDX-License-Identifier: Apache-2.0
#include "drawing/scale.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace baywright {
namespace {

TEST(Scale, LaddersRunFromLargeToSmall) {
  for (const ScaleFamily family : {ScaleFamily::Metric, ScaleFamily::Architectural}) {
    const auto ladder = scaleLadder(family);
    EXPECT_TRUE(std::is_sorted(ladder.begin(), ladder.end()));
    for (const double denominator : ladder) EXPECT_TRUE(isScale(denominator));
  }
}

// ISO 5455:1979 table 1.
TEST(Scale, MetricOnesAreThoseOfTheStandard) {
  for (const double denominator : {2, 5, 10, 20, 50, 100, 200, 500, 1000}) {
    const auto ladder = scaleLadder(ScaleFamily::Metric);
    EXPECT_NE(std::find(ladder.begin(), ladder.end(), denominator), ladder.end()) << denominator;
  }
}

TEST(Scale, ArchitecturalOnesAreInchesForAFoot) {
  EXPECT_EQ(scaleText(48), "1/4″ = 1′-0″");
  EXPECT_EQ(scaleText(96), "1/8″ = 1′-0″");
  EXPECT_EQ(scaleText(8), "1 1/2″ = 1′-0″");
  // Each text says its own denominator: twelve inches over so many.
  for (const double denominator : scaleLadder(ScaleFamily::Architectural)) {
    EXPECT_DOUBLE_EQ(parseScale(scaleText(denominator)).value(), denominator);
  }
}

TEST(Scale, IsWrittenAsTheStandardSays) {
  EXPECT_EQ(scaleText(50), "SCALE 1:50");
  EXPECT_EQ(scaleName(50), "1:50");
  EXPECT_EQ(scaleName(37.5), "1:37.5");
}

TEST(Scale, IsReadInEachWayOfWriting) {
  EXPECT_EQ(parseScale("1:50").value(), 50);
  EXPECT_EQ(parseScale("50").value(), 50);
  EXPECT_EQ(parseScale("1/4\" = 1'").value(), 48);
  EXPECT_EQ(parseScale("1/4 in = 1 ft").value(), 48);
  EXPECT_EQ(parseScale("20 mm = 1 m").value(), 50);
}

TEST(Scale, ThatCannotBeDrawnIsRefused) {
  for (const char* text : {"", "fifty", "50:1", "1:0", "1:5000", "1'' = ", "-1:50", "1:nan"}) {
    const auto scale = parseScale(text);
    ASSERT_FALSE(scale) << text;
    EXPECT_FALSE(scale.error().sentence().empty());
  }
}

TEST(Scale, FollowsTheUnitOfTheJob) {
  EXPECT_EQ(scaleFamilyOf({LengthUnit::Metres}), ScaleFamily::Metric);
  EXPECT_EQ(scaleFamilyOf({LengthUnit::Millimetres}), ScaleFamily::Metric);
  EXPECT_EQ(scaleFamilyOf({LengthUnit::FeetInches}), ScaleFamily::Architectural);
}

}  // namespace
}  // namespace baywright
