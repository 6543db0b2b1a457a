// SPDX-License-Identifier: Apache-2.0
#include "survey/recognise_list.h"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <iterator>

#include "job/find.h"
#include "job/room_geometry.h"
#include "job/validate.h"
#include "survey/adjustment.h"
#include "survey/measuring_list_words.h"
#include "survey/take_room.h"

namespace baywright {
namespace {

// An L-shaped room, 7.00 x 5.50 m less 3.00 x 2.50 m, ceiling 2.40 m falling by 50 mm a metre along y.
constexpr const char* kGood =
    "kind,from,to,at,x,y,value,height,how,note\n"
    "unit,,,,,,m,,,\n"
    "diagonal,A,D,,,,5.000,,laser,\n"
    "wall,C,,,,,3.001,,laser,\n"
    "ceiling,,,A,,,2.400,,laser,\n"
    "wall,A,,,,,7.000,,laser,\n"
    "wall,F,,,,,5.499,,laser,\n"
    "diagonal,A,C,,,,7.616,,laser,\n"
    "ceiling,,,,1,5,2.150,,laser,\n"
    "wall,B,,,,,3.000,,laser,\n"
    "diagonal,B,D,,,,4.243,,laser,\n"
    "wall,E,,,,,4.000,,laser,\n"
    "wall,D,,,,,2.500,,laser,\n"
    "diagonal,A,E,,,,6.801,,laser,\n"
    "diagonal,D,F,,,,4.717,,laser,\n"
    "ceiling,,,B,,,2.401,,laser,\n"
    "ceiling,,,,3,3,2.250,,laser,\n"
    "door,A,,,0.85,,0.90,2.03,,front door\n"
    "window,F,,,1.10,0.95,1.20,1.10,,\n";

RecognisedRoom recognised(const std::string& text) {
  const auto list = readMeasuringList(text);
  EXPECT_TRUE(list.has_value()) << list.error().sentence();
  const auto room = recogniseList(*list);
  EXPECT_TRUE(room.has_value()) << room.error().sentence();
  return room.value_or(RecognisedRoom{});
}

std::string replaced(std::string text, const std::string& what, const std::string& with) {
  const auto place = text.find(what);
  EXPECT_NE(place, std::string::npos);
  return text.replace(place, what.size(), with);
}

TEST(RecogniseList, MakesTheRoomThatWasMeasured) {
  const RecognisedRoom made = recognised(kGood);
  const Ring expected{{0, 0}, {7, 0}, {7, 3}, {4, 3}, {4, 5.5}, {0, 5.5}};
  const Ring ring = outline(made.room);
  ASSERT_EQ(ring.size(), 6u);
  for (std::size_t i = 0; i < 6; ++i) EXPECT_LT((ring[i] - expected[i]).norm(), 0.003) << i;
  EXPECT_NEAR(*ceilingHeightAt(made.room, {3, 2}), 2.30, 0.003);
  EXPECT_EQ(made.room.openings.size(), 2u);
  EXPECT_EQ(made.room.openings[1].name, "Window");
  EXPECT_EQ(made.residuals.size(), 11u + 4);
  EXPECT_TRUE(made.suspicious.empty());
  EXPECT_TRUE(made.skipped.empty());
  EXPECT_GT(made.room.walls[3].startCovariance.xx, 0);
}

TEST(RecogniseList, SetsAsideTheOneReadingThatDoesNotFit) {
  const RecognisedRoom made = recognised(replaced(kGood, "diagonal,B,D,,,,4.243", "diagonal,B,D,,,,4.443") +
                                         "offset,A,D,,,,3.000,,laser,\noffset,F,D,,,,4.000,,laser,\n");
  ASSERT_EQ(made.suspicious.size(), 1u);
  EXPECT_NE(made.suspicious[0].find("Diagonal B-D"), std::string::npos) << made.suspicious[0];
  EXPECT_NE(made.suspicious[0].find("4.24"), std::string::npos) << made.suspicious[0];
  EXPECT_EQ(std::count_if(made.measurements.begin(), made.measurements.end(),
                          [](const Measurement& reading) { return !reading.used; }),
            1);
  EXPECT_LT((outline(made.room)[3] - Vec2(4, 3)).norm(), 0.003);
}

TEST(RecogniseList, LeavesOutOpeningsThatDoNotFitAndSaysSo) {
  const RecognisedRoom made =
      recognised(std::string(kGood) +
                 "door,D,,,0.5,,3.0,2.0,,barn door\ndoor,C,,,2.5,,0.9,2.0,,side door\n"
                 "passage,A,,,1.2,,1.0,2.0,,gap\nwindow,B,,,2.02,1,1.0,1.0,,slit\n");
  ASSERT_EQ(made.skipped.size(), 3u);
  EXPECT_NE(made.skipped[0].find("barn door"), std::string::npos);
  EXPECT_NE(made.skipped[1].find("past its wall"), std::string::npos);
  EXPECT_NE(made.skipped[2].find("overlaps front door"), std::string::npos);
  EXPECT_EQ(made.room.openings.size(), 3u);  // the slit slid by 20 mm
  EXPECT_NEAR(made.room.openings[2].offset.value, 2.0, 0.003);
}

TEST(RecogniseList, RefusesWallsThatCannotBeAFloor) {
  const auto list = readMeasuringList("kind,from,value\nwall,A,1 m\nwall,B,1 m\nwall,C,20 m\nwall,D,1 m\n");
  ASSERT_TRUE(list.has_value());
  const auto room = recogniseList(*list);
  if (room) {
    EXPECT_FALSE(room->suspicious.empty());
  } else {
    EXPECT_NE(room.error().sentence(), "");
  }
}

TEST(RecogniseList, RefusesWallsThatLieOnEachOther) {
  const auto list = readMeasuringList("kind,from,value\nunit,,m\nwall,A,6\nwall,B,1\nwall,C,2\nwall,D,14\n");
  ASSERT_TRUE(list);
  const auto room = recogniseList(*list);
  ASSERT_FALSE(room);
  EXPECT_NE(room.error().sentence().find("wall D was read as 14.000 m"), std::string::npos)
      << room.error().sentence();
}

// The same room with its corners lettered the other way round: A stays, and wall A is what F was.
constexpr const char* kClockwise =
    "kind,from,to,at,x,y,value,height,how,note\n"
    "unit,,,,,,m,,,\norder,,,,,,clockwise,,,\n"
    "wall,A,,,,,5.500,,laser,\nwall,B,,,,,4.000,,laser,\nwall,C,,,,,2.500,,laser,\n"
    "wall,D,,,,,3.000,,laser,\nwall,E,,,,,3.000,,laser,\nwall,F,,,,,7.000,,laser,\n"
    "diagonal,A,C,,,,6.8007,,laser,\ndiagonal,A,D,,,,5.000,,laser,\ndiagonal,A,E,,,,7.6158,,laser,\n"
    "diagonal,D,F,,,,4.2426,,laser,\ndiagonal,B,D,,,,4.717,,laser,\noffset,F,C,,,,5.500,,laser,\nangle,,,D,,,"
    "270,,laser,\n"
    "ceiling,,,,5,1,2.45,,laser,\nceiling,,,,1,3,2.25,,laser,\nceiling,,,,1,6,2.25,,laser,\n"
    "door,F,,,5.25,,0.90,2.03,,front door\n"
    "window,A,,,3.20,0.95,1.20,1.10,,\n";

TEST(RecogniseList, TurnsARoomRoundWhoseLettersRunClockwise) {
  const RecognisedRoom made = recognised(kClockwise);
  // From A along the list's wall A; seen from above the room lies to the right of it.
  const Ring expected{{0, 0}, {0, -7}, {3, -7}, {3, -4}, {5.5, -4}, {5.5, 0}};
  const Ring ring = outline(made.room);
  ASSERT_EQ(ring.size(), 6u);
  EXPECT_GT(signedArea(ring), 0);
  for (std::size_t i = 0; i < 6; ++i) EXPECT_LT((ring[i] - expected[i]).norm(), 0.003) << i;
  std::string names;
  for (const Wall& wall : made.room.walls) names += wall.name;
  EXPECT_EQ(names, "AFEDCB");
  // 5.25 from corner F along the wall to A, which starts at A here.
  ASSERT_EQ(made.room.openings.size(), 2u);
  EXPECT_EQ(findById(made.room.walls, made.room.openings[0].wall)->name, "A");
  EXPECT_NEAR(made.room.openings[0].offset.value, 7 - 5.25 - 0.9, 0.003);
  EXPECT_EQ(findById(made.room.walls, made.room.openings[1].wall)->name, "B");
  EXPECT_NEAR(made.room.openings[1].offset.value, 5.5 - 3.2 - 1.2, 0.003);
  EXPECT_NEAR(*ceilingHeightAt(made.room, {5, -1}), 2.45, 0.003);
  EXPECT_NEAR(*ceilingHeightAt(made.room, {1, -5}), 2.25, 0.003);
  EXPECT_TRUE(made.suspicious.empty());
}

TEST(RecogniseList, KeepsTheReadingsOfARoomThatWasTurnedRoundTrue) {
  const RecognisedRoom made = recognised(kClockwise);
  const auto again = adjust(made.room, made.measurements);
  ASSERT_TRUE(again.has_value()) << again.error().sentence();
  EXPECT_GT(again->tail, 0.05);
  for (std::size_t i = 0; i < 6; ++i)
    EXPECT_LT((again->corners[i].position - made.room.walls[i].start).norm(), 0.002) << i;
  for (const AdjustedReading& reading : again->readings)
    EXPECT_NE(reading.what, "wall A");  // whose that would be is not plain
  EXPECT_EQ(again->readings.front().what, "wall A-B");
}

TEST(RecogniseList, NamesWallsByBothEndsWhereLettersRunClockwise) {
  const RecognisedRoom made = recognised(replaced(kClockwise, "wall,B,,,,,4.000", "wall,B,,,,,4.300"));
  ASSERT_EQ(made.suspicious.size(), 1u);
  EXPECT_EQ(made.suspicious[0].find("Wall B-C was read as 4.300 m and is probably 4.00"), 0u)
      << made.suspicious[0];
}

TEST(RecogniseList, MirrorsWhatIsTheSameReadTheOtherWayRound) {
  // Without the row the same figures make the mirror image, and the notes say that nothing tells.
  const RecognisedRoom turned = recognised(kClockwise);
  const RecognisedRoom unsaid = recognised(replaced(kClockwise, "order,,,,,,clockwise,,,\n", ""));
  const Ring first = outline(turned.room);
  const Ring second = outline(unsaid.room);
  EXPECT_NEAR(signedArea(first), signedArea(second), 1e-9);
  for (std::size_t i = 0; i < 6; ++i)
    EXPECT_LT((first[i] - Vec2(second[(6 - i) % 6].x(), -second[(6 - i) % 6].y())).norm(), 1e-9);
  const auto asks = [](const std::string& note) { return note.find("row 'order'") != std::string::npos; };
  EXPECT_TRUE(std::any_of(unsaid.notes.begin(), unsaid.notes.end(), asks));
  EXPECT_FALSE(std::any_of(turned.notes.begin(), turned.notes.end(), asks));
}

TEST(RecogniseList, MakesARoomOfTheHelpPagesList) {
  std::ifstream in(std::string(BAYWRIGHT_RESOURCES) + "/help/measuring-list.md");
  const std::string page{std::istreambuf_iterator<char>(in), {}};
  const auto begin = page.find("```\n") + 4;
  const RecognisedRoom made = recognised(page.substr(begin, page.find("```", begin) - begin));
  EXPECT_EQ(made.room.walls.size(), 4u);
  EXPECT_EQ(made.room.openings.size(), 3u);
  EXPECT_TRUE(made.suspicious.empty() && made.skipped.empty());
  EXPECT_NEAR(*ceilingHeightAt(made.room, {3, 2}), 2.41, 0.005);
  // Every kind and column that a list may have is on the page.
  for (const auto& kind : detail::kKinds)
    EXPECT_NE(page.find(std::string(kind.name)), std::string::npos) << kind.name;
  for (const auto& column : detail::kColumns)
    EXPECT_NE(page.find(std::string(column)), std::string::npos) << column;
}

TEST(TakeRoom, MakesAValidJobWithNewIds) {
  RecognisedRoom made = recognised(kGood);
  made.originals = {{Id{}, "list.csv", std::make_shared<const Blob>(Blob{"list.csv", kGood})}};
  Job job = starterJob();
  job.originals.push_back(
      {job.takeId(), "of the room before", std::make_shared<const Blob>(Blob{"a.csv", ""})});
  const std::uint32_t before = job.lastId;
  const auto taken = takeRoom(job, made);
  ASSERT_TRUE(taken.has_value()) << taken.error().sentence();
  EXPECT_TRUE(validate(*taken).empty());
  EXPECT_EQ(taken->measurements.size(), made.measurements.size());
  for (const Wall& wall : taken->room.walls) EXPECT_GT(wall.id.value, before);
  const Opening& door = taken->room.openings[0];
  ASSERT_NE(findById(taken->room.walls, door.wall), nullptr);
  EXPECT_EQ(findById(taken->room.walls, door.wall)->name, "A");
  EXPECT_EQ(findById(taken->room.walls, taken->measurements[0].to)->name, "D");
  EXPECT_TRUE(isInside(taken->room, taken->option().placement.bay.origin));
  ASSERT_EQ(taken->originals.size(), 1u);
  EXPECT_EQ(taken->originals[0].file, made.originals[0].file);
}

}  // namespace
}  // namespace baywright
