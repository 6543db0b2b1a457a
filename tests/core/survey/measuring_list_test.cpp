// SPDX-License-Identifier: Apache-2.0
#include "survey/measuring_list.h"

#include <gtest/gtest.h>

#include <random>

#include "survey/csv_rows.h"

namespace baywright {
namespace {

constexpr const char* kHeader = "kind,from,to,at,x,y,value,height,how,note\n";

MeasuringList read(const std::string& text, std::optional<UnitSystem> asked = {}) {
  const auto list = readMeasuringList(text, asked);
  EXPECT_TRUE(list.has_value()) << list.error().sentence();
  return list.value_or(MeasuringList{});
}

std::string refusal(const std::string& text, std::optional<UnitSystem> asked = {}) {
  const auto list = readMeasuringList(text, asked);
  return list ? std::string() : list.error().sentence();
}

std::string rows(const std::string& text) {
  return kHeader + text + "corners,,,,,,4,,,\n";
}

TEST(MeasuringList, ReadsWhatItsDescriptionShows) {
  const MeasuringList list = read(
      "kind,from,to,at,x,y,value,height,how,note\n"
      "# a garage\n"
      "unit,,,,,,m,,,\n"
      "wall,A,,,,,6.012,,laser,\n"
      "diagonal,A,C,,,,\"23' 8 1/2\"\"\",,tape,\n"
      "angle,,,D,,,90.2,,,\n"
      "angle,A,C,D,,,44.5,,,\n"
      "offset,A,E,,,,\"5,50 m\",,,\n"
      "ceiling,,,,1.2,3.0,2.41,,,\n"
      "ceiling,,,C,,,2.43,,,\n"
      "door,B,,,0.85,,0.90,2.03,,front door\n"
      "window,C,,,1.10,0.95,1.20,1.10,,\n"
      "corners,,,,,,6,,,\n");
  ASSERT_EQ(list.walls.size(), 6u);
  EXPECT_EQ(list.walls[5].name, "F");
  ASSERT_EQ(list.readings.size(), 7u);
  EXPECT_EQ(list.readings[0].from, list.walls[0].id);
  EXPECT_EQ(list.readings[0].how, Instrument::Laser);
  EXPECT_EQ(list.readings[0].value, 6.012);
  EXPECT_NEAR(list.readings[1].value, (23 * 12 + 8.5) * 0.0254, 1e-12);
  EXPECT_EQ(list.readings[1].how, Instrument::Tape);
  EXPECT_NEAR(list.readings[2].value, 90.2 * kPi / 180, 1e-12);
  EXPECT_EQ(list.readings[2].from, list.walls[4].id);
  EXPECT_EQ(list.readings[2].to, list.walls[2].id);
  EXPECT_EQ(list.readings[4].value, 5.5);
  EXPECT_EQ(list.readings[5].position, Vec2(1.2, 3.0));
  EXPECT_EQ(list.readings[6].at, list.walls[2].id);
  ASSERT_EQ(list.openings.size(), 2u);
  EXPECT_EQ(list.openings[0].name, "front door");
  EXPECT_EQ(list.openings[0].offset, taped(0.85));
  EXPECT_EQ(list.openings[1].kind, OpeningKind::Window);
  EXPECT_EQ(list.openings[1].sill, taped(0.95));
  EXPECT_EQ(list.openings[1].height, taped(1.10));
  EXPECT_EQ(list.lastId, 6u + 7 + 2);
}

TEST(MeasuringList, TakesColumnsInAnyOrderAndSeparatorsThatSpreadsheetsWrite) {
  const MeasuringList list = read(
      "\xEF\xBB\xBFValue;Kind;From;To\r\n"
      "6,01;wall;a;\r\n"
      "m;unit;;\r\n"
      "4,5;Wall;b;\r\n"
      ";;;\r\n"
      "7,504;diagonal;A;C\r\n"
      "6,010;wall;c\r\n"
      "4,5;wall;d\r\n");
  ASSERT_EQ(list.readings.size(), 5u);
  EXPECT_EQ(list.readings[2].value, 7.504);
  EXPECT_EQ(list.units.decimal, ',');
}

TEST(MeasuringList, ReadsFiguresInTheUnitThatIsStatedOrAsked) {
  const std::string walls = "wall,A,,,,,236 3/4,,,\n";
  UnitSystem inches;
  inches.length = LengthUnit::Inches;
  EXPECT_NEAR(read(rows(walls), inches).readings[0].value, 236.75 * 0.0254, 1e-12);
  EXPECT_NEAR(read(rows(walls + "unit,,,,,,in,,,\n")).readings[0].value, 236.75 * 0.0254, 1e-12);
  EXPECT_NEAR(read(rows("wall,A,,,,,11' 4 3/8\",,,\n")).readings[0].value, 136.375 * 0.0254, 1e-12);
  EXPECT_NEAR(read(rows("wall,A,,,,,3450,,,\nunit,,,,,,mm,,,\n")).readings[0].value, 3.45, 1e-12);
}

TEST(MeasuringList, AsksForTheUnitWhereNobodySaysOne) {
  const std::string said = refusal(rows("wall,A,,,,,3.45,,,\n"));
  EXPECT_NE(said.find("line 2, column value"), std::string::npos) << said;
  EXPECT_NE(said.find("no unit"), std::string::npos) << said;
  UnitSystem millimetres;
  millimetres.length = LengthUnit::Millimetres;
  EXPECT_NE(refusal(rows("unit,,,,,,m,,,\nwall,A,,,,,3.45,,,\n"), millimetres), "");
}

TEST(MeasuringList, DoesNotGuessWhatACommaMeans) {
  EXPECT_NE(refusal(rows("unit,,,,,,mm,,,\nwall,A,,,,,\"6,000\",,,\n")).find("two ways"), std::string::npos);
  EXPECT_EQ(read(rows("unit,,,,,,m,,,\nwall,A,,,,,\"6,000\",,,\nwall,B,,,,,\"4,5\",,,\n")).readings[0].value,
            6);
}

TEST(MeasuringList, SaysLineAndColumnOfWhatItRefuses) {
  const std::pair<const char*, const char*> cases[] = {
      {"unit,,,,,,m,,,\nwal,A,,,,,3,,,\n", "line 3, column kind"},
      {"unit,,,,,,furlong,,,\n", "line 2, column value"},
      {"unit,,,,,,m,,,\nunit,,,,,,mm,,,\n", "line 3, column value"},
      {"unit,,,,,,m,,,\nwall,,,,,,3,,,\n", "line 3, column from"},
      {"unit,,,,,,m,,,\nwall,7,,,,,3,,,\n", "line 3, column from"},
      {"unit,,,,,,m,,,\ndiagonal,A,,,,,3,,,\n", "line 3, column to"},
      {"unit,,,,,,m,,,\nwall,A,,,,,three,,,\n", "line 3, column value"},
      {"unit,,,,,,m,,,\nwall,A,,,,,,,,\n", "line 3, column value"},
      {"unit,,,,,,m,,,\nwall,A,,,,,3,,string,\n", "line 3, column how"},
      {"unit,,,,,,m,,,\nangle,,,,,,90,,,\n", "line 3, column at"},
      {"unit,,,,,,m,,,\nangle,,,A,,,400,,,\n", "line 3, column value"},
      {"unit,,,,,,m,,,\nceiling,,,,,,2.4,,,\n", "line 3, column x"},
      {"unit,,,,,,m,,,\nceiling,,,,1,1,240,,,\n", "line 3, column value"},
      {"unit,,,,,,m,,,\nceiling,,,A,1,1,2.4,,,\n", "line 3, column at"},
      {"unit,,,,,,m,,,\ndoor,A,,,,,0.9,,,\n", "line 3, column x"},
      {"unit,,,,,,m,,,\ndoor,A,,,1,,0.01,,,\n", "line 3, column value"},
      {"corners,,,,,,2.5,,,\n", "line 2, column value"},
      {"unit,,,,,,m,,,\nwall,A,,,,,3,45,,,\n", "line 3: The row has 11"},
      {"wall,A,,,,,\"3 m,,,\n", "line 2"},
      {"wall,ABCDEFGHIJKLMNOP,,,,,3 m,,,\n", "line 2, column from"},
  };
  for (const auto& [text, where] : cases) {
    const std::string said = refusal(rows(text));
    EXPECT_NE(said.find(where), std::string::npos) << text << said;
  }
  EXPECT_NE(refusal("kind,value,colour\n").find("line 1, field 3"), std::string::npos);
  EXPECT_NE(refusal("kind,value,kind\n").find("line 1, field 3"), std::string::npos);
  EXPECT_NE(refusal("kind,from\n").find("value"), std::string::npos);
  EXPECT_NE(refusal("").find("empty"), std::string::npos);
  EXPECT_NE(refusal(std::string(kHeader) + "wall,A,,,,,3 m,,,\n").find("three corners"), std::string::npos);
  EXPECT_NE(refusal(rows("wall,E,,,,,3 m,,,\n")).find("corner E"), std::string::npos);
}

TEST(MeasuringList, BelievesThreeDecimalsWhereACommaCanPartNothingElse) {
  // Every figure has three decimals: with semicolons, or in metres, a comma parts no thousands.
  const std::string walls = "wall;A;7,200\nwall;B;3,100\nwall;C;7,200\nwall;D;3,100\n";
  EXPECT_EQ(read("kind;from;value\nunit;;m\n" + walls).readings[0].value, 7.2);
  const MeasuringList quoted =
      read("kind,from,value\nunit,,m\nwall,A,\"7,200\"\nwall,B,\"3,100 m\"\ncorners,,4\n");
  EXPECT_EQ(quoted.readings[0].value, 7.2);
  EXPECT_EQ(quoted.readings[1].value, 3.1);
  EXPECT_NE(refusal("kind,from,value\nunit,,mm\nwall,A,\"7,200\"\ncorners,,4\n").find("line 3, column value"),
            std::string::npos);
}

TEST(MeasuringList, ReadsTheEncodingsAndLineEndsOfSpreadsheets) {
  const std::string plain =
      "kind;from;value;note\nunit;;m;\nwall;A;6;S\u00FCdwand \u2013 hei\u00DF\ncorners;;4;\n";
  const MeasuringList expected = read(plain);
  EXPECT_EQ(expected.readings[0].note, "S\u00FCdwand \u2013 hei\u00DF");
  const std::string windows =
      "kind;from;value;note\runit;;m;\rwall;A;6;S\xFC"
      "dwand \x96 hei\xDF\rcorners;;4;\r";
  EXPECT_EQ(read(windows).readings, expected.readings);
  for (const bool isBig : {false, true}) {
    std::string wide = isBig ? "\xFE\xFF" : "\xFF\xFE";
    for (const char16_t unit : std::u16string(u"kind;from;value;note\r\nunit;;m;\r\nwall;A;6;S\u00FCdwand "
                                              u"\u2013 hei\u00DF\r\ncorners;;4;\r\n")) {
      const char high = static_cast<char>(unit >> 8), low = static_cast<char>(unit & 0xFF);
      wide += isBig ? std::string{high, low} : std::string{low, high};
    }
    EXPECT_EQ(read(wide).readings, expected.readings) << isBig;
    EXPECT_TRUE(looksLikeMeasuringList(wide));
  }
}

TEST(MeasuringList, ReadsWhatSpreadsheetsAdd) {
  const std::string rows = "kind;from;value\nunit;;m\nwall;A;6,0\nwall;B;4,0\nwall;C;6,0\nwall;D;4,0\n";
  const auto same = [&](const std::string& text) {
    const auto list = readMeasuringList(text);
    EXPECT_TRUE(list) << list.error().sentence();
    return list && list->readings.size() == 4 && list->readings[3].value == 4;
  };
  EXPECT_TRUE(same(rows));
  EXPECT_TRUE(same("sep=;\n" + rows));
  // Empty fields at the end of a row, and two bytes a letter without the mark that says so.
  std::string padded, wide, wideBig;
  for (const char c : rows) {
    padded += c == '\n' ? ";;\n" : std::string(1, c);
    wide += {c, '\0'};
    wideBig += {'\0', c};
  }
  EXPECT_TRUE(same("kind;from;value\n" + padded.substr(padded.find('\n') + 1)));
  EXPECT_TRUE(same(wide));
  EXPECT_TRUE(same(wideBig));
  EXPECT_FALSE(readMeasuringList(std::string("kind,from,value\n\0\0\0\0", 20)));
}

TEST(MeasuringList, TakesTheUnitFromTheHeader) {
  const MeasuringList list = read("kind,from,value [mm]\nwall,A,6012\ncorners,,4\n");
  EXPECT_NEAR(list.readings[0].value, 6.012, 1e-12);
  EXPECT_EQ(list.units.length, LengthUnit::Millimetres);
  EXPECT_NE(refusal("kind,from,value (mm)\nunit,,m\nwall,A,6\ncorners,,4\n").find("two units"),
            std::string::npos);
  EXPECT_NE(refusal("kind,from,value (miles)\n").find("line 1, field 3"), std::string::npos);
}

TEST(MeasuringList, SaysLineAndColumnOfReadingsThatCannotBe) {
  const std::string head = "kind,from,to,value\nunit,,,m\n";
  const std::string walls = "wall,A,,6\nwall,B,,4\nwall,C,,6\nwall,D,,4\n";
  EXPECT_NE(refusal("wall,A,,6\nwall,B,,4\n").find("no header"), std::string::npos);
  EXPECT_NE(refusal(head + walls + "wall,A,,0\n").find("line 7, column value"), std::string::npos);
  EXPECT_NE(refusal(head + walls + "diagonal,A,C,-7\n").find("line 7, column value"), std::string::npos);
  EXPECT_NE(refusal(head + walls + "diagonal,A,A,7\n").find("line 7"), std::string::npos);
  EXPECT_NE(refusal(head + walls + "offset,A,B,1\n").find("line 7"), std::string::npos);
  // Three walls of a rectangle, and a wall named by both its corners in one field.
  EXPECT_NE(refusal(head + "wall,A,,6\nwall,B,,4\nwall,C,,6\n").find("row 'corners'"), std::string::npos);
  EXPECT_EQ(read(head + "corners,,,3\nwall,A,,6\nwall,B,,4\nwall,C,,6\n").walls.size(), 3u);
  EXPECT_NE(refusal(head + "wall,AB,,6\nwall,BC,,4\nwall,CD,,6\n").find("one corner in a field"),
            std::string::npos);
}

TEST(MeasuringList, SaysWhichWayRoundItsLettersRun) {
  const std::string rows = "kind,from,value\nunit,,m\nwall,A,6\nwall,B,4\nwall,C,6\nwall,D,4\n";
  const auto order = [](const std::string& text) {
    const auto list = readMeasuringList(text);
    EXPECT_TRUE(list) << list.error().sentence();
    return list ? list->order : LetterOrder::NotSaid;
  };
  EXPECT_EQ(order(rows), LetterOrder::NotSaid);
  EXPECT_EQ(order(rows + "order,,Clockwise\n"), LetterOrder::Clockwise);
  for (const char* word : {"counter-clockwise", "counterclockwise", "anticlockwise", "anti clockwise"})
    EXPECT_EQ(order(rows + "order,," + word + "\n"), LetterOrder::CounterClockwise) << word;
  // A remark says it too; a row wins over it, and one that says both says nothing.
  EXPECT_EQ(order("# corners named clockwise, seen from above\n" + rows), LetterOrder::Clockwise);
  EXPECT_EQ(order("# clockwise\n" + rows + "order,,counter-clockwise\n"), LetterOrder::CounterClockwise);
  EXPECT_EQ(order("# not clockwise but anticlockwise\n" + rows), LetterOrder::NotSaid);
  EXPECT_FALSE(readMeasuringList(rows + "order,,left\n"));
  EXPECT_FALSE(readMeasuringList(rows + "order,,clockwise\norder,,counter-clockwise\n"));
}

TEST(MeasuringList, IsToldFromATableOfPoints) {
  EXPECT_TRUE(looksLikeMeasuringList("# mine\n\nValue;Kind\n"));
  EXPECT_FALSE(looksLikeMeasuringList("x,y,z\n1,2,3\n"));
  EXPECT_FALSE(looksLikeMeasuringList("1.5 2.5 3.5\n"));
  EXPECT_FALSE(looksLikeMeasuringList(""));
}

TEST(MeasuringList, IsBounded) {
  EXPECT_NE(refusal(std::string(kLargestTable + 1, 'x')).find("megabyte"), std::string::npos);
  std::string many = kHeader;
  for (std::size_t i = 0; i < kMostRows; ++i) many += "wall,A,,,,,3 m,,,\n";
  EXPECT_NE(refusal(many).find("rows"), std::string::npos);
  EXPECT_NE(refusal(std::string(kHeader) + std::string("wall,A\0B", 8)).find("control"), std::string::npos);
  EXPECT_NE(refusal("\x89PNG\r\n\x1a\n"), "");
}

TEST(MeasuringList, ReadsBackWhatItWrites) {
  MeasuringList list = read(rows(
      "unit,,,,,,m,,,\nwall,A,,,,,6.0123,,laser,\"a \"\"good\"\" one, twice read\"\nangle,,,B,,,89.5,,,\n"
      "offset,A,C,,,,4,,guess,\nceiling,,,,1,2,2.4,,,\nceiling,,,D,,,2.5,,,\n"
      "garage door,A,,,0.4,,2.4,2.1,,\npassage,B,,,1,,0.9,,,\n"));
  const MeasuringList again = read(writeMeasuringList(list));
  ASSERT_EQ(again.readings.size(), list.readings.size());
  for (std::size_t i = 0; i < list.readings.size(); ++i) {
    EXPECT_NEAR(again.readings[i].value, list.readings[i].value, 1e-5);
    Measurement same = again.readings[i];
    same.value = list.readings[i].value;
    EXPECT_EQ(same, list.readings[i]);
  }
  EXPECT_EQ(again.openings, list.openings);
  EXPECT_EQ(again.walls, list.walls);
}

TEST(MeasuringList, WritesTheReadingsOfAJob) {
  Job job = starterJob();
  const MeasuringList list = read(rows("wall,A,,,,,6 m,,,\ndoor,A,,,1 m,,0.9 m,2 m,,\n"));
  job.room.walls = list.walls;
  job.room.openings = list.openings;
  job.measurements = list.readings;
  EXPECT_EQ(read(writeMeasuringList(measuringListOf(job))).readings, list.readings);
}

// Whatever bytes come, there is an answer: a list or a sentence.
TEST(MeasuringList, AnswersAnyBytes) {
  const std::string good = rows(
      "unit,,,,,,m,,,\nwall,A,,,,,6.0,,laser,\ndiagonal,A,C,,,,\"7' 2 1/2\"\"\",,,\nceiling,,,,1,2,2.4,,,\n");
  std::mt19937 random(17);
  int refused = 0;
  for (int round = 0; round < 5000; ++round) {
    std::string text = good;
    for (int change = 0; change < 3; ++change) {
      const std::size_t place = random() % text.size();
      switch (random() % 3) {
        case 0:
          text[place] = static_cast<char>(random() % 256);
          break;
        case 1:
          text.erase(place, random() % 20);
          break;
        default:
          text.insert(place, text.substr(random() % text.size(), random() % 30));
      }
    }
    const std::string said = refusal(text);
    refused += !said.empty();
  }
  EXPECT_GT(refused, 100);
}

}  // namespace
}  // namespace baywright
