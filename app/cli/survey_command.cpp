// SPDX-License-Identifier: Apache-2.0
#include <filesystem>
#include <ostream>

#include "cli/command.h"
#include "cli/survey_file.h"
#include "cli/survey_json.h"
#include "job/room_geometry.h"
#include "jobfile/job_archive.h"
#include "survey/survey_check.h"
#include "survey/take_room.h"
#include "units/length_text.h"
#include "units/number_text.h"

namespace baywright {
namespace {

Result<Job> jobOf(const SurveyRead& read, const std::string& title) {
  Job job = starterJob();
  job.units = read.units;
  job.info.title = title;
  return takeRoom(std::move(job), read.recognised);
}

std::string counted(std::size_t count, const std::string& thing) {
  return std::to_string(count) + " " + thing + (count == 1 ? "" : "s");
}

void printList(std::ostream& out, const std::string& heading, const std::vector<std::string>& sentences) {
  if (sentences.empty()) return;
  out << "\n" << heading << "\n";
  for (const std::string& sentence : sentences) out << "  " << sentence << "\n";
}

void printText(const SurveyRead& read, const Job& job, std::ostream& out) {
  const Room& room = job.room;
  out << "From a " << read.kind << ": " << counted(room.walls.size(), "wall") << ", "
      << formatNumber(floorArea(room), 2, job.units) << " m², "
      << counted(room.ceiling.size(), "ceiling plane") << ", " << counted(room.openings.size(), "opening")
      << ", " << counted(room.fixtures.size(), "fixture") << "\n\n";
  for (const WallLine& line : wallLines(room))
    out << "wall " << line.name << "  " << formatLength(line.length, job.units) << "\n";
  for (const CeilingPart& part : room.ceiling)
    out << part.name << "  "
        << (part.height.known ? formatLength(part.height.value, job.units) : "not measured") << "\n";
  const auto size = [&](const Dimension& dimension) {
    return dimension.known ? formatLength(dimension.value, job.units) : std::string("not measured");
  };
  for (const Opening& opening : room.openings)
    out << opening.name << "  " << size(opening.width) << " wide, " << size(opening.height) << " high, sill "
        << size(opening.sill) << "\n";
  printList(out, "Readings that do not fit:", read.recognised.suspicious);
  printList(out, "Left out:", read.recognised.skipped);
  printList(out, "Notes:", read.recognised.notes);
  std::vector<std::string> remarks;
  for (const SurveyRemark& remark : checkSurvey(job)) remarks.push_back(remark.sentence);
  printList(out, "To look at:", remarks);
}

}  // namespace

int runSurvey(const Arguments& arguments, const CommandOutput& output) {
  const std::filesystem::path path = arguments.word(0);
  auto read =
      readSurveyFile({path, arguments.value("--unit").value_or(""), arguments.value("--up").value_or("")});
  if (!read) return refuse(output, read.error());
  if (arguments.has("--up") && read->kind != "scan")
    read->recognised.notes.push_back("--up says nothing about a " + std::string(read->kind) +
                                     " and was passed over.");
  const Result<Job> job = jobOf(*read, path.stem().string());
  if (!job) return refuse(output, job.error());
  const std::filesystem::path out = *arguments.value("--out");
  if (const Result<void> saved = saveJob(*job, out); !saved) return refuse(output, saved.error());
  if (arguments.has("--json")) {
    output.out << surveyJson(path.filename().string(), *read, *job);
  } else {
    printText(*read, *job, output.out);
  }
  return kDone;
}

}  // namespace baywright
