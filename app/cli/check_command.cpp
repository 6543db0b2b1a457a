// SPDX-License-Identifier: Apache-2.0
#include <ostream>

#include "clearance/assess.h"
#include "cli/command.h"
#include "cli/findings_json.h"
#include "jobfile/job_archive.h"

namespace baywright {
namespace {

void printText(const Job& job, const Assessment& assessment, Changes changes, std::ostream& out) {
  out << (job.info.title.empty() ? "Untitled job" : job.info.title) << ", " << job.option().name << ": "
      << assessment.count(Verdict::Blocked) << " blocked, " << assessment.count(Verdict::Tight) << " tight, "
      << assessment.count(Verdict::Unknown) << " not known, " << assessment.count(Verdict::Clear)
      << " clear\n\n";
  for (const Finding& finding : assessment.findings) {
    std::string verdict(verdictName(finding.verdict));
    verdict.resize(8, ' ');
    out << verdict << "  " << finding.sentence << "\n";
    if (changes == Changes::None) continue;
    for (const std::string& change : changeSentences(job, finding)) out << "            " << change << "\n";
  }
  out << "\nA verdict `clear` is a planning aid, not a guarantee. Local codes and makers' instructions "
         "decide.\n";
}

}  // namespace

int runCheck(const Arguments& arguments, const CommandOutput& output) {
  const Result<Job> job = loadJob(arguments.word(0));
  if (!job) return refuse(output, job.error());
  const Assessment assessment = assess(*job);
  const Changes changes = arguments.has("--changes") ? Changes::Smallest : Changes::None;
  if (arguments.has("--json")) {
    output.out << findingsJson(*job, assessment, changes);
  } else {
    printText(*job, assessment, changes, output.out);
  }
  return assessment.count(Verdict::Blocked) > 0 ? kSomethingBlocked : kDone;
}

}  // namespace baywright
