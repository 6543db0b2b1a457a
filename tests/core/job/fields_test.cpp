// SPDX-License-Identifier: Apache-2.0
#include "job/fields.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace baywright {
namespace {

/// Stands for whatever a member may be, to count how many a struct can be made of.
struct Anything {
  template <class T>
  operator T() const;
};

template <class T, std::size_t... i>
constexpr bool takes(std::index_sequence<i...>) {
  return requires {
    T{((void)i, Anything{})...};
  };
}
/// The number of members of a plain struct.
template <class T, std::size_t count = 30>
constexpr std::size_t memberCount() {
  if constexpr (takes<T>(std::make_index_sequence<count>{}))
    return count;
  else
    return memberCount<T, count - 1>();
}

template <class T>
std::size_t fieldCount() {
  std::set<std::string> names;
  T thing;
  visitFields([&](std::string_view name, auto&) { names.emplace(name); }, thing);
  return names.size();
}

template <class T>
class Fields : public ::testing::Test {};
using Things =
    ::testing::Types<ProjectInfo, UnitSystem, Dimension, PlanCovariance, Wall, CeilingPart, Opening, BoxShape,
                     PrismShape, CylinderShape, Fixture, Room, Club, MeasuredReach, Golfer, Bystander, Frame,
                     Screen, Mat, LaunchMonitor, Projector, Kit, BayPose, ProjectorMount, Placement, Option,
                     Requirements, Measurement, PlanScan, RoomScan>;
TYPED_TEST_SUITE(Fields, Things);

// Adding a member to a struct without listing it here would lose it at the next save.
TYPED_TEST(Fields, ListEveryMemberOnce) {
  EXPECT_EQ(fieldCount<TypeParam>(), memberCount<TypeParam>());
}

// The unknown fields of a file are written by the file's own rule.
TEST(Fields, ListEveryMemberOfAJobButTheUnknown) {
  EXPECT_EQ(fieldCount<Job>() + 1, memberCount<Job>());
}

TEST(Fields, LetAConstThingBeRead) {
  Golfer golfer;
  golfer.name = "Robin";
  const Golfer& read = golfer;
  std::string name;
  visitFields(
      [&](std::string_view field, const auto& value) {
        if constexpr (std::is_same_v<std::decay_t<decltype(value)>, std::string>)
          if (field == "name") name = value;
      },
      read);
  EXPECT_EQ(name, "Robin");
}

}  // namespace
}  // namespace baywright
