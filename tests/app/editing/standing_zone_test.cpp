// SPDX-License-Identifier: Apache-2.0
#include "editing/standing_zone.h"

#include <gtest/gtest.h>

#include "geometry/polygon.h"
#include "job/edit.h"
#include "support/job_builder.h"

namespace baywright {
using testing::garage;

namespace {

struct Bench {
  Bench() {
    document.startWith(garage(6.0, 7.0).withGolfer(1.80, Hand::Right).withClub().bayAt(3.0, 5.0, 1.5707963).job());
  }
  const Golfer& golfer() const { return document.job().golfers.front(); }
  void select(Id id) {
    document.selection().select(id);
    standing.finish();
  }

  Document document;
  StandingZone standing{document};
};

TEST(StandingZone, IsThatOfTheSelectedGolfer) {
  Bench bench;
  bench.select(bench.golfer().id);
  const auto expected = headroomField(
      bench.document.job(), {bench.golfer().id, bench.golfer().clubs.front().id, 1.5707963, 0.1}, {});
  ASSERT_TRUE(expected && *expected);
  ASSERT_FALSE((*expected)->zone.empty());
  ASSERT_EQ(bench.standing.mark().zone.size(), (*expected)->zone.size());
  EXPECT_EQ(bench.standing.mark().zone.front(), (*expected)->zone.front());
  EXPECT_EQ(bench.standing.mark().golfer, bench.golfer().id);
}

TEST(StandingZone, GoesWithTheSelection) {
  Bench bench;
  bench.select(bench.golfer().id);
  ASSERT_FALSE(bench.standing.mark().zone.empty());
  bench.select({});
  EXPECT_TRUE(bench.standing.mark().zone.empty());
}

TEST(StandingZone, ShrinksUnderALowerCeiling) {
  Bench bench;
  bench.select(bench.golfer().id);
  ASSERT_FALSE(bench.standing.mark().zone.empty());
  Job low = bench.document.job();
  CeilingPart ceiling = low.room.ceiling.front();
  ceiling.height.value = 1.9;
  ASSERT_TRUE(bench.document.change("Lower the ceiling", setCeilingPart(low, ceiling)));
  bench.standing.finish();
  EXPECT_TRUE(bench.standing.mark().zone.empty()) << "nobody swings a club under 1.9 m";
}

}  // namespace
}  // namespace baywright
