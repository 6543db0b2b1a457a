// SPDX-License-Identifier: Apache-2.0
#include "job/edit_record.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;
using testing::idNamed;

TEST(SetInfo, ReplacesTheTitleBlock) {
  ProjectInfo info;
  info.title = "Bay for the back room";
  EXPECT_EQ(setInfo(newJob(), info)->info, info);
}

TEST(SetUnits, RefusesUnitsThatNoTapeHas) {
  UnitSystem units;
  units.inchFraction = 10;
  EXPECT_FALSE(setUnits(newJob(), units));
  units.inchFraction = 32;
  EXPECT_EQ(setUnits(newJob(), units)->units, units);
}

TEST(SetRequirements, RefusesAShareAboveOne) {
  Requirements wanted;
  wanted.coverage = 2;
  EXPECT_FALSE(setRequirements(newJob(), wanted));
  wanted.coverage = 0.9;
  EXPECT_EQ(setRequirements(newJob(), wanted)->requirements, wanted);
}

TEST(Measurements, AreAddedWithAnIdAndSetById) {
  const Job before = garage(6, 4).job();
  Measurement m;
  m.kind = MeasurementKind::Diagonal;
  m.from = idNamed(before, "Wall A");
  m.to = idNamed(before, "Wall C");
  m.value = 7.21;
  const auto after = addMeasurement(before, m);
  ASSERT_TRUE(after) << after.error().sentence();
  m = after->measurements[0];
  EXPECT_EQ(m.id, Id{after->lastId});
  m.used = false;
  EXPECT_FALSE(setMeasurement(*after, m)->measurements[0].used);
}

TEST(Measurements, RefuseCornersThatAreNotThere) {
  Measurement m;
  m.from = Id{9999};
  EXPECT_FALSE(addMeasurement(garage(6, 4).job(), m));
}

}  // namespace
}  // namespace baywright
