// SPDX-License-Identifier: Apache-2.0
#include "cli/arguments.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

const std::vector<OptionSpec> kOptions = {{"--out", "DIR", "", true}, {"--json", "", ""}};
const std::vector<std::string_view> kWords = {"JOB"};

Result<Arguments> parse(std::vector<std::string> typed) {
  return Arguments::parse(typed, kOptions, kWords);
}

TEST(Arguments, TakesWordsAndOptionsInAnyOrder) {
  const auto arguments = parse({"--json", "a b.bayjob", "--out", "here"});
  ASSERT_TRUE(arguments.has_value());
  EXPECT_EQ(arguments->word(0), "a b.bayjob");
  EXPECT_EQ(arguments->value("--out"), "here");
  EXPECT_TRUE(arguments->has("--json"));
}

TEST(Arguments, TakesAValueAfterAnEqualsSign) {
  EXPECT_EQ(parse({"j", "--out=x=y"})->value("--out"), "x=y");
}

TEST(Arguments, RefusesWhatItDoesNotKnow) {
  for (const std::vector<std::string>& typed :
       std::vector<std::vector<std::string>>{{"j", "--out", "d", "--huge"},
                                             {"j", "--out"},
                                             {"j"},
                                             {"--out", "d"},
                                             {"j", "k", "--out", "d"},
                                             {"j", "--out", "d", "--out", "e"},
                                             {"j", "--out", "d", "--json=1"}}) {
    const auto arguments = parse(typed);
    ASSERT_FALSE(arguments.has_value()) << typed.size();
    EXPECT_TRUE(arguments.error().what.ends_with(".")) << arguments.error().what;
  }
}

TEST(Arguments, NamesTheOptionsThatThereAre) {
  const auto arguments = parse({"j", "--out", "d", "--jason"});
  EXPECT_EQ(arguments.error().sentence(), "There is no option --jason. It takes --out, --json.");
}

}  // namespace
}  // namespace baywright
