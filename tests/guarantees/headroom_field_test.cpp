// SPDX-License-Identifier: Apache-2.0
#include "clearance/headroom_field.h"

#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

HeadroomQuestion questionFor(const Job& job, double heading, double cell) {
  return {job.golfers[0].id, job.golfers[0].clubs[0].id, heading, cell};
}

HeadroomField fieldOf(const Job& job, double heading, double cell, Search search = Search::Tree) {
  const auto field = headroomField(job, questionFor(job, heading, cell), {}, search);
  EXPECT_TRUE(field) << field.error().sentence();
  return field.value().value();
}

JobBuilder lowGarage() {
  return garage(7, 6)
      .withSlopedCeiling(2.55, 3.1, 6)
      .withBeam({0, 3.6}, {7, 3.6}, 0.2, 2.6, 3.2)
      .withShelf("A", 1, 2, 0.5, 1.9)
      .withGolfer(1.80)
      .withClub();
}

TEST(HeadroomField, IsWhatAssessingSaysWithTheBallThere) {
  JobBuilder builder = lowGarage();
  const Job job = builder.withoutProjector().withoutMonitor().job();
  const double heading = 0.3;
  const HeadroomField field = fieldOf(job, heading, 0.25, Search::Everything);
  int compared = 0;
  for (int row = 0; row < field.margin.rows; row += 3) {
    for (int column = 0; column < field.margin.columns; column += 3) {
      const Vec2 ball = field.margin.node(column, row);
      Job there = job;
      Placement& placement = there.option().placement;
      placement.bay.heading = heading;
      placement.bay.origin = ball + placement.strikeDistance * placement.bay.down();
      double margin = closestOnBoundary(Polygon{{{0, 0}, {7, 0}, {7, 6}, {0, 6}}, {}}, ball).distance;
      if (ball.x() < 0 || ball.x() > 7 || ball.y() < 0 || ball.y() > 6) continue;
      for (const Finding& finding : assess(there).findings) {
        const bool counts = finding.check == "swing_room" || finding.check == "swing_headroom";
        if (counts && finding.moment && finding.margin->value < margin) margin = finding.margin->value;
      }
      // assess() reports for each kind of obstacle what is most doubtful, which may be a little off the
      // nearest.
      EXPECT_NEAR(field.margin.at(column, row), margin, 0.02);
      ++compared;
    }
  }
  EXPECT_GT(compared, 40);
}

/// Bounds add up some ten numbers of a few metres.
constexpr double kRounding = 1e-12;

TEST(HeadroomField, NeverClaimsMoreThanTheTruthAndIsExactNearZero) {
  const Job job = lowGarage().job();
  const HeadroomField fast = fieldOf(job, 1.1, 0.1);
  const HeadroomField truth = fieldOf(job, 1.1, 0.1, Search::Everything);
  ASSERT_EQ(fast.margin.values.size(), truth.margin.values.size());
  int exact = 0;
  for (std::size_t i = 0; i < fast.margin.values.size(); ++i) {
    EXPECT_LE(fast.margin.values[i], truth.margin.values[i] + kRounding);
    if (std::abs(truth.margin.values[i]) > kExactBand * 0.1) continue;
    EXPECT_EQ(fast.margin.values[i], truth.margin.values[i]);
    ++exact;
  }
  EXPECT_GT(exact, 10);
  EXPECT_EQ(fast.zone, truth.zone);
}

TEST(HeadroomField, ShrinksWithATallerGolfer) {
  const auto zoneArea = [](double stature) {
    const Job job = lowGarage().with([&](Job& j) { j.golfers[0].stature = taped(stature); }).job();
    double area = 0;
    for (const Ring& ring : fieldOf(job, 0, 0.1).zone) area += signedArea(ring);
    return area;
  };
  EXPECT_GT(zoneArea(1.55), zoneArea(1.70));
  EXPECT_GT(zoneArea(1.70), zoneArea(1.95));
}

TEST(HeadroomField, IsEmptyUnderALowCeiling) {
  const Job job = garage(7, 6).withCeiling(2.1).withGolfer(1.85).withClub().job();
  EXPECT_TRUE(fieldOf(job, 0, 0.2).zone.empty());
}

TEST(HeadroomField, StopsWhenAskedTo) {
  const Job job = lowGarage().job();
  Progress progress;
  progress.cancelled = [] { return true; };
  const auto field = headroomField(job, questionFor(job, 0, 0.1), progress);
  ASSERT_TRUE(field);
  EXPECT_FALSE(field->has_value());
}

TEST(HeadroomField, RefusesWhatItCannotAnswer) {
  const Job job = lowGarage().job();
  EXPECT_FALSE(headroomField(job, {Id{99999}, Id{1}, 0, 0.1}, {}));
  EXPECT_FALSE(headroomField(job, questionFor(job, 0, 0.001), {}));
  Job bare = job;
  bare.room = {};
  EXPECT_FALSE(headroomField(bare, questionFor(job, 0, 0.1), {}));
}

}  // namespace
}  // namespace baywright
