// SPDX-License-Identifier: Apache-2.0
#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

TEST(BallCapture, SharesAddUpToOne) {
  const Assessment assessment = assess(roomyHall().job());
  double sum = 0;
  for (const char* what :
       {"screen", "surround", "side_fabric", "roof_fabric", "frame_tube", "floor", "obstacle", "nothing"}) {
    sum += figureOf(assessment, std::string("ball.right.share.") + what);
  }
  EXPECT_NEAR(sum, 1, 1e-6);
}

TEST(BallCapture, CatchesLessFromFartherBack) {
  const auto caught = [](double distance) {
    return figureOf(assess(roomyHall().strikingFrom(distance).withoutProjector().job()),
                    "ball.right.share.screen");
  };
  EXPECT_GT(caught(4.5), caught(7.0));
}

TEST(BallCapture, JudgesByTheShareThatWasAgreed) {
  const auto verdict = [](double share) {
    const Job job =
        roomyHall().strikingFrom(4.5).with([&](Job& j) { j.requirements.captureShare = share; }).job();
    return findingOf(job, "ball_capture/right").verdict;
  };
  EXPECT_EQ(verdict(0.05), Verdict::Clear);
  EXPECT_EQ(verdict(1.0), Verdict::Blocked);
}

TEST(BallCapture, WarnsOfWhatBreaks) {
  // A lamp right in the mean shot's way.
  const Job job = roomyHall()
                      .withoutProjector()
                      .withBox("Lamp", {8.0, 4.5}, 0.3, 0.3, 0.5, 1.1, 0, FixtureKind::Light)
                      .with([](Job& j) { j.room.fixtures[0].breakable = true; })
                      .job();
  const Finding lamp = findingOf(job, "ball_capture/right/" + std::to_string(job.room.fixtures[0].id.value));
  EXPECT_EQ(lamp.verdict, Verdict::Blocked);
  EXPECT_TRUE(contains(lamp.sentence, "the lamp")) << lamp.sentence;
}

TEST(BallCapture, IsLessSureWhereThingsStandInTheWay) {
  const Job free = roomyHall().withoutProjector().job();
  const Job lamp = roomyHall().withoutProjector().withBox("Lamp", {8.0, 4.5}, 0.3, 0.3, 0.5, 1.1).job();
  EXPECT_NEAR(findingOf(free, "ball_capture/right").margin->sigma, kShareError, 1e-12);
  EXPECT_NEAR(findingOf(lamp, "ball_capture/right").margin->sigma, kObstacleShareError, 1e-4);
  EXPECT_TRUE(contains(findingOf(lamp, "ball_capture/right").sentence, "meet the lamp. Move that"));
}

TEST(BallCapture, ServesBothHands) {
  const Job job = roomyHall().withGolfer(1.7, Hand::Left, "Kim").withClub().job();
  const Assessment assessment = assess(job);
  EXPECT_EQ(assessment.balls.size(), 2u);
  findingOf(job, assessment, "ball_capture/right");
  findingOf(job, assessment, "ball_capture/left");
}

}  // namespace
}  // namespace baywright
