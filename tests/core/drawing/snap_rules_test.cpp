// SPDX-License-Identifier: Apache-2.0
#include "drawing/snap_rules.h"

#include <gtest/gtest.h>

#include "drawing/plan_footprint.h"
#include "drawing/thing_heights.h"
#include "drawing/view_move.h"
#include "job/edit_thing.h"
#include "job/room_geometry.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

constexpr double kReach = 0.06;

/// The snapped move is made, so that what it promises can be measured.
struct Move {
  Snapped snapped;
  Job job;
};
Move moved(ViewKind view, const Job& job, Id thing, const Vec2& by) {
  const Snapped result = snapped(moveRules(view, job, thing), by, kReach);
  auto after = moveInView(view, job, thing, result.by);
  EXPECT_TRUE(after) << after.error().sentence();
  return {result, after.value_or(job)};
}

std::vector<std::string> words(const Snapped& snapped) {
  std::vector<std::string> result;
  for (const SnapMark& mark : snapped.marks) result.push_back(mark.what);
  return result;
}
using Words = std::vector<std::string>;

/// From the wall's line to the nearest corner of the thing.
double gapTo(const Job& job, const std::string& wall, Id thing) {
  const auto line = wallLine(job.room, idNamed(job, "Wall " + wall));
  double nearest = 1e9;
  const auto footprint = planFootprint(job, thing);
  for (const Vec2& corner : footprint->ring)
    nearest = std::min(nearest, (corner - line->start).dot(line->inward));
  return nearest;
}

Job hall() {
  return garage(10, 8).withFrame(3, 2.5, 1.5).bayAt(7, 4.5, 0).job();
}

TEST(SnapRules, StandTheFrameBesideAWallWithItsClearance) {
  const Job job = hall();
  const Id frame = job.option().kit.frame.id;
  const double clearance = job.requirements.frameBeside;
  ASSERT_GT(clearance, 0);
  // The frame's right side is 3 m from wall A now.
  const Move move = moved(ViewKind::Plan, job, frame, {0.31, -3 + clearance + 0.02});
  EXPECT_NEAR(gapTo(move.job, "A", frame), clearance, 1e-12);
}

TEST(SnapRules, StandTheFrameFlushWhereThePointerWantsIt) {
  const Job job = hall();
  const Id frame = job.option().kit.frame.id;
  const Move move = moved(ViewKind::Plan, job, frame, {0.31, -3 + 0.01});
  EXPECT_NEAR(gapTo(move.job, "A", frame), 0, 1e-12);
  EXPECT_EQ(words(move.snapped), Words{"against wall A"});
}

TEST(SnapRules, LeaveRoomForTheScreensTravelBehind) {
  const Job job = hall();
  const Kit& kit = job.option().kit;
  const double behind = kit.screen.travel + job.requirements.frameBehind;
  const Move move = moved(ViewKind::Plan, job, kit.frame.id, {3 - behind + 0.04, 0.7});
  EXPECT_NEAR(10 - move.job.option().placement.bay.origin.x(), behind, 1e-12);
}

TEST(SnapRules, CentreTheBayInTheRoomAndOnADoorAtOnce) {
  const Job job =
      garage(10, 8).withFrame(3, 2.5).bayAt(6, 3.5, 0).withSectionalDoor("D", 2.75, 2.5, 2.1).job();
  const Move room = moved(ViewKind::Plan, job, job.option().kit.frame.id, {0, 0.47});
  EXPECT_NEAR(room.job.option().placement.bay.origin.y(), 4, 1e-12);
  ASSERT_FALSE(room.snapped.marks.empty());
  EXPECT_EQ(room.snapped.marks.front().what, "midway between A and C");
}

TEST(SnapRules, KnowTheEndOfAWall) {
  // In the L the wall at y = 3 ends at x = 4: left of it nothing stands there.
  const Job job = lShapedRoom(8, 6, 4, 3).withFrame(2, 2.4, 1.2).bayAt(6.5, 1.5, 0).job();
  const Id frame = job.option().kit.frame.id;
  const Move under = moved(ViewKind::Plan, job, frame, {0, 0.5 - 0.01});
  EXPECT_EQ(words(under.snapped), Words{"against wall C"});
  const Move beyond = moved(ViewKind::Plan, job, frame, {-5, 0.5 - 0.01});
  for (const std::string& word : words(beyond.snapped)) EXPECT_NE(word, "against wall C");
}

