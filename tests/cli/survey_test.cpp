// SPDX-License-Identifier: Apache-2.0
#include <nlohmann/json.hpp>

#include "job/room_geometry.h"
#include "job/validate.h"
#include "program.h"

namespace baywright {
namespace {

using testing::textOf;

constexpr const char* kGarage =
    "kind,from,to,at,x,y,value,height,how,note\n"
    "unit,,,,,,m,,,\n"
    "wall,A,,,,,6.000,,laser,\n"
    "wall,B,,,,,4.001,,laser,\n"
    "wall,C,,,,,5.999,,laser,\n"
    "wall,D,,,,,4.000,,laser,\n"
    "diagonal,A,C,,,,7.211,,laser,\n"
    "diagonal,B,D,,,,\"23' 7 7/8\"\"\",,tape,\n"
    "ceiling,,,,1,1,2.40,,laser,\n"
    "ceiling,,,,5,3,2.401,,laser,\n"
    "door,A,,,0.85,,0.90,2.03,,Side door\n"
    "garage door,C,,,1.5,,3.0,2.1,,\n";

class SurveyCommand : public testing::ProgramTest {
 protected:
  void write(const std::string& name, const std::string& text) { std::ofstream(folder / name) << text; }

  bool fitsSchema(const std::string& json) {
    write("survey.json", json);
    const std::string command =
        "/usr/bin/python3 -c \"import json, jsonschema, sys; "
        "jsonschema.validate(json.load(open(sys.argv[1])), json.load(open(sys.argv[2])))\" '" +
        (folder / "survey.json").string() + "' '" BAYWRIGHT_RESOURCES "/schema/survey-1.schema.json'";
    return std::system(command.c_str()) == 0;
  }
};

TEST_F(SurveyCommand, MakesAJobOfAMeasuringList) {
  write("my garage.csv", kGarage);
  const auto ran = run("survey 'my garage.csv' --out 'my garage.bayjob'");
  ASSERT_EQ(ran.code, 0) << ran.err;
  EXPECT_EQ(ran.err, "");
  const Result<Job> job = loadJob(folder / "my garage.bayjob");
  ASSERT_TRUE(job.has_value()) << job.error().sentence();
  EXPECT_TRUE(validate(*job).empty());
  EXPECT_EQ(job->info.title, "my garage");
  EXPECT_NEAR(floorArea(job->room), 24.0, 0.01);
  EXPECT_EQ(job->measurements.size(), 8u);
  EXPECT_EQ(job->room.openings.size(), 2u);
  EXPECT_NE(ran.out.find("wall A  6.000 m"), std::string::npos) << ran.out;
  EXPECT_LE(run("check 'my garage.bayjob'").code, 1);
}

TEST_F(SurveyCommand, TakesTheListThatTheReadmeShows) {
  const std::string readme = textOf(BAYWRIGHT_TESTS "/../README.md");
  const std::size_t from = readme.find("kind,from,to,at");
  ASSERT_NE(from, std::string::npos);
  write("readme.csv", readme.substr(from, readme.find("```", from) - from));
  const auto ran = run("survey readme.csv --out readme.bayjob");
  ASSERT_EQ(ran.code, 0) << ran.err;
  const Result<Job> job = loadJob(folder / "readme.bayjob");
  ASSERT_TRUE(job.has_value()) << job.error().sentence();
  ASSERT_EQ(job->room.walls.size(), 4u);
  EXPECT_NEAR(wallLines(job->room)[1].length, (11 * 12 + 9.5) * 0.0254, 0.005);
  EXPECT_EQ(job->measurements.size(), 5u);
  ASSERT_EQ(job->originals.size(), 1u);
  EXPECT_EQ(job->originals[0].file->fileName, "readme.csv");
  EXPECT_NE(job->originals[0].file->bytes.find("wall"), std::string::npos);
}

TEST_F(SurveyCommand, PrintsWhatItRecognisedAsItsSchemaSays) {
  write("garage.csv", kGarage);
  const auto ran = run("survey garage.csv --out garage.bayjob --json");
  ASSERT_EQ(ran.code, 0) << ran.err;
  EXPECT_TRUE(fitsSchema(ran.out));
  const nlohmann::json json = nlohmann::json::parse(ran.out);
  EXPECT_EQ(json["source"]["kind"], "measuring list");
  ASSERT_EQ(json["floor"]["polygon"].size(), 4u);
  EXPECT_NEAR(json["floor"]["polygon"][2][0].get<double>(), 6.0, 0.003);
  EXPECT_NEAR(json["floor"]["polygon"][2][1].get<double>(), 4.0, 0.003);
  EXPECT_GT(json["floor"]["corners"][2]["sigma_y_m"].get<double>(), 0);
  EXPECT_LT(json["floor"]["corners"][2]["ellipse_95"]["major_m"].get<double>(), 0.01);
  EXPECT_NEAR(json["ceiling"][0]["height"]["value_m"].get<double>(), 2.4, 0.002);
  EXPECT_EQ(json["residuals"].size(), 8u);
  EXPECT_TRUE(json["suspicious"].empty());
  EXPECT_EQ(json["originals"][0]["file"], "garage.csv");
  EXPECT_EQ(run("survey garage.csv --out garage.bayjob --json").out, ran.out);
}

TEST_F(SurveyCommand, NamesTheReadingThatDoesNotFit) {
  std::string text = kGarage;
  text.replace(text.find("7.211"), 5, "7.511");
  write("garage.csv", text);
  const auto ran = run("survey garage.csv --out garage.bayjob --json");
  ASSERT_EQ(ran.code, 0) << ran.err;
  EXPECT_TRUE(fitsSchema(ran.out));
  const nlohmann::json json = nlohmann::json::parse(ran.out);
  ASSERT_EQ(json["suspicious"].size(), 1u);
  EXPECT_NE(
      json["suspicious"][0].get<std::string>().find("Diagonal A-C was read as 7.511 m and is probably 7.21"),
      std::string::npos)
      << json["suspicious"][0];
  EXPECT_NEAR(json["floor"]["polygon"][2][1].get<double>(), 4.0, 0.003);
}

TEST_F(SurveyCommand, AsksForTheUnitAndTakesItWhenItIsGiven) {
  write("room.csv", "kind,from,value\nwall,A,6000\nwall,B,4000\nwall,C,6000\nwall,D,4000\n");
  const auto asked = run("survey room.csv --out room.bayjob");
  EXPECT_EQ(asked.code, 2);
  EXPECT_EQ(asked.out, "");
  EXPECT_NE(asked.err.find("line 2, column value"), std::string::npos) << asked.err;
  EXPECT_FALSE(std::filesystem::exists(folder / "room.bayjob"));
  ASSERT_EQ(run("survey room.csv --out room.bayjob --unit mm").code, 0);
  EXPECT_NEAR(floorArea(loadJob(folder / "room.bayjob")->room), 24, 1e-6);
  EXPECT_EQ(run("survey room.csv --out room.bayjob --unit cubits").code, 2);
}

TEST_F(SurveyCommand, RefusesFilesThatItCannotRead) {
  EXPECT_EQ(run("survey nowhere.csv --out a.bayjob").code, 2);
  write("notes.doc", "milk, bread");
  const auto ending = run("survey notes.doc --out a.bayjob");
  EXPECT_EQ(ending.code, 2);
  EXPECT_NE(ending.err.find(".csv"), std::string::npos) << ending.err;
  write("noise.csv", std::string("\x00\x01\xff\xfe", 4));
  EXPECT_EQ(run("survey noise.csv --out a.bayjob").code, 2);
  EXPECT_EQ(run("survey noise.csv").code, 2);
  write("garage.csv", kGarage);
  EXPECT_EQ(run("survey garage.csv --out no/such/folder/a.bayjob").code, 2);
}

TEST_F(SurveyCommand, MakesAJobOfAScanWithTheDoorThatItShows) {
  // A closed room of 6 by 4 by 2.5 m in feet, y up, with a door's hole and its reveal in the wall at z = 0.
  std::string text;
  const auto add = [&](double x, double y, double z) {
    for (const double metres : {x, z, -y}) text += std::to_string(metres / 0.3048) + " ";
    text += "\n";
  };
  for (double s = 0.025; s < 6; s += 0.05) {
    for (double t = 0.025; t < 4; t += 0.05)
      for (const double z : {0.0, 2.5}) add(s, t, z);
    for (double z = 0.025; z < 2.5; z += 0.05) {
      if (s < 2 || s > 2.9 || z > 2.05) add(s, 0, z);
      add(s, 4, z);
    }
  }
  for (double z = 0.025; z < 2.5; z += 0.05) {
    for (double t = 0.025; t < 4; t += 0.05)
      for (const double x : {0.0, 6.0}) add(x, t, z);
    for (double depth = 0.02; depth < 0.2 && z < 2.05; depth += 0.02)
      for (const double x : {2.0, 2.9}) add(x, -depth, z);
  }
  write("room.xyz", text);
  const auto ran = run("survey room.xyz --out room.bayjob --unit ft --up y --json");
  ASSERT_EQ(ran.code, 0) << ran.err;
  EXPECT_TRUE(fitsSchema(ran.out));
  const nlohmann::json json = nlohmann::json::parse(ran.out);
  EXPECT_EQ(json["source"]["kind"], "scan");
  EXPECT_NEAR(json["floor"]["area_m2"].get<double>(), 24, 0.05);
  ASSERT_EQ(json["openings"].size(), 1u);
  const auto& door = json["openings"][0];
  EXPECT_EQ(door["kind"], "hingedDoor");
  EXPECT_NEAR(door["width"]["value_m"].get<double>(), 0.9, 0.03);
  EXPECT_NEAR(door["height"]["value_m"].get<double>(), 2.05, 0.05);
  EXPECT_EQ(door["width"]["how"], "scan");
  const Result<Job> job = loadJob(folder / "room.bayjob");
  ASSERT_TRUE(job.has_value()) << job.error().sentence();
  EXPECT_EQ(job->room.openings.size(), 1u);
  EXPECT_EQ(job->roomScans.size(), 1u);
}

TEST_F(SurveyCommand, MakesAJobOfADrawing) {
  std::string dxf =
      "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1015\n9\n$"
      "INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n";
  const int corners[5][2] = {{0, 0}, {6000, 0}, {6000, 4000}, {0, 4000}, {0, 0}};
  for (int i = 0; i < 4; ++i)
    dxf += "0\nLINE\n8\nWALLS\n10\n" + std::to_string(corners[i][0]) + "\n20\n" +
           std::to_string(corners[i][1]) + "\n11\n" + std::to_string(corners[i + 1][0]) + "\n21\n" +
           std::to_string(corners[i + 1][1]) + "\n";
  write("room.dxf", dxf + "0\nENDSEC\n0\nEOF\n");
  const auto ran = run("survey room.dxf --out room.bayjob --json");
  ASSERT_EQ(ran.code, 0) << ran.err;
  EXPECT_TRUE(fitsSchema(ran.out));
  const nlohmann::json json = nlohmann::json::parse(ran.out);
  EXPECT_EQ(json["source"]["kind"], "drawing");
  EXPECT_NEAR(json["floor"]["area_m2"].get<double>(), 24, 1e-6);
  EXPECT_FALSE(json["ceiling"][0]["height"]["known"].get<bool>());
}

}  // namespace
}  // namespace baywright
