// SPDX-License-Identifier: Apache-2.0
#include "drawing/swing_zones.h"

#include <gtest/gtest.h>

#include "drawing/bay_plan.h"
#include "drawn_job.h"

namespace baywright::detail {
namespace {

using namespace baywright::testing;

class SwingZones : public ::testing::Test {
 protected:
  Linework drawn() {
    Board board(options.metresPerMm);
    drawSwings(board, {job, assessment, options, outlines}, SwingSight::FromAbove, planRings);
    return std::move(board).take();
  }

  Job job = slopedWorkshop();
  Assessment assessment = handMadeAssessment(job);
  ViewOptions options;
  SwingOutlines outlines;
};

TEST_F(SwingZones, ShowBoundClearanceEnvelopeAndHatch) {
  const Linework marks = drawn();
  EXPECT_EQ(countOn(marks.paths, Layer::SwingBound), 2u);
  EXPECT_EQ(countOn(marks.paths, Layer::SwingClearance), 2u);
  EXPECT_EQ(countOn(marks.paths, Layer::Swing), 4u);  // each with its hatch
}

TEST_F(SwingZones, FollowTheOptions) {
  options.swingBound = false;
  EXPECT_EQ(countOn(drawn().paths, Layer::SwingBound), 0u);
  options.swing = false;
  EXPECT_TRUE(drawn().paths.empty());
}

TEST_F(SwingZones, OfGolfersWhoAreNotSingledOutAreOutlines) {
  options.shown = {job.golfers[1].id};
  const Linework marks = drawn();
  EXPECT_EQ(countOn(marks.paths, Layer::SwingBound), 1u);
  ASSERT_EQ(countOn(marks.paths, Layer::Swing), 3u);
  for (const Path& path : marks.paths) {
    if (path.id == job.golfers[0].id) {
      EXPECT_EQ(path.fill, Fill::None);
    }
  }
}

TEST_F(SwingZones, ShowTheClubWithTheWorstVerdict) {
  SwingZone wedge = assessment.swings.front();
  wedge.club = {999};
  wedge.verdict = Verdict::Clear;
  assessment.swings.push_back(wedge);
  EXPECT_TRUE(isWorstOfGolfer(assessment.swings, assessment.swings[0]));
  EXPECT_FALSE(isWorstOfGolfer(assessment.swings, assessment.swings[2]));
  assessment.swings[2].verdict = Verdict::Blocked;  // as bad: the first in the bag stands for both
  EXPECT_TRUE(isWorstOfGolfer(assessment.swings, assessment.swings[0]));
  EXPECT_FALSE(isWorstOfGolfer(assessment.swings, assessment.swings[2]));
  assessment.swings[0].verdict = Verdict::Tight;
  EXPECT_FALSE(isWorstOfGolfer(assessment.swings, assessment.swings[0]));
  EXPECT_TRUE(isWorstOfGolfer(assessment.swings, assessment.swings[2]));
}

TEST_F(SwingZones, LeaveOutGolfersWithoutASwing) {
  assessment.swings[0].swing.reset();
  for (const Path& path : drawn().paths) EXPECT_EQ(path.id, job.golfers[1].id);
}

}  // namespace
}  // namespace baywright::detail