TEST(SnapRules, BringAShelfAgainstAnotherAndInLineWithIt) {
  const Job job =
      garage(8, 6).withShelf("A", 1.0, 1.5, 0.4, 1.8, "One").withBox("Two", {4, 3}, 1, 0.4, 0, 1.8).job();
  const Id two = idNamed(job, "Two");
  // Its left side to One's right side at x = 2.5, its front in line with One's at y = 0.4.
  const Move move = moved(ViewKind::Plan, job, two, {2.5 + 0.5 - 4 + 0.02, 0.4 - 0.2 - 3 + 0.03});
  const auto ring = planFootprint(move.job, two)->ring;
  double left = 1e9;
  double top = -1e9;
  for (const Vec2& corner : ring) {
    left = std::min(left, corner.x());
    top = std::max(top, corner.y());
  }
  EXPECT_NEAR(left, 2.5, 1e-12);
  EXPECT_NEAR(top, 0.4, 1e-12);
}

TEST(SnapRules, BringTheMatOnTheBaysMiddleLine) {
  const Job job = garage(10, 8)
                      .bayAt(8, 4, 0)
                      .with([](Job& j) {
                        j.option().placement.matCentre = {-3, 0.5};
                      })
                      .job();
  const Id mat = job.option().kit.mat.id;
  // r = 0.5 lies at y = 3.5.
  const Move move = moved(ViewKind::Plan, job, mat, {0.2, 0.48});
  EXPECT_NEAR(move.job.option().placement.matCentre.y(), 0, 1e-12);
}

TEST(SnapRules, HangAProjectorUnderTheCeilingInAnElevation) {
  const Job job = garage(10, 8).withCeiling(3).bayAt(8, 4, 0).withProjector(1.0, {-3, 0.3, 2.0}).job();
  const Id projector = job.option().kit.projector.id;
  const double top = heightsOf(job, projector)->top;
  const Move move = moved(ViewKind::DownRange, job, projector, {-0.28, 3 - top - 0.03});
  EXPECT_NEAR(heightsOf(move.job, projector)->top, 3, 1e-12);
  EXPECT_NEAR(move.job.option().placement.projector.lens.y(), 0, 1e-12);
  EXPECT_EQ(move.snapped.marks.size(), 2u);
}

TEST(SnapRules, StandAFixtureOnTheFloorInAnElevation) {
  const Job job = garage(8, 6).bayAt(6, 3, 0).withBox("Box", {3, 3}, 1, 0.4, 0.5, 1.8).job();
  const Move move = moved(ViewKind::Side, job, idNamed(job, "Box"), {0, -0.47});
  EXPECT_NEAR(heightsOf(move.job, idNamed(job, "Box"))->bottom, 0, 1e-12);
  EXPECT_NEAR(heightsOf(move.job, idNamed(job, "Box"))->top, 1.3, 1e-12);
}

TEST(SnapRules, PutAWallInLineWithAnother) {
  // Two arms of a U: C ends one at y = 4, G the other at y = 4.5.
  const Job job = roomOver({{0, 0}, {6, 0}, {6, 4}, {4, 4}, {4, 2}, {2, 2}, {2, 4.5}, {0, 4.5}}).job();
  const Id wall = idNamed(job, "Wall G");
  const Move move = moved(ViewKind::Plan, job, wall, {0, -0.47});
  EXPECT_NEAR(wallLine(move.job.room, wall)->start.y(), 4.0, 1e-9);
  EXPECT_EQ(words(move.snapped), Words{"in line with wall C"});
}

TEST(SnapRules, SquareACornerWithTheWallsBeyondItsNeighbours) {
  const Job job = roomOver({{0, 0}, {6, 0}, {6.2, 4.1}, {0, 4}}).job();
  const auto rules = cornerRules(job.room, idNamed(job, "Wall C"));
  const Snapped corner = snapped(rules, {6.02, 3.97}, kReach);
  EXPECT_TRUE(corner.by.isApprox(Vec2(6, 4), 1e-12)) << corner.by.transpose();
}

TEST(SnapRules, OfferCornersOfRoomAndFixturesToAPoint) {
  const Job job = garage(8, 6).withShelf("A", 1.0, 1.5, 0.4, 1.8, "Shelf").withColumn({4, 3}, 0.2, 2.7).job();
  const auto points = planPoints(job);
  const auto has = [&](const Vec2& at) {
    return std::any_of(points.begin(), points.end(),
                       [&](const SnapPoint& point) { return point.at.isApprox(at, 1e-9); });
  };
  EXPECT_TRUE(has({8, 6}));
  EXPECT_TRUE(has({2.5, 0.4}));
  EXPECT_TRUE(has({4, 3}));
  EXPECT_FALSE(has({4.2, 3}));
  const Snapped onWall = snapped(planLines(job), {5, 5.95}, kReach);
  EXPECT_EQ(onWall.by, Vec2(5, 6));
}

TEST(SnapRules, AreNoneForWhatIsNotDragged) {
  const Job job = hall();
  EXPECT_TRUE(moveRules(ViewKind::Plan, job, {}).empty());
  EXPECT_TRUE(moveRules(ViewKind::ScreenFace, job, job.option().kit.frame.id).empty());
}

}  // namespace
}  // namespace baywright
