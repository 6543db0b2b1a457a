// SPDX-License-Identifier: Apache-2.0
#include "drawing/ball_marks.h"

#include <algorithm>

#include "clearance/assess.h"
#include "drawing/views.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

Job twoHands(double left) {
  return garage(9, 7)
      .withCeiling(4)
      .withGolfer(1.8, Hand::Right, "Robin")
      .withClub()
      .withGolfer(1.7, Hand::Left, "Sam")
      .withClub()
      .bayAt(8, 3.5, 0)
      .strikingFrom(3, 0, left)
      .withoutProjector()
      .job();
}

TEST(BallMarks, DrawTwoHandsAtOneStrikePointOnce) {
  EXPECT_EQ(detail::differentShots(assess(twoHands(0))).size(), 1u);
  EXPECT_EQ(detail::differentShots(assess(twoHands(-0.4))).size(), 2u);
}

TEST(BallMarks, ShotsArriveInABoxAboutTheirMean) {
  const Assessment assessment = assess(twoHands(0));
  const BallZone& zone = assessment.balls.front();
  const auto box = detail::arrivalBox(zone);
  ASSERT_TRUE(box);
  EXPECT_NEAR(box->center().x(), 0, 1e-9);
  EXPECT_LT(box->min().y(), *zone.heightAtScreen);
  EXPECT_NEAR(box->max().y(), *zone.highShotAtScreen, 0.01);
  BallZone none = zone;
  none.fan.elevation.clear();
  EXPECT_FALSE(detail::arrivalBox(none));
}

bool hasArea(const Linework& drawn, Layer layer, Fill fill) {
  return std::any_of(drawn.paths.begin(), drawn.paths.end(), [&](const Path& path) {
    return path.layer == layer && path.closed && path.fill == fill;
  });
}
bool says(const Linework& drawn, const std::string& words) {
  return std::any_of(drawn.texts.begin(), drawn.texts.end(),
                     [&](const Text& text) { return text.text.find(words) != std::string::npos; });
}

TEST(BallMarks, AreInPlanAndElevations) {
  const Job job = twoHands(0);
  const Assessment assessment = assess(job);
  const auto view = [&](ViewKind kind) { return viewLinework(kind, job, assessment, {}); };
  const Linework plan = view(ViewKind::Plan);
  EXPECT_TRUE(hasArea(plan, Layer::Capture, Fill::Soft));
  EXPECT_TRUE(hasArea(plan, Layer::Rebound, Fill::Soft));
  EXPECT_TRUE(hasArea(plan, Layer::Rebound, Fill::None));
  EXPECT_TRUE(says(plan, "shots"));
  EXPECT_TRUE(says(plan, "nobody here"));
  const Linework side = view(ViewKind::Side);
  EXPECT_TRUE(hasArea(side, Layer::Capture, Fill::Soft));
  EXPECT_TRUE(says(side, "comes back at"));
  EXPECT_TRUE(hasArea(view(ViewKind::DownRange), Layer::Capture, Fill::None));
}

}  // namespace
}  // namespace baywright
