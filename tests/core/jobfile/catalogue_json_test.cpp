// SPDX-License-Identifier: Apache-2.0
#include "jobfile/catalogue_json.h"

#include <gtest/gtest.h>

#include "support/temporary_folder.h"

namespace baywright {
namespace {

TEST(LoadCatalogue, ReadsWhatTheProgramBrings) {
  const auto catalogue = loadCatalogue(BAYWRIGHT_RESOURCES "/catalogue");
  ASSERT_TRUE(catalogue) << catalogue.error().sentence();
  EXPECT_GE(catalogue->frames.size(), 5u);
  EXPECT_GE(catalogue->screens.size(), 5u);
  EXPECT_GE(catalogue->mats.size(), 4u);
  EXPECT_GE(catalogue->monitors.size(), 3u);
  EXPECT_GE(catalogue->projectors.size(), 5u);
  EXPECT_GE(catalogue->clubs.size(), 8u);
  EXPECT_GE(catalogue->fixtures.size(), 10u);
  EXPECT_GE(catalogue->openings.size(), 6u);
  for (const Fixture& fixture : catalogue->fixtures) EXPECT_FALSE(fixture.name.empty());
}

// What is invented must say so, in every file.
TEST(LoadCatalogue, FindsEveryFileMarkedAsMadeUp) {
  int files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(BAYWRIGHT_RESOURCES "/catalogue")) {
    ++files;
    EXPECT_NE(testing::contentOf(entry.path()).find("\"made_up\": true"), std::string::npos) << entry.path();
  }
  EXPECT_GT(files, 0);
}

TEST(CatalogueFromJson, RefusesKitThatNoJobWouldTake) {
  const auto zero = catalogueFromJson(R"({"frames": [{"name": "Flat", "width": 0}]})");
  ASSERT_FALSE(zero);
  EXPECT_NE(zero.error().sentence().find("The width is 0.000 m"), std::string::npos);
  EXPECT_FALSE(catalogueFromJson(R"({"clubs": [{"length": 3}]})"));
  EXPECT_FALSE(catalogueFromJson(R"({"fixtures": [{"shape": {"type": "box", "width": -1}}]})"));
  EXPECT_FALSE(catalogueFromJson(R"({"openings": [{"width": {"value": 0}}]})"));
}

TEST(CatalogueFromJson, RefusesListsAndFieldsThatThereAreNot) {
  EXPECT_FALSE(catalogueFromJson(R"({"chairs": []})"));
  EXPECT_FALSE(catalogueFromJson(R"({"frames": [{"breadth": 3}]})"));
  EXPECT_FALSE(catalogueFromJson("[]"));
}

TEST(LoadCatalogue, NamesTheFileThatIsWrong) {
  const testing::TemporaryFolder folder;
  testing::writeContent(folder / "mats.json", "{\"mats\": 3}");
  const auto catalogue = loadCatalogue(folder.path());
  ASSERT_FALSE(catalogue);
  EXPECT_EQ(catalogue.error().where, "mats.json / mats");
  EXPECT_FALSE(loadCatalogue(folder / "none"));
}

}  // namespace
}  // namespace baywright
