// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <iosfwd>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "cli/arguments.h"
#include "job/job.h"

namespace baywright {

/// How a command ended.
enum ExitCode {
  kDone = 0,
  kSomethingBlocked = 1,  ///< only `check`
  kUnusable = 2,          ///< input unreadable, words not understood, output not writable
  kDoneInPart = 3,        ///< only `render`: no OpenGL, the 3D picture is missing
};

struct CommandOutput {
  std::ostream& out;
  std::ostream& err;
};

/// One thing that the program does without a window. To add one: a file with its `run`, a row in command.cpp.
struct Command {
  std::string_view name;
  std::string_view summary;
  std::vector<std::string_view> words;  ///< plain words it takes: "JOB"
  std::vector<OptionSpec> options;
  int (*run)(const Arguments& arguments, const CommandOutput& output);
};

const std::vector<Command>& commands();

/// Does what the words after the program's name ask for. Nothing when they ask for no command but for a
/// window (no words, or files to open).
std::optional<int> runCommand(std::span<const std::string> typed, const CommandOutput& output);

/// Whether runCommand() would answer; asked before there is an application.
bool isCommand(std::span<const std::string> typed);

/// Says the sentence on stderr and answers kUnusable.
int refuse(const CommandOutput& output, const Problem& problem);

int runCheck(const Arguments& arguments, const CommandOutput& output);
int runSheets(const Arguments& arguments, const CommandOutput& output);
int runSurvey(const Arguments& arguments, const CommandOutput& output);
int runRender(const Arguments& arguments, const CommandOutput& output);

}  // namespace baywright
