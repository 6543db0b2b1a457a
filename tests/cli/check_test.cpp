// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <nlohmann/json.hpp>

#include "clearance/assess.h"
#include "clearance/standing_area.h"
#include "program.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;
using testing::textOf;

class CheckCommand : public testing::ProgramTest {
 protected:
  /// A garage so low that the driver meets its ceiling.
  Job lowGarage() {
    return garage(7.0, 6.0)
        .withCeiling(2.2)
        .withGolfer(1.90, Hand::Right, "Robin")
        .withClub()
        .bayAt(6.4, 3.0, 0)
        .job();
  }
};

TEST_F(CheckCommand, ExitsWithOneWhenSomethingIsBlocked) {
  save(lowGarage(), "low.bayjob");
  const auto ran = run("check low.bayjob");
  EXPECT_EQ(ran.code, 1) << ran.err;
  EXPECT_EQ(ran.err, "");
  EXPECT_NE(ran.out.find("blocked "), std::string::npos);
  EXPECT_NE(ran.out.find("Robin"), std::string::npos);
  EXPECT_NE(ran.out.find("planning aid, not a guarantee"), std::string::npos);
}

TEST_F(CheckCommand, PrintsTheFindingsOfTheAssessment) {
  const Job job = lowGarage();
  save(job, "low.bayjob");
  const auto ran = run("check low.bayjob --json");
  const nlohmann::json json = nlohmann::json::parse(ran.out);
  const Assessment expected = assess(job);
  ASSERT_EQ(json["findings"].size(), expected.findings.size());
  for (std::size_t i = 0; i < expected.findings.size(); ++i) {
    EXPECT_EQ(json["findings"][i]["sentence"], expected.findings[i].sentence);
    EXPECT_EQ(json["findings"][i]["key"], expected.findings[i].key);
  }
  EXPECT_EQ(json["counts"]["blocked"], expected.count(Verdict::Blocked));
  EXPECT_EQ(json["quantities"].size(), expected.quantities.size() + standingAreas(job).size());
  EXPECT_TRUE(
      std::any_of(json["quantities"].begin(), json["quantities"].end(), [](const nlohmann::json& figure) {
        return figure["name"].get<std::string>().ends_with(".standing_area") && figure["unit"] == "m2";
      }));
  EXPECT_GT(json["quantities"].size(), 20U);
}

TEST_F(CheckCommand, WritesWhatItsSchemaSays) {
  save(lowGarage(), "low.bayjob");
  const auto ran = run("check low.bayjob --json");
  std::ofstream(folder / "findings.json") << ran.out;
  const std::string command =
      "/usr/bin/python3 -c \"import json, jsonschema, sys; "
      "jsonschema.validate(json.load(open(sys.argv[1])), json.load(open(sys.argv[2])))\" '" +
      (folder / "findings.json").string() + "' '" BAYWRIGHT_RESOURCES "/schema/findings-1.schema.json'";
  EXPECT_EQ(std::system(command.c_str()), 0);
}

TEST_F(CheckCommand, AddsTheSmallestChangesWhenAsked) {
  Job job = garage(12, 9)
                .withCeiling(4.5)
                .withGolfer(1.88, Hand::Right, "Robin")
                .withClub()
                .bayAt(10, 8.1, 0)
                .job();
  save(job, "near.bayjob");
  const auto text = run("check near.bayjob --changes");
  EXPECT_NE(text.out.find("\n            Move the bay "), std::string::npos) << text.out;
  const nlohmann::json json = nlohmann::json::parse(run("check near.bayjob --json --changes").out);
  for (const nlohmann::json& finding : json["findings"]) {
    ASSERT_TRUE(finding.contains("changes"));
    if (finding["key"].get<std::string>().ends_with("/wall")) {
      ASSERT_FALSE(finding["changes"].empty());
      EXPECT_EQ(finding["changes"][0].get<std::string>().rfind("Move the bay ", 0), 0U);
    }
    if (finding["verdict"] == "clear") {
      EXPECT_TRUE(finding["changes"].empty());
    }
  }
}

TEST_F(CheckCommand, SaysTheSameTwice) {
  save(lowGarage(), "low.bayjob");
  EXPECT_EQ(run("check low.bayjob --json").out, run("check low.bayjob --json").out);
}

TEST_F(CheckCommand, RefusesWhatIsNoJob) {
  std::ofstream(folder / "notes.bayjob") << "milk, bread";
  const auto broken = run("check notes.bayjob");
  EXPECT_EQ(broken.code, 2);
  EXPECT_EQ(broken.out, "");
  EXPECT_TRUE(broken.err.starts_with("baywright: ")) << broken.err;
  const auto missing = run("check nowhere.bayjob");
  EXPECT_EQ(missing.code, 2);
  EXPECT_NE(missing.err.find("nowhere.bayjob"), std::string::npos);
}

TEST_F(CheckCommand, RefusesWordsThatItDoesNotTake) {
  EXPECT_EQ(run("check").code, 2);
  EXPECT_EQ(run("check a b").code, 2);
  EXPECT_EQ(run("check a --yaml").code, 2);
}

}  // namespace
}  // namespace baywright
