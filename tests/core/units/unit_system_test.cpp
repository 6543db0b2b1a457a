// SPDX-License-Identifier: Apache-2.0
#include "units/unit_system.h"

#include <gtest/gtest.h>

#include <set>
#include <string_view>

namespace baywright {
namespace {

TEST(UnitSystem, EachUnitHasANameOfItsOwn) {
  std::set<std::string_view> names;
  for (LengthUnit unit : kLengthUnits) names.insert(unitName(unit));
  EXPECT_EQ(names.size(), 6u);
  EXPECT_FALSE(names.contains(""));
}

TEST(UnitSystem, ImperialUnitsAreThoseMadeOfInches) {
  EXPECT_TRUE(isImperial(LengthUnit::FeetInches));
  EXPECT_TRUE(isImperial(LengthUnit::DecimalFeet));
  EXPECT_TRUE(isImperial(LengthUnit::Inches));
  EXPECT_FALSE(isImperial(LengthUnit::Metres));
  EXPECT_FALSE(isImperial(LengthUnit::Centimetres));
  EXPECT_FALSE(isImperial(LengthUnit::Millimetres));
}

TEST(UnitSystem, DiffersWhenAnyPartDiffers) {
  const UnitSystem units;
  EXPECT_EQ(units, UnitSystem{});
  EXPECT_NE(units, (UnitSystem{LengthUnit::Inches, 16, '.'}));
  EXPECT_NE(units, (UnitSystem{LengthUnit::Metres, 8, '.'}));
  EXPECT_NE(units, (UnitSystem{LengthUnit::Metres, 16, ','}));
}

}  // namespace
}  // namespace baywright
