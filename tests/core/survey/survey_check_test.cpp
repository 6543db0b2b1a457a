// SPDX-License-Identifier: Apache-2.0
#include "survey/survey_check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;
using testing::JobBuilder;

const SurveyRemark* find(const std::vector<SurveyRemark>& remarks, const std::string& key) {
  const auto found = std::find_if(remarks.begin(), remarks.end(),
                                  [&](const SurveyRemark& remark) { return remark.key.starts_with(key); });
  return found == remarks.end() ? nullptr : &*found;
}

Measurement wallReading(Job& job, std::size_t wall, double length) {
  Measurement reading;
  reading.id = job.takeId();
  reading.from = job.room.walls[wall].id;
  reading.value = length;
  reading.how = Instrument::Laser;
  return reading;
}

Job measured() {
  return garage(6, 4).withCeiling(2.4).withDoor("A", 1.0).job();
}

/// Two overlap, and one reaches past its wall.
Job withThreeDoors() {
  Job job = garage(6, 4).withDoor("A", 1.0).withDoor("A", 3.0).withDoor("B", 1.0).job();
  job.room.openings[1].offset = taped(1.5);
  job.room.openings[2].offset = taped(3.5);
  return job;
}

TEST(SurveyCheck, HasNothingToSayOfARoomThatWasShotWithALaser) {
  for (const SurveyRemark& remark : checkSurvey(measured())) ADD_FAILURE() << remark.sentence;
}

TEST(SurveyCheck, SaysThatThereIsNoRoom) {
  const auto remarks = checkSurvey(newJob());
  ASSERT_EQ(remarks.size(), 1u);
  EXPECT_EQ(remarks[0].key, "no_room");
}

TEST(SurveyCheck, NamesWallsThatCross) {
  Job job = measured();
  std::swap(job.room.walls[2].start, job.room.walls[3].start);
  const auto remarks = checkSurvey(job);
  const SurveyRemark* crossing = find(remarks, "crossing");
  ASSERT_NE(crossing, nullptr);
  EXPECT_EQ(crossing->kind, SurveyRemarkKind::Wrong);
  EXPECT_EQ(crossing->subjects.size(), 2u);
  EXPECT_EQ(remarks.front().kind, SurveyRemarkKind::Wrong);
}

TEST(SurveyCheck, NamesWallsThatNearlyMeetShortWallsAndCornersThatHardlyTurn) {
  const Job job =
      JobBuilder({{0, 0}, {6, 0}, {6, 2}, {6.03, 4}, {3, 4}, {3, 0.03}, {2.95, 0.03}, {2.95, 4}, {0, 4}})
          .job();
  const auto remarks = checkSurvey(job);
  EXPECT_NE(find(remarks, "nearly_meet"), nullptr);
  EXPECT_NE(find(remarks, "short_wall"), nullptr);
  EXPECT_NE(find(remarks, "hardly_turns"), nullptr);
}

TEST(SurveyCheck, NamesOpeningsThatCannotBe) {
  Job job = withThreeDoors();
  job.room.ceiling[0].height = taped(2.0);
  auto remarks = checkSurvey(job);
  EXPECT_NE(find(remarks, "overlap"), nullptr);
  ASSERT_NE(find(remarks, "past_end"), nullptr);
  EXPECT_NE(find(remarks, "above_ceiling"), nullptr);
  job.room.openings[2].width = taped(5);
  remarks = checkSurvey(job);
  ASSERT_NE(find(remarks, "wider_than_wall"), nullptr);
  EXPECT_EQ(find(remarks, "wider_than_wall")->subjects.front(), job.room.openings[2].id);
}

