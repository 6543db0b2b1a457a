// SPDX-License-Identifier: Apache-2.0
#include "clearance/door_geometry.h"
#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

std::string keyOf(const Job& job, std::size_t opening, const char* aspect) {
  return "doors_and_exits/" + std::to_string(job.room.openings[opening].id.value) + "/" + aspect;
}

JobBuilder room() {
  return garage(8, 6).withCeiling(3).bayAt(7, 3, 0).withDoor("D", 2.5, 0.95);
}

TEST(DoorsAndExits, LetTheLeafSwingFree) {
  // Wall D runs down x = 0 from y = 6: the door lies between y = 3.5 and 2.55, hinged at 3.5.
  const Job clear = room().job();
  EXPECT_EQ(findingOf(clear, keyOf(clear, 0, "opens")).verdict, Verdict::Clear);
  const Job blocked = room().withBox("Crate", {0.7, 3.0}, 0.4, 0.4, 0, 1).job();
  const Finding opens = findingOf(blocked, keyOf(blocked, 0, "opens"));
  EXPECT_EQ(opens.verdict, Verdict::Blocked);
  EXPECT_TRUE(contains(opens.sentence, "the crate")) << opens.sentence;
  EXPECT_TRUE(contains(opens.sentence, "open the other way")) << opens.sentence;
}

TEST(DoorsAndExits, MeasureFromTheArcNotItsCorner) {
  const Vec2 hinge(0, 3.5);
  const Vec2 direction = Vec2(1, -1).normalized();
  const Vec2 at = hinge + 1.25 * direction;
  const Job job = room().withColumn(at, 0.1, 2.5).job();
  EXPECT_NEAR(findingOf(job, keyOf(job, 0, "opens")).margin->value, 1.25 - 0.1 - 0.95, 2 * kSectorExcess);
}

TEST(DoorsAndExits, SeeUnderTheShelfAboveTheDoor) {
  const Job job = room().withBox("High shelf", {0.5, 3.0}, 0.4, 0.4, 2.2, 2.5).job();
  EXPECT_EQ(findingOf(job, keyOf(job, 0, "opens")).verdict, Verdict::Clear);
}

TEST(DoorsAndExits, BlockASectionalDoorThatHitsTheFrame) {
  const Job job = garage(8, 6)
                      .withCeiling(3)
                      .bayAt(7, 3, 0)
                      .withFrame(3.2, 2.5)
                      .withSectionalDoor("B", 1.5, 3, 2.1)
                      .job();
  const Finding opens = findingOf(job, keyOf(job, 0, "opens"));
  EXPECT_EQ(opens.verdict, Verdict::Blocked);
  EXPECT_TRUE(contains(opens.sentence, "when it is open")) << opens.sentence;
}

TEST(DoorsAndExits, MeasureTheWayOut) {
  const Job wide = room().job();
  EXPECT_EQ(findingOf(wide, keyOf(wide, 0, "way")).verdict, Verdict::Clear);
  const Job narrow = room().withBox("Wall of boxes", {2, 2.65}, 0.4, 5.3, 0, 1.9).job();
  const Assessment assessment = assess(narrow);
  const Finding way = findingOf(narrow, assessment, keyOf(narrow, 0, "way"));
  EXPECT_EQ(way.verdict, Verdict::Blocked);
  EXPECT_NEAR(way.margin->value, 0.7 - 0.914, 1e-6);
  EXPECT_TRUE(contains(way.sentence, "between")) << way.sentence;
  EXPECT_TRUE(contains(way.sentence, "are wanted, 0.214 m more.")) << way.sentence;
  EXPECT_EQ(assessment.ways[0].verdict, Verdict::Blocked);
  EXPECT_TRUE(contains(way.source, "local code"));
}

TEST(DoorsAndExits, SayWhenThereIsNoWay) {
  const Job job = room().withBox("Wall of boxes", {2, 3}, 0.4, 6, 0, 1.9).job();
  const Finding way = findingOf(job, keyOf(job, 0, "way"));
  EXPECT_EQ(way.verdict, Verdict::Blocked);
  EXPECT_TRUE(contains(way.sentence, "No way")) << way.sentence;
}

TEST(DoorsAndExits, CountTheClearWidthOfTheDoor) {
  const Job job = room().job();
  EXPECT_NEAR(findingOf(job, keyOf(job, 0, "exit")).margin->value, 0.95 - 0.04 - 0.813, 1e-9);
}

TEST(DoorsAndExits, AskForADoorThatWasNotMeasured) {
  const Job job = room().with([](Job& j) { j.room.openings[0].width.known = false; }).job();
  const Finding asked = findingOf(job, keyOf(job, 0, "missing"));
  EXPECT_EQ(asked.verdict, Verdict::Unknown);
  EXPECT_EQ(assess(job).find(keyOf(job, 0, "opens")), nullptr);
}

TEST(DoorsAndExits, AskForAnExit) {
  const Job job = garage(8, 6).job();
  EXPECT_EQ(findingOf(job, "doors_and_exits/none").verdict, Verdict::Unknown);
}

TEST(DoorsAndExits, ListTheFloorThatDoorsNeed) {
  const Assessment assessment = assess(room().job());
  ASSERT_EQ(assessment.doors.size(), 1u);
  EXPECT_EQ(assessment.doors[0].verdict, Verdict::Clear);
  EXPECT_GT(signedArea(assessment.doors[0].sector), 0);
}

}  // namespace
}  // namespace baywright
