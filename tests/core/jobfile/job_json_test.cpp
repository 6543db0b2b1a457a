// SPDX-License-Identifier: Apache-2.0
#include "jobfile/job_json.h"

#include <gtest/gtest.h>

#include <limits>

#include "support/job_builder.h"
#include "support/random_jobs.h"

namespace baywright {
namespace {

/// A job that has but a format and whatever else the test says.
std::string jobWith(const std::string& members) {
  return R"({"format": {"name": "bayjob", "version": 1}, "options": [{}])" +
         (members.empty() ? "" : ", " + members) + "}";
}

std::string sentenceFor(const std::string& text) {
  const auto job = jobFromJson(text);
  return job ? "accepted" : job.error().sentence();
}

TEST(JobJson, ReadsBackToTheSameBytes) {
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    const std::string text = jobToJson(testing::randomJob(seed));
    const auto job = jobFromJson(text);
    ASSERT_TRUE(job) << seed << ": " << job.error().sentence();
    ASSERT_EQ(jobToJson(*job), text) << seed;
  }
}

// Scans share their bytes by identity; all else compares by value.
TEST(JobJson, ReadsBackToAnEqualJob) {
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    Job job = testing::randomJob(seed);
    job.planScans.clear();
    job.roomScans.clear();
    job.originals.clear();
    const auto read = jobFromJson(jobToJson(job));
    ASSERT_TRUE(read);
    ASSERT_EQ(*read, job) << seed;
  }
}

TEST(JobJson, KeepsEveryBitOfADouble) {
  Job job = newJob();
  for (const double x : {0.1, 1.0 / 3, 6.02e-23, -0.0, 5e-324, 123.456789012345678, 2.2250738585072014e-308,
                         std::nextafter(1.0, 2.0)}) {
    job.option().placement.bay.origin.x() = x;
    const auto read = jobFromJson(jobToJson(job));
    ASSERT_TRUE(read) << read.error().sentence();
    const double back = read->option().placement.bay.origin.x();
    EXPECT_EQ(back, x);
    EXPECT_EQ(std::signbit(back), std::signbit(x));
  }
}

TEST(JobJson, LooksTheSameInEveryLocale) {
  Job job = newJob();
  job.option().placement.strikeDistance = 1234.5 / 1000;
  job.units.decimal = ',';
  EXPECT_NE(jobToJson(job).find("\"strikeDistance\": 1.2345"), std::string::npos);
}

