// SPDX-License-Identifier: Apache-2.0
#include "cli/command.h"

#include <algorithm>
#include <ostream>

namespace baywright {
namespace {

constexpr std::string_view kOut = "--out";

const Command* find(std::string_view name) {
  const auto found =
      std::find_if(commands().begin(), commands().end(), [&](const Command& c) { return c.name == name; });
  return found == commands().end() ? nullptr : &*found;
}

std::string usage(const Command& command) {
  std::string line = "baywright " + std::string(command.name);
  for (const std::string_view word : command.words) line += " " + std::string(word);
  for (const OptionSpec& option : command.options) {
    std::string text =
        std::string(option.name) + (option.value.empty() ? "" : " " + std::string(option.value));
    line += option.required ? " " + text : " [" + text + "]";
  }
  return line;
}

void printCommandHelp(const Command& command, std::ostream& out) {
  out << usage(command) << "\n\n" << command.summary << "\n";
  for (const OptionSpec& option : command.options) {
    std::string left = "  " + std::string(option.name) + " " + std::string(option.value);
    left.resize(std::max<std::size_t>(left.size() + 1, 26), ' ');
    out << left << option.help << "\n";
  }
}

void printHelp(std::ostream& out) {
  out << "Baywright plans indoor golf bays in real rooms.\n\n"
         "baywright [JOB]           open the window\n";
  for (const Command& command : commands()) out << usage(command) << "\n    " << command.summary << "\n";
  out << "baywright help COMMAND    more about one command\n"
         "baywright --version       the program's version\n\n"
         "Exit codes: 0 done; 1 something is blocked (check); 2 input or words not usable, a sentence on "
         "stderr says why;\n"
         "3 done in part, the 3D picture needs OpenGL (render).\n"
         "A verdict `clear` is a planning aid, not a guarantee.\n";
}

int help(std::span<const std::string> typed, const CommandOutput& output) {
  if (typed.empty()) {
    printHelp(output.out);
    return kDone;
  }
  const Command* command = find(typed.front());
  if (!command)
    return refuse(output,
                  {"There is no command '" + typed.front() + "'.", {}, "baywright --help lists them."});
  printCommandHelp(*command, output.out);
  return kDone;
}

}  // namespace

const std::vector<Command>& commands() {
  static const std::vector<Command> table = {
      {"check",
       "Assess a job and print its findings, worst first.",
       {"JOB"},
       {{"--json", "", "print JSON instead of text"},
        {"--changes", "", "add the smallest changes that would clear each finding; takes a while"}},
       runCheck},
      {"sheets",
       "Write the job's sheets as PDF, true to scale.",
       {"JOB"},
       {{kOut, "DIR", "folder to write into; made when missing", true},
        {"--paper", "P", "A4 to A0, ANSI A to E, ARCH A to E; default A3, ANSI B for feet and inches"},
        {"--scale", "S", "1:50, or 1/4\" = 1'; default the largest that fits"},
        {"--portrait", "", "upright pages"}},
       runSheets},
      {"render",
       "Write pictures (PNG) of the plan, the elevations, every wall, the screen's face and the room in 3D.",
       {"JOB"},
       {{kOut, "DIR", "folder to write into; made when missing", true},
        {"--width", "PIXELS", "width of each picture, 200 to 8000; default 1600"}},
       runRender},
      {"survey",
       "Make a job from a measuring list (CSV), a drawing (DXF) or a 3D scan, accept all that is recognised, "
       "and "
       "print it.",
       {"FILE"},
       {{kOut, "JOB", "job file to write", true},
        {"--unit", "U", "unit of figures that state none: m, cm, mm, ft, in; ft-in in lists"},
        {"--up", "AXIS", "axis of a 3D scan that points up: x, y, z, -x, -y, -z"},
        {"--json", "", "print JSON instead of text"}},
       runSurvey},
  };
  return table;
}

bool isCommand(std::span<const std::string> typed) {
  if (typed.empty()) return false;
  const std::string& first = typed.front();
  return first == "help" || first.starts_with("-") || find(first) != nullptr;
}

std::optional<int> runCommand(std::span<const std::string> typed, const CommandOutput& output) {
  if (!isCommand(typed)) return std::nullopt;
  const std::string& first = typed.front();
  const auto rest = typed.subspan(1);
  if (first == "--help" || first == "-h" || first == "help") return help(rest, output);
  if (first == "--version") {
    output.out << "baywright " BAYWRIGHT_VERSION "\n";
    return kDone;
  }
  const Command* command = find(first);
  if (!command)
    return refuse(output,
                  {"There is no option '" + first + "'.", {}, "baywright --help lists what there is."});
  const Result<Arguments> arguments = Arguments::parse(rest, command->options, command->words);
  if (!arguments) {
    Problem problem = arguments.error();
    problem.next += (problem.next.empty() ? "" : " ") + std::string("Usage: ") + usage(*command);
    return refuse(output, problem);
  }
  return command->run(*arguments, output);
}

int refuse(const CommandOutput& output, const Problem& problem) {
  output.err << "baywright: " << problem.sentence() << "\n";
  return kUnusable;
}

}  // namespace baywright
