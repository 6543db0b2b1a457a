// SPDX-License-Identifier: Apache-2.0
#include "job/validate.h"

#include <gtest/gtest.h>

#include <functional>
#include <limits>

#include "support/job_builder.h"
#include "support/random_jobs.h"

namespace baywright {
namespace {

using testing::garage;

Job goodJob() {
  return garage(6, 4)
      .withDoor("A", 1)
      .withWindow("C", 1, 1.2, 0.9, 1.1)
      .withShelf("D", 1, 2, 0.4, 1.8)
      .withGolfer(1.88, Hand::Left, "Robin")
      .withClub()
      .withMeasuredReach(2.7, 1.6)
      .withBystander({1, 1}, "Sam")
      .job();
}

/// An edit that spoils the job, and a piece of the sentence that must come of it.
struct Fault {
  const char* name;
  std::function<void(Job&)> spoil;
  const char* sentence;
};

class EachFault : public ::testing::TestWithParam<Fault> {};

TEST_P(EachFault, HasASentence) {
  Job job = goodJob();
  GetParam().spoil(job);
  const std::vector<Problem> problems = validate(job);
  ASSERT_EQ(problems.size(), 1u) << (problems.empty() ? "" : problems[1].sentence());
  EXPECT_NE(problems.front().sentence().find(GetParam().sentence), std::string::npos)
      << problems.front().sentence();
}

std::string nameOfFault(const ::testing::TestParamInfo<Fault>& fault) {
  return fault.param.name;
}

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();

INSTANTIATE_TEST_SUITE_P(
    Floor, EachFault,
    ::testing::Values(Fault{"Crossing",
                            [](Job& j) {
                              std::swap(j.room.walls[1].start, j.room.walls[2].start);
                              j.room.openings.clear();
                            },
                            "room / floor: Wall A meets wall C at x 3.000 m, y 2.000 m."},
                      Fault{"Clockwise",
                            [](Job& j) {
                              std::swap(j.room.walls[1].start, j.room.walls[3].start);
                              j.room.openings.clear();
                            },
                            "run clockwise"},
                      Fault{"TinyWall",
                            [](Job& j) {
                              Wall wall = j.room.walls[1];
                              wall.id = j.takeId();
                              wall.name = "E";
                              wall.start.x() -= 0.002;
                              j.room.walls.insert(j.room.walls.begin() + 1, wall);
                            },
                            "The wall is 0.002 m long"},
                      Fault{"TwoCorners",
                            [](Job& j) {
                              j.room.walls.resize(2);
                              j.room.openings.clear();
                            },
                            "needs three"},
                      Fault{"FarCorner",
                            [](Job& j) {
                              j.room.walls[2].start.x() = 1200;
                              j.room.openings.clear();
                            },
                            "wall C: The x of the corner is 1200.000 m"},
                      Fault{"ImpossibleCovariance",
                            [](Job& j) {
                              j.room.walls[0].startCovariance = {1e-4, 2e-4, 1e-4};
                            },
                            "wall A / startCovariance"}),
    nameOfFault);

INSTANTIATE_TEST_SUITE_P(
    Ceiling, EachFault,
    ::testing::Values(Fault{"None", [](Job& j) { j.room.ceiling.clear(); }, "The room has no ceiling."},
                      Fault{"Low", [](Job& j) { j.room.ceiling[0].height.value = 0.7; },
                            "nowhere higher than 0.700 m"},
                      Fault{"High", [](Job& j) { j.room.ceiling[0].height.value = 31; }, "reaches 31.000 m"},
                      Fault{"ThroughTheFloor",
                            [](Job& j) {
                              j.room.ceiling[0].slope = {-0.5, 0};
                            },
                            "meets the floor"},
                      Fault{"CrossingRegion",
                            [](Job& j) {
                              CeilingPart part = j.room.ceiling[0];
                              part.id = j.takeId();
                              part.region = {{0, 0}, {2, 2}, {2, 0}, {0, 2}};
                              j.room.ceiling.push_back(part);
                            },
                            "room / ceiling / Ceiling / region"}),
    nameOfFault);

INSTANTIATE_TEST_SUITE_P(
    Openings, EachFault,
    ::testing::Values(
        Fault{"WiderThanItsWall", [](Job& j) { j.room.openings[0].width.value = 6.5; },
              "Door: The opening is 6.500 m wide, but wall A is only 6.000 m long."},
        Fault{"BeyondItsWall", [](Job& j) { j.room.openings[0].offset.value = 5.5; },
              "from 5.500 m to 6.400 m"},
        Fault{"BeforeItsWall", [](Job& j) { j.room.openings[0].offset.value = -0.1; }, "along wall A"},
        Fault{"Overlapping",
              [](Job& j) {
                Opening door = j.room.openings[0];
                door.id = j.takeId();
                door.offset.value += 0.5;
                j.room.openings.push_back(door);
              },
              "overlaps Door"},
        Fault{"WallNotThere", [](Job& j) { j.room.openings[0].wall = j.activeOption; },
              "names a wall that is not there"},
        Fault{"ThickLeaf", [](Job& j) { j.room.openings[0].leafThickness = 0.5; }, "thickness of the leaf"},
        Fault{"NoAngle", [](Job& j) { j.room.openings[0].openAngle = 0; }, "opening angle"}),
    nameOfFault);

INSTANTIATE_TEST_SUITE_P(
    ThingsAndPeople, EachFault,
    ::testing::Values(
        Fault{"FlatFixture", [](Job& j) { j.room.fixtures[0].top.value = 0; }, "is not above the underside"},
        Fault{"ThinFixture", [](Job& j) { std::get<BoxShape>(j.room.fixtures[0].shape).width = 0; },
              "Shelf: The width is 0.000 m"},
        Fault{"Dwarf", [](Job& j) { j.golfers[0].stature.value = 0.2; },
              "golfers / Robin: The stature is 0.200 m, but must lie between 1.000 m and 2.300 m."},
        Fault{"Giant", [](Job& j) { j.golfers[0].stature.value = 5; }, "The stature is 5.000 m"},
        Fault{"ShortClub", [](Job& j) { j.golfers[0].clubs[0].length = 0.45; }, "club's length is 0.450 m"},
        Fault{"LongClub", [](Job& j) { j.golfers[0].clubs[0].length = 1.26; }, "club's length is 1.260 m"},
        Fault{"FlatLie", [](Job& j) { j.golfers[0].clubs[0].lie = 0.5; }, "The lie is 28.6°"},
        Fault{"ForeignClub", [](Job& j) { j.golfers[0].reach->club = j.activeOption; }, "does not have"},
        Fault{"ThickBystander", [](Job& j) { j.bystanders[0].radius = 3; }, "bystanders / Sam: The radius"}),
    nameOfFault);

INSTANTIATE_TEST_SUITE_P(
    Options, EachFault,
    ::testing::Values(
        Fault{"ZeroFrame", [](Job& j) { j.option().kit.frame.width = 0; },
              "options / Option 1 / frame: The width is 0.000 m"},
        Fault{"NegativeScreen", [](Job& j) { j.option().kit.screen.height = -2; }, "screen: The height is"},
        Fault{"ZeroMat", [](Job& j) { j.option().kit.mat.length = 0; }, "mat: The length is"},
        Fault{"ZeroProjector", [](Job& j) { j.option().kit.projector.body.z() = 0; },
              "projector: The height is"},
        Fault{"ThrowUpsideDown",
              [](Job& j) {
                j.option().kit.projector.throwMin = 2;
                j.option().kit.projector.throwMax = 1;
              },
              "shortest throw ratio is above the longest"},
        Fault{"NoThrow", [](Job& j) { j.option().placement.projector.throwRatio = 0; }, "throw ratio is 0"},
        Fault{"ProjectorBehindTheScreen", [](Job& j) { j.option().placement.projector.lens.x() = 0.4; },
              "0.400 m behind the screen's face"},
        Fault{"ProjectorInTheScreen", [](Job& j) { j.option().placement.projector.lens.x() = 0; },
              "behind the screen's face"},
        Fault{"NoStrikeDistance", [](Job& j) { j.option().placement.strikeDistance = 0; },
              "distance from strike point to screen"},
        Fault{"NoOption", [](Job& j) { j.options.clear(); }, "has no option"},
        Fault{"ActiveNotThere", [](Job& j) { j.activeOption = Id{1000}; },
              "The active option, 1000, is not there."}),
    nameOfFault);

INSTANTIATE_TEST_SUITE_P(
    Values, EachFault,
    ::testing::Values(
        Fault{"NotANumber", [](Job& j) { j.golfers[0].stature.value = kNan; },
              "golfers / Robin / stature / value: The number is not finite."},
        Fault{"Infinite", [](Job& j) { j.option().placement.bay.origin.x() = kInfinity; },
              "options / Option 1 / placement / bay / origin"},
        Fault{"NotANumberInAShape",
              [](Job& j) { std::get<BoxShape>(j.room.fixtures[0].shape).centre.y() = kNan; },
              "room / fixtures / Shelf / shape / centre"},
        Fault{"IdTwice", [](Job& j) { j.bystanders[0].id = j.golfers[0].id; },
              "is given twice, first at golfers"},
        Fault{"IdMissing", [](Job& j) { j.bystanders[0].id = {}; }, "has no id"},
        Fault{"IdAboveLast", [](Job& j) { j.bystanders[0].id = Id{j.lastId + 5}; },
              "above the job's last id"},
        Fault{"LongName", [](Job& j) { j.room.name = std::string(5000, 'x'); }, "5000 bytes"},
        Fault{"NoSuchChoice", [](Job& j) { j.golfers[0].hand = static_cast<Hand>(7); }, "none of those"},
        Fault{"InchFraction", [](Job& j) { j.units.inchFraction = 0; }, "1/0 inch"},
        Fault{"Decimal", [](Job& j) { j.units.decimal = 'x'; }, "decimal separator"},
        Fault{"Requirement", [](Job& j) { j.requirements.coverage = 1.5; },
              "share of the screen to be filled is 1.500"},
        Fault{"Opacity",
              [](Job& j) {
                j.planScans.emplace_back().id = j.takeId();
                j.planScans[0].opacity = 1.2;
              },
              "opacity is 1.200"},
        Fault{"PathForAFileName",
              [](Job& j) {
                j.planScans.emplace_back().id = j.takeId();
                j.planScans[0].file = std::make_shared<const Blob>(Blob{"../../plan.png", ""});
              },
              "a path: \"../../plan.png\""},
        Fault{"FlatPlan",
              [](Job& j) {
                j.planScans.emplace_back().id = j.takeId();
                j.planScans[0].worldFromPixel << 1, 2, 0, 2, 4, 0, 0, 0, 1;
              },
              "squeeze it flat"},
        Fault{"MeasurementOfNothing", [](Job& j) { j.measurements.emplace_back().id = j.takeId(); },
              "measurements / 1: The corner it starts from is not there."}),
    nameOfFault);

TEST(Validate, AcceptsGoodJobs) {
  EXPECT_TRUE(validate(goodJob()).empty());
  for (std::uint64_t seed = 0; seed < 200; ++seed)
    for (const Problem& problem : validate(testing::randomJob(seed)))
      ADD_FAILURE() << seed << ": " << problem.sentence();
}

TEST(Validate, SpeaksInTheJobsUnit) {
  Job job = garage(6, 4).withGolfer(5).inUnits(LengthUnit::FeetInches).uncheckedJob();
  ASSERT_FALSE(validate(job).empty());
  EXPECT_NE(validate(job).front().what.find("16′"), std::string::npos) << validate(job).front().what;
}

TEST(Validate, DoesNotJudgeWhetherThingsFit) {
  Job job = goodJob();
  job.option().placement.bay.origin = {100, 100};
  job.option().kit.frame.height = 5;
  job.option().placement.projector.throwRatio = 9;
  EXPECT_TRUE(validate(job).empty());
}

TEST(Validate, LetsOpeningsStandAboveEachOther) {
  const Job job = garage(6, 4).withDoor("A", 1).withWindow("A", 1, 0.9, 2.1, 0.4, "Transom").job();
  EXPECT_TRUE(validate(job).empty());
}

TEST(Validate, RefusesMoreCornersThanARoomHas) {
  Job job = goodJob();
  job.room.walls.resize(100000);
  const std::vector<Problem> problems = validate(job);
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_NE(problems[0].what.find("100000 walls"), std::string::npos);
}

TEST(Validated, TellsTheFirstProblemAndHowManyMore) {
  Job job = goodJob();
  job.golfers[0].stature.value = 5;
  job.bystanders[0].radius = 3;
  const auto result = validated(job);
  ASSERT_FALSE(result);
  EXPECT_NE(result.error().sentence().find("stature"), std::string::npos);
  EXPECT_NE(result.error().sentence().find("(1 more.)"), std::string::npos);
}

}  // namespace
}  // namespace baywright