TEST(JobFromJson, TakesAShortTextWrittenByHand) {
  const auto job = jobFromJson(jobWith(R"(
    "room": {"walls": [{"id": 1, "name": "A", "start": [0, 0]}, {"name": "B", "start": [6, 0]},
                       {"name": "C", "start": [6, 4.5]}, {"name": "D", "start": [0, 4.5]}],
             "ceiling": [{"height": {"value": 2.41, "how": "tape"}}],
             "openings": [{"wall": 1, "kind": "sectionalDoor", "offset": {"value": 1}, "width": {"value": 2.4},
                           "height": {"value": 2.1}}]},
    "golfers": [{"name": "Robin", "hand": "left", "stature": {"value": 1.88}, "clubs": [{"length": 1.156}]}])"));
  ASSERT_TRUE(job) << job.error().sentence();
  EXPECT_EQ(job->activeOption, job->options[0].id);
  EXPECT_EQ(job->golfers[0].hand, Hand::Left);
  EXPECT_EQ(job->room.openings[0].wall, job->room.walls[0].id);
  EXPECT_EQ(job->room.walls[0].id, Id{1});
}

TEST(JobFromJson, KeepsMembersOfTheTopLevelThatItDoesNotKnow) {
  const std::string text = jobWith(R"("tags": ["north", {"x": 1.5}], "aside": null)");
  const auto job = jobFromJson(text);
  ASSERT_TRUE(job) << job.error().sentence();
  const std::string again = jobToJson(*job);
  EXPECT_NE(again.find("\"tags\": [\n"), std::string::npos);
  EXPECT_NE(again.find("\"aside\": null"), std::string::npos);
  EXPECT_EQ(jobToJson(*jobFromJson(again)), again);
}

TEST(JobFromJson, RefusesALaterVersion) {
  EXPECT_NE(sentenceFor(R"({"format": {"name": "bayjob", "version": 2}})").find("later version"),
            std::string::npos);
  EXPECT_NE(
      sentenceFor(R"({"format": {"name": "bayjob", "version": 18446744073709551615}})").find("later version"),
      std::string::npos);
}

struct Refusal {
  std::string text;
  std::string sentence;
};

TEST(JobFromJson, NamesThePlaceOfEveryFault) {
  const Refusal refusals[] = {
      {"", "line 1, column 1: The description is not JSON"},
      {"{\n  \"format\": }", "line 2, column 13"},
      {"[]", "must be an object"},
      {"{}", "format / name"},
      {R"({"format": {"name": "other", "version": 1}})", "format / name"},
      {R"({"format": {"name": "bayjob", "version": "1"}})", "format / version"},
      {R"({"format": {"name": "bayjob", "version": 0}})", "format / version"},
      {R"({"format": {"name": "bayjob", "version": 1}})", "has no option"},
      {jobWith(R"("golfers": {})"), "golfers: It must be an array."},
      {jobWith(R"("golfers": [{}, {}, {"stature": 1.8}])"), "golfers / 2 / stature: It must be an object."},
      {jobWith(R"("golfers": [{"stature": {"value": "1.8"}}])"),
       "golfers / 0 / stature / value: It must be a number."},
      {jobWith(R"("golfers": [{"staure": {}}])"), "golfers / 0: It has no field \"staure\"."},
      {jobWith(R"("golfers": [{"hand": "both"}])"), "must be one of \"right\", \"left\""},
      {jobWith(R"("golfers": [{"id": -1}])"), "golfers / 0 / id: It must be a whole number"},
      {jobWith(R"("golfers": [{"id": 4294967296}])"), "golfers / 0 / id"},
      {jobWith(R"("golfers": [{"id": 1.0}])"), "golfers / 0 / id"},
      {jobWith(R"("golfers": [{"name": 5}])"), "golfers / 0 / name: It must be a text."},
      {jobWith(R"("golfers": [{"swings": 1}])"), "must be true or false"},
      {jobWith(R"("golfers": [{"id": 1}, {"id": 1}])"), "is given twice"},
      {jobWith(R"("lastId": 3, "golfers": [{"id": 9}])"), "above the job's last id"},
      {jobWith(R"("golfers": [{"stature": {"value": 1e999}}])"), "too large to be read"},
      {jobWith(R"("golfers": [{"stature": {"value": NaN}}])"), "is not JSON"},
      {jobWith(R"("golfers": [{"name": "a", "name": "b"}])"), "\"name\" is given twice in one object"},
      {jobWith(R"("golfers": [{"stature": {"value": 5}}])"), "The stature is 5.000 m"},
      {jobWith(R"("room": {"walls": [{"start": [0]}]})"),
       "room / walls / 0 / start: It must be an array of 2 numbers."},
      {jobWith(R"("room": {"walls": [{"start": [0, null]}]})"),
       "room / walls / 0 / start / 1: It must be a number."},
      {jobWith(R"("room": {"fixtures": [{"shape": {"type": "ball"}}]})"), "room / fixtures / 0 / shape"},
      {jobWith(R"("room": {"fixtures": [{"shape": 3}]})"), "room / fixtures / 0 / shape"},
      {jobWith(R"("units": {"decimal": "ab"})"), "units / decimal"},
      {jobWith(R"("units": {"inchFraction": 99999999999})"), "units / inchFraction"},
      {jobWith("\"info\": {\"title\": \"\xff\"}"), "is not JSON"},
  };
  for (const Refusal& refusal : refusals) {
    const std::string sentence = sentenceFor(refusal.text);
    EXPECT_NE(sentence.find(refusal.sentence), std::string::npos) << refusal.text << "\n  " << sentence;
  }
}

TEST(JobFromJson, RefusesDepthWithoutGoingThere) {
  const std::string deep = jobWith("\"x\": " + std::string(2'000'000, '['));
  EXPECT_NE(sentenceFor(deep).find("levels deep"), std::string::npos);
  const std::string brackets = jobWith("\"x\": \"" + std::string(1000, '[') + "\\\"[[\"");
  EXPECT_TRUE(jobFromJson(brackets)) << "brackets in a text are no depth";
}

TEST(JobFromJson, RefusesMoreTextThanAnyJobHas) {
  EXPECT_NE(sentenceFor(std::string(kMostJsonBytes + 1, ' ')).find("at most"), std::string::npos);
}

TEST(JobFromJson, RefusesMoreThingsThanARoomHas) {
  std::string walls;
  for (int i = 0; i < 5000; ++i)
    walls += std::string(i ? "," : "") + R"({"start":[)" + std::to_string(i) + ",0]}";
  EXPECT_NE(sentenceFor(jobWith("\"room\": {\"walls\": [" + walls + "]}")).find("5000 walls"),
            std::string::npos);
}

// Five million options in fifteen megabytes of text would fill five gigabytes.
TEST(JobFromJson, RefusesListsThatWouldFillTheMemory) {
  std::string options = "{}";
  for (int i = 0; i < 300'000; ++i) options += ",{}";
  EXPECT_NE(sentenceFor(R"({"format": {"name": "bayjob", "version": 1}, "options": [)" + options + "]}")
                .find("options: It brings the lists of the job to more than 200000 elements."),
            std::string::npos);
}

TEST(JobFromJson, RunsOutOfIdsWithoutGoingRound) {
  EXPECT_NE(sentenceFor(jobWith(R"("golfers": [{"id": 4294967295}])")).find("has no id"), std::string::npos);
}

}  // namespace
}  // namespace baywright
