// SPDX-License-Identifier: Apache-2.0
#include <filesystem>
#include <ostream>

#include "clearance/assess.h"
#include "cli/command.h"
#include "drawing/scale.h"
#include "drawing/sheets.h"
#include "jobfile/job_archive.h"
#include "paper/pdf_writer.h"

namespace baywright {
namespace {

Result<SheetRequest> requestOf(const Arguments& arguments, const Job& job) {
  SheetRequest request;
  const bool isMetric = scaleFamilyOf(job.units) == ScaleFamily::Metric;
  request.paper = isMetric ? PaperSize::A3 : PaperSize::AnsiB;
  request.orientation = arguments.has("--portrait") ? Orientation::Portrait : Orientation::Landscape;
  if (const auto text = arguments.value("--paper")) {
    const Result<PaperSize> paper = parsePaper(*text);
    if (!paper) return tl::unexpected(paper.error());
    request.paper = *paper;
  }
  if (const auto text = arguments.value("--scale")) {
    const Result<double> scale = parseScale(*text);
    if (!scale) return tl::unexpected(scale.error());
    request.scale = *scale;
  }
  return request;
}

}  // namespace

int runSheets(const Arguments& arguments, const CommandOutput& output) {
  const Result<Job> job = loadJob(arguments.word(0));
  if (!job) return refuse(output, job.error());
  const Result<SheetRequest> request = requestOf(arguments, *job);
  if (!request) return refuse(output, request.error());

  const std::filesystem::path folder = *arguments.value("--out");
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (error)
    return refuse(output, {"The folder could not be made: " + error.message() + ".", folder.string(), {}});

  const Assessment assessment = assess(*job);
  const std::string stem = std::filesystem::path(arguments.word(0)).stem().string();
  PlanImages images;
  for (const SheetKind& kind : sheetKinds()) {
    const Result<std::vector<SheetPage>> pages = makeSheet(kind.name, *job, assessment, *request);
    if (!pages) return refuse(output, pages.error());
    const std::filesystem::path file = folder / (stem + "-" + std::string(kind.name) + ".pdf");
    const QString title = QString::fromStdString(job->info.title + ": " + std::string(kind.title));
    if (const Result<void> written =
            writePdf(QString::fromStdString(file.string()), *pages, *job, images, title);
        !written) {
      return refuse(output, written.error());
    }
    output.out << file.string() << "\n";
  }
  return kDone;
}

}  // namespace baywright
