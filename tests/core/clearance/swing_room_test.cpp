// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

TEST(SwingRoom, IsClearInAHall) {
  const Job job = roomyHall().job();
  const Finding wall = findingOf(job, "swing_room/<driver>/wall");
  EXPECT_EQ(wall.verdict, Verdict::Clear);
  EXPECT_GT(wall.margin->value, 1.0);
  EXPECT_EQ(wall.subject, "Driver, Robin");
}

TEST(SwingRoom, LosesAsMuchAsTheWallComesNearer) {
  const auto wallMargin = [](double y) {
    const Job job = roomyHall().bayAt(10, y, 0).job();
    return findingOf(job, "swing_room/<driver>/wall").margin->value;
  };
  EXPECT_NEAR(wallMargin(2.0) - wallMargin(1.7), 0.3, 1e-9);
}

TEST(SwingRoom, SaysWhoHitsWhatWhenAndByHowMuch) {
  const Job job = roomyHall().inUnits(LengthUnit::Millimetres).bayAt(10, 7.9, 0).job();
  const Finding wall = findingOf(job, "swing_room/<driver>/wall");
  EXPECT_EQ(wall.verdict, Verdict::Blocked);
  EXPECT_TRUE(contains(wall.sentence, "Driver, Robin")) << wall.sentence;
  EXPECT_TRUE(contains(wall.sentence, "wall C")) << wall.sentence;
  EXPECT_TRUE(contains(wall.sentence, " mm ")) << wall.sentence;
  ASSERT_EQ(wall.subjects.size(), 3u);
  EXPECT_EQ(wall.subjects[2], job.room.walls[2].id);
  ASSERT_TRUE(wall.moment);
  ASSERT_TRUE(wall.points);
  const double gap = (wall.points->first - wall.points->second).norm();
  EXPECT_NEAR(gap, std::abs(wall.margin->value + job.requirements.swingClearance), 1e-9);
}

TEST(SwingRoom, ReportsEachKindOfObstacleOnce) {
  const Job job = roomyHall()
                      .withShelf("A", 4, 2, 0.4, 1.9)
                      .withShelf("C", 4, 2, 0.4, 1.9, "Other shelf")
                      .withColumn({3, 6}, 0.2, 4)
                      .withBystander({2, 2})
                      .job();
  const Assessment assessment = assess(job);
  const auto shelves = std::count_if(assessment.findings.begin(), assessment.findings.end(),
                                     [](const Finding& f) { return contains(f.key, "/shelving"); });
  EXPECT_EQ(shelves, 1);
  findingOf(job, assessment, "swing_room/<driver>/column");
  findingOf(job, assessment, "swing_room/<driver>/bystander");
}

TEST(SwingRoom, StandsOnWhatIsFlat) {
  // Feet dip below what the golfer stands on by the allowance of the model: no rug is in their way.
  const auto withBox = [](double top) {
    const Job job = roomyHall().withBox("Rug", {5.5, 4.5}, 4, 4, 0, top).job();
    for (const Finding& finding : assess(job).findings) {
      if (finding.check == "swing_room" && contains(finding.key, "/other")) return true;
    }
    return false;
  };
  EXPECT_FALSE(withBox(0.02));
  EXPECT_TRUE(withBox(0.30));
}

TEST(SwingRoom, DoesNotLetAnExactNeighbourHideADoubtfulOne) {
  // One column shot by laser a little nearer than another that was guessed: the guess is what makes it tight.
  JobBuilder builder = roomyHall();
  builder.withColumn({5.5, 1.5}, 0.1, 3, "Exact").withColumn({5.5, 8.0}, 0.1, 3, "Guessed");
  const auto margin = [&](const char* name) {
    Job alone = builder.uncheckedJob();
    std::erase_if(alone.room.fixtures, [&](const Fixture& f) { return f.name != name; });
    return findingOf(alone, "swing_room/<driver>/column").margin->value;
  };
  // Bring both to the same margin of 0.13 m, the exact one 10 mm closer.
  const double exact = margin("Exact");
  const double guessed = margin("Guessed");
  builder.with([&](Job& job) {
    std::get<CylinderShape>(job.room.fixtures[0].shape).radius += exact - 0.12;
    std::get<CylinderShape>(job.room.fixtures[1].shape).radius += guessed - 0.13;
    job.room.fixtures[1].planInstrument = Instrument::Guess;
  });
  const Finding column = findingOf(builder.uncheckedJob(), "swing_room/<driver>/column");
  EXPECT_TRUE(contains(column.sentence, "the guessed")) << column.sentence;
  EXPECT_EQ(column.verdict, Verdict::Tight);
}

TEST(SwingRoom, AsksForAStatureThatNobodyTook) {
  const Job job = roomyHall().with([](Job& j) { j.golfers[0].stature = notMeasured(1.8); }).job();
  const Assessment assessment = assess(job);
  const Finding swing = findingOf(job, assessment, "swing_room/<driver>/swing");
  EXPECT_EQ(swing.verdict, Verdict::Unknown);
  EXPECT_FALSE(swing.margin);
  EXPECT_EQ(assessment.swings[0].verdict, Verdict::Unknown);
  EXPECT_EQ(assessment.swings[0].swing, nullptr);
}

TEST(SwingRoom, AsksForRoomAndPeopleInAnEmptyJob) {
  const Job job = newJob();
  const Assessment assessment = assess(job);
  EXPECT_EQ(findingOf(job, assessment, "swing_room/walls").verdict, Verdict::Unknown);
  EXPECT_EQ(findingOf(job, assessment, "swing_room/golfers").verdict, Verdict::Unknown);
}

TEST(SwingRoom, BlocksAStrikePointOutsideTheRoom) {
  const Job job = roomyHall().bayAt(3, 4.5, 0).strikingFrom(4.5).job();
  const Finding outside = findingOf(job, "swing_room/outside/right");
  EXPECT_EQ(outside.verdict, Verdict::Blocked);
  EXPECT_NEAR(outside.margin->value, -1.5, 1e-9);
}

TEST(SwingRoom, GivesTheEnvelopesFigures) {
  const Job job = roomyHall().job();
  const Assessment assessment = assess(job);
  const std::string swing = "swing." + std::to_string(job.golfers[0].id.value) + "." +
                            std::to_string(job.golfers[0].clubs[0].id.value);
  EXPECT_EQ(figureOf(assessment, swing + ".highest"),
            assessment.swings[0].swing->expected.figures.highest.value);
  EXPECT_GE(figureOf(assessment, swing + ".bound.highest"), figureOf(assessment, swing + ".highest"));
  EXPECT_LE(figureOf(assessment, swing + ".wall.bound_margin"), figureOf(assessment, swing + ".wall.margin"));
}

TEST(SwingRoom, SkipsThoseWhoDoNotSwing) {
  const Job job = roomyHall().with([](Job& j) { j.golfers[0].swings = false; }).job();
  EXPECT_TRUE(assess(job).swings.empty());
}

}  // namespace
}  // namespace baywright
