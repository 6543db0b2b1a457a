// SPDX-License-Identifier: Apache-2.0
#include "job/enum_names.h"

#include <gtest/gtest.h>

#include <set>

namespace baywright {
namespace {

template <class E>
class EnumNames : public ::testing::Test {};
using Enumerations = ::testing::Types<LengthUnit, Instrument, OpeningKind, HingeSide, LeafSwing, FixtureKind,
                                      Hand, MountKind, MeasurementKind>;
TYPED_TEST_SUITE(EnumNames, Enumerations);

TYPED_TEST(EnumNames, AreThereForEveryValueAndReadBack) {
  std::set<std::string_view> seen;
  int values = 0;
  for (const auto& entry : enumNames(TypeParam{})) {
    EXPECT_EQ(static_cast<int>(entry.value), values++) << "a value is left out before " << entry.name;
    EXPECT_TRUE(seen.insert(entry.name).second) << entry.name;
    EXPECT_EQ(enumName(entry.value), entry.name);
    EXPECT_EQ(enumFromName<TypeParam>(entry.name), entry.value);
  }
  EXPECT_EQ(enumName(static_cast<TypeParam>(values)), "");
}

TEST(EnumFromName, RefusesWhatIsNoName) {
  EXPECT_EQ(enumFromName<Hand>("Right"), std::nullopt);
  EXPECT_EQ(enumFromName<Hand>(""), std::nullopt);
}

}  // namespace
}  // namespace baywright
