// SPDX-License-Identifier: Apache-2.0
#include "clearance/quantities.h"

#include <set>

#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

TEST(FigureName, JoinsItsPartsWithDots) {
  EXPECT_EQ(figureName({"swing", idText(Id{12}), "highest"}), "swing.12.highest");
}

TEST(Figures, AreNumbersWithAKnownUnit) {
  const std::set<std::string> units = {"m", "m2", "rad", "1", "s", "lx", "lm", "cd/m2", "m/s", "J", "kg/m3", "px"};
  const Assessment assessment = assess(roomyHall().withDoor("D", 2).withBystander({2, 2}).job());
  EXPECT_GT(assessment.quantities.size(), 40u);
  for (const Quantity& figure : assessment.quantities) {
    EXPECT_TRUE(std::isfinite(figure.value)) << figure.name;
    EXPECT_TRUE(units.contains(figure.unit)) << figure.name << " in " << figure.unit;
  }
}

TEST(Figures, HoldTheFloorArea) {
  EXPECT_NEAR(figureOf(assess(roomyHall().job()), "room.floor_area"), 12.0 * 9.0, 1e-9);
}

}  // namespace
}  // namespace baywright
