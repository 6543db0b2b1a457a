// SPDX-License-Identifier: Apache-2.0
#include "job/edit_thing.h"

#include <gtest/gtest.h>

#include "job/edit.h"
#include "job/find.h"
#include "job/room_geometry.h"
#include "job/thing_lookup.h"
#include "support/job_builder.h"
#include "support/random_jobs.h"

namespace baywright {
namespace {

using testing::garage;
using testing::idNamed;

constexpr double kExact = 1e-9;

Job furnished() {
  Job job = garage(8, 6)
                .withDoor("A", 1)
                .withShelf("D", 1, 2, 0.4, 1.8)
                .withColumn({2, 3}, 0.1, 2.5)
                .withCeilingPart({{0, 0}, {2, 0}, {2, 6}, {0, 6}}, 2.3)
                .withGolfer(1.9, Hand::Left, "Robin")
                .withClub()
                .withBystander({1, 1}, "Sam")
                .bayAt(6, 3, 0.5)
                .job();
  PlanScan scan;
  scan.id = job.takeId();
  scan.name = "Ground floor";
  job.planScans.push_back(scan);
  return job;
}

/// Where the thing stands; the test fails where it stands nowhere.
Vec2 placeOf(const Job& job, Id id) {
  const auto thing = findThing(job, id);
  EXPECT_TRUE(thing && thing->position);
  return thing && thing->position ? *thing->position : Vec2::Zero();
}

// A drag puts the thing where the pointer is, whatever the thing is.
TEST(Translate, MovesWhatStandsFreelyByTheWholeStep) {
  const Job job = furnished();
  const Vec2 by(0.3, -0.2);
  for (const char* name : {"Option 1", "Frame", "Screen", "Mat", "Launch monitor", "Projector", "Robin",
                           "Driver", "Shelf", "Column", "Ceiling part", "Sam", "Ground floor"}) {
    const Id id = idNamed(job, name);
    const auto after = translate(job, id, by);
    ASSERT_TRUE(after) << name << ": " << after.error().sentence();
    EXPECT_NEAR((placeOf(*after, id) - placeOf(job, id) - by).norm(), 0, kExact) << name;
  }
}

TEST(Translate, MovesAnOpeningOnlyAlongItsWall) {
  const Job job = furnished();
  const auto after = translate(job, idNamed(job, "Door"), {0.5, 2});
  EXPECT_NEAR(after->room.openings[0].offset.value, 1.5, kExact);
}

TEST(Translate, MovesAWallOnlyAcrossItself) {
  const Job job = furnished();
  const auto after = translate(job, idNamed(job, "Wall B"), {0.5, 2});
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_EQ(wallLine(after->room, idNamed(job, "Wall B"))->start, Vec2(8.5, 0));
}

TEST(Translate, MovesKitInItsOwnOptionOnly) {
  const Job one = furnished();
  const Job two = *duplicateOption(one, one.activeOption, "Other");
  const Id frameOfFirst = two.options[0].kit.frame.id;
  const auto after = translate(two, frameOfFirst, {0.1, 0});
  EXPECT_NE(after->options[0].placement, two.options[0].placement);
  EXPECT_EQ(after->options[1], two.options[1]);
}

TEST(Translate, RefusesWhatStaysWhereItIs) {
  Job job = furnished();
  job.planScans[0].locked = true;
  EXPECT_FALSE(translate(job, job.planScans[0].id, {1, 0}));
  EXPECT_FALSE(translate(job, job.room.ceiling[0].id, {1, 0})) << "it covers the whole floor";
  EXPECT_FALSE(translate(job, Id{9999}, {1, 0}));
  RoomScan scan;
  const Job scanned = *addRoomScan(job, scan);
  EXPECT_FALSE(translate(scanned, newestId(scanned), {1, 0}));
}

TEST(Translate, MovesACeilingHeightUnlessACornerPlacesIt) {
  Measurement height;
  height.kind = MeasurementKind::CeilingHeight;
  height.position = {2, 1};
  height.value = 2.4;
  Job job = *addMeasurement(furnished(), height);
  const Id id = newestId(job);
  const auto after = translate(job, id, {0.5, 0.25});
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_EQ(placeOf(*after, id), Vec2(2.5, 1.25));
  job.measurements.back().at = idNamed(job, "Wall B");
  EXPECT_EQ(placeOf(job, id), findById(job.room.walls, job.measurements.back().at)->start);
  EXPECT_FALSE(translate(job, id, {0.5, 0.25}));
}

TEST(Translate, NeverLeavesAJobThatIsNotValid) {
  for (std::uint64_t seed = 0; seed < 40; ++seed) {
    const Job job = testing::randomJob(seed);
    testing::Dice dice(seed);
    for (const Thing& thing : allThings(job)) {
      const auto after = translate(job, thing.id, dice.point(3));
      if (after)
        EXPECT_TRUE(validate(*after).empty()) << seed << " " << thing.name;
      else
        EXPECT_FALSE(after.error().what.empty());
    }
  }
}

TEST(Rotate, TurnsCounterClockwiseOnThePlan) {
  const Job job = furnished();
  const double angle = 0.25;
  for (const char* name : {"Option 1", "Frame", "Screen"}) {
    const auto after = rotate(job, idNamed(job, name), angle);
    EXPECT_NEAR(after->option().placement.bay.heading, 0.75, kExact) << name;
    EXPECT_EQ(after->option().placement.bay.origin, job.option().placement.bay.origin);
  }
  const Job shelf = *rotate(job, idNamed(job, "Shelf"), angle);
  const double was = std::get<BoxShape>(job.room.fixtures[0].shape).heading;
  EXPECT_NEAR(std::get<BoxShape>(shelf.room.fixtures[0].shape).heading, was + angle, kExact);
}

TEST(Rotate, TurnsTheProjectorsAxisOnThePlan) {
  const Job job = furnished();
  const auto after = rotate(job, idNamed(job, "Projector"), 0.1);
  EXPECT_NEAR(after->option().placement.projector.yaw, -0.1, kExact) << "yaw runs to the right";
}

TEST(Rotate, TurnsACeilingPartWithItsSlope) {
  Job job = furnished();
  CeilingPart& part = job.room.ceiling[1];
  part.slope = {0.1, 0};
  const Vec2 pivot = placeOf(job, part.id);
  const auto after = rotate(job, part.id, kPi / 2);
  ASSERT_TRUE(after) << after.error().sentence();
  const CeilingPart& turned = after->room.ceiling[1];
  EXPECT_NEAR((turned.slope - Vec2(0, 0.1)).norm(), 0, kExact);
  // The height goes round with the plane.
  EXPECT_NEAR(turned.heightAt(pivot + Vec2(0, 1)), part.heightAt(pivot + Vec2(1, 0)), kExact);
}

TEST(Rotate, RefusesWhatHasNoDirection) {
  const Job job = furnished();
  for (const char* name : {"Sam", "Robin", "Door", "Wall A", "Mat"})
    EXPECT_FALSE(rotate(job, idNamed(job, name), 0.1)) << name;
  EXPECT_FALSE(rotate(job, Id{9999}, 0.1));
}

TEST(RemoveThing, TakesOutAnythingButWhatABayNeeds) {
  Measurement height;
  height.kind = MeasurementKind::CeilingHeight;
  height.value = 2.4;
  const Job job = *addMeasurement(furnished(), height);
  for (const Thing& thing : allThings(job)) {
    const auto after = removeThing(job, thing.id);
    const bool needed = thing.kind == ThingKind::Frame || thing.kind == ThingKind::Screen ||
                        thing.kind == ThingKind::Mat || thing.kind == ThingKind::Option;
    EXPECT_EQ(after.has_value(), !needed) << thing.name;
    if (after)
      EXPECT_FALSE(findThing(*after, thing.id)) << thing.name;
    else
      EXPECT_FALSE(after.error().what.empty());
  }
}

TEST(RemoveThing, TakesAlongWhatHangsOnIt) {
  const Job job = furnished();
  EXPECT_TRUE(removeThing(job, idNamed(job, "Wall A"))->room.openings.empty());
  EXPECT_FALSE(findThing(*removeThing(job, idNamed(job, "Robin")), idNamed(job, "Driver")));
}

TEST(RemoveThing, KeepsTheOnlyCeiling) {
  const Job job = garage(6, 4).job();
  EXPECT_FALSE(removeThing(job, job.room.ceiling[0].id));
}

TEST(RemoveThing, ForgetsAReachWithItsClub) {
  const Job job = garage(6, 4).withGolfer(1.8).withClub().withMeasuredReach(2.6, 1.5).job();
  const auto after = removeThing(job, idNamed(job, "Driver"));
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_FALSE(after->golfers[0].reach);
}

TEST(RenameThing, NamesAnything) {
  const Job job = furnished();
  for (const Thing& thing : allThings(job)) {
    const auto after = renameThing(job, thing.id, "New name");
    ASSERT_TRUE(after) << thing.name << ": " << after.error().sentence();
    EXPECT_EQ(nameOf(*after, thing.id), thing.kind == ThingKind::Wall ? "Wall New name" : "New name");
  }
  EXPECT_FALSE(renameThing(job, Id{9999}, "x"));
}

TEST(CopyThing, PutsAnotherBesideIt) {
  const Job job = furnished();
  for (const char* name : {"Shelf", "Column", "Sam"}) {
    const Id id = idNamed(job, name);
    const auto after = copyThing(job, id);
    ASSERT_TRUE(after) << name << ": " << after.error().sentence();
    EXPECT_NE(newestId(*after), id);
    EXPECT_NEAR((placeOf(*after, newestId(*after)) - placeOf(job, id) - Vec2(kBesideIt, 0)).norm(), 0, kExact)
        << name;
  }
}

TEST(CopyThing, FindsRoomForAnOpeningOnEitherSideOrRefuses) {
  const Job job = garage(2.8, 6).withDoor("A", 1).job();  // from 1.0 to 1.9 m of 2.8
  const Id door = job.room.openings.front().id;
  const auto two = copyThing(job, door);
  ASSERT_TRUE(two) << two.error().sentence();
  EXPECT_NEAR(two->room.openings.back().offset.value, 1.9, kExact);
  const auto three = copyThing(*two, door);
  ASSERT_TRUE(three) << three.error().sentence();
  EXPECT_NEAR(three->room.openings.back().offset.value, 0.1, kExact);
  EXPECT_FALSE(copyThing(*three, door));
}

TEST(CopyThing, RefusesWhatIsThereOnce) {
  const Job job = furnished();
  for (const char* name : {"Frame", "Driver", "Ground floor"})
    EXPECT_FALSE(copyThing(job, idNamed(job, name))) << name;
}

}  // namespace
}  // namespace baywright