TEST(SurveyCheck, NamesHeightsThatAreMissingOrGuessed) {
  Job job = measured();
  job.room.ceiling[0].height = notMeasured(2.4);
  job.room.openings[0].height = guessed(2.0);
  job.room.openings[0].width = notMeasured(0.9);
  const auto remarks = checkSurvey(job);
  EXPECT_NE(find(remarks, "ceiling_height"), nullptr);
  EXPECT_NE(find(remarks, "opening_height"), nullptr);
  ASSERT_NE(find(remarks, "opening_width"), nullptr);
  EXPECT_NE(find(remarks, "opening_width")->sentence.find("not measured"), std::string::npos);
}

TEST(SurveyCheck, NamesFloorWithoutACeiling) {
  Job job = measured();
  job.room.ceiling[0].region = {{0, 0}, {3, 0}, {3, 4}, {0, 4}};
  EXPECT_NE(find(checkSurvey(job), "no_ceiling"), nullptr);
}

TEST(SurveyCheck, NamesReadingsThatDoNotFitEachOtherOrThePlan) {
  Job job = measured();
  for (std::size_t i = 0; i < 4; ++i) job.measurements.push_back(wallReading(job, i, i % 2 == 0 ? 6 : 4));
  EXPECT_NE(find(checkSurvey(job), "unchecked"), nullptr);
  job.measurements[0].value = 6.4;
  const auto remarks = checkSurvey(job);
  ASSERT_NE(find(remarks, "blunder"), nullptr);
  EXPECT_FALSE(find(remarks, "blunder")->subjects.empty());
  ASSERT_NE(find(remarks, "not_taken"), nullptr);
  EXPECT_EQ(find(remarks, "not_taken")->subjects.front(), job.measurements[0].id);
  job.measurements[0].from = Id{999999};
  EXPECT_NE(find(checkSurvey(job), "readings"), nullptr);
}

TEST(SurveyCheck, NamesGuessesThatAreLeft) {
  Job job = measured();
  for (Wall& wall : job.room.walls) wall.startCovariance = PlanCovariance::isotropic(0.035);
  Fixture shelf;
  shelf.id = job.takeId();
  shelf.name = "Shelf";
  job.room.fixtures.push_back(shelf);
  const auto remarks = checkSurvey(job);
  EXPECT_NE(find(remarks, "wall_guess"), nullptr);
  EXPECT_NE(find(remarks, "fixture_guess"), nullptr);
  for (std::size_t i = 0; i < 4; ++i) job.measurements.push_back(wallReading(job, i, i % 2 == 0 ? 6 : 4));
  EXPECT_EQ(find(checkSurvey(job), "wall_guess"), nullptr);
}

TEST(SurveyCheck, SaysOfADrawingsWallsTogetherThatTheyAreToBeMeasured) {
  // A drawing knows a wall of four metres to 18 mm (one standard deviation), a scan to 10 mm.
  Job job = measured();
  const auto share = [&](Instrument how) {
    for (Wall& wall : job.room.walls)
      wall.startCovariance = PlanCovariance::isotropic(instrumentSigma(how, 4) / std::sqrt(2.0));
  };
  share(Instrument::Drawing);
  const auto remarks = checkSurvey(job);
  const SurveyRemark* walls = find(remarks, "wall_guess");
  ASSERT_NE(walls, nullptr);
  EXPECT_EQ(walls->subjects.size(), 4u);
  EXPECT_EQ(walls->sentence.find("The lengths of 4 walls are only known to ± 0.036 m"), 0u)
      << walls->sentence;
  share(Instrument::Scan);
  EXPECT_EQ(find(checkSurvey(job), "wall_guess"), nullptr);
}

TEST(SurveyCheck, GivesEveryRemarkAKeyOfItsOwn) {
  Job job = withThreeDoors();
  job.room.ceiling[0].height = notMeasured(2.4);
  for (Wall& wall : job.room.walls) wall.startCovariance = PlanCovariance::isotropic(0.035);
  const auto remarks = checkSurvey(job);
  for (std::size_t i = 0; i < remarks.size(); ++i)
    for (std::size_t j = i + 1; j < remarks.size(); ++j) EXPECT_NE(remarks[i].key, remarks[j].key);
}

}  // namespace
}  // namespace baywright
