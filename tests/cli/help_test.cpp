// SPDX-License-Identifier: Apache-2.0
#include "cli/command.h"
#include "program.h"

namespace baywright {
namespace {

using Help = testing::ProgramTest;

TEST_F(Help, ListsEveryCommand) {
  const auto ran = run("--help");
  EXPECT_EQ(ran.code, 0);
  EXPECT_EQ(ran.err, "");
  for (const Command& command : commands())
    EXPECT_NE(ran.out.find("baywright " + std::string(command.name)), std::string::npos);
}

TEST_F(Help, TellsEveryOptionOfACommand) {
  for (const Command& command : commands()) {
    const auto ran = run("help " + std::string(command.name));
    EXPECT_EQ(ran.code, 0);
    for (const OptionSpec& option : command.options) {
      EXPECT_NE(ran.out.find(std::string(option.name)), std::string::npos) << command.name;
    }
  }
}

TEST_F(Help, SaysTheVersion) {
  const auto ran = run("--version");
  EXPECT_EQ(ran.code, 0);
  EXPECT_TRUE(ran.out.starts_with("baywright "));
  EXPECT_EQ(std::count(ran.out.begin(), ran.out.end(), '\n'), 1);
}

TEST_F(Help, RefusesUnknownWordsWithASentence) {
  const auto ran = run("--frobnicate");
  EXPECT_EQ(ran.code, 2);
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(ran.err, "baywright: There is no option '--frobnicate'. baywright --help lists what there is.\n");
  EXPECT_EQ(run("help nothing").code, 2);
}

}  // namespace
}  // namespace baywright
