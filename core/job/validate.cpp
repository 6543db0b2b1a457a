// SPDX-License-Identifier: Apache-2.0
#include "job/validate.h"

#include <iterator>

#include "job/detail/validation.h"

namespace baywright {

std::vector<Problem> validate(const Job& job) {
  std::vector<Problem> problems = detail::checkCounts(job);
  if (problems.empty()) problems = detail::checkValues(job);
  if (!problems.empty()) return problems;

  for (const auto check :
       {detail::checkRecord, detail::checkFloor, detail::checkCeiling, detail::checkOpenings,
        detail::checkFixtures, detail::checkPeople, detail::checkOptions, detail::checkScans}) {
    std::vector<Problem> found = check(job);
    std::move(found.begin(), found.end(), std::back_inserter(problems));
  }
  return problems;
}

Result<Job> validated(Job job) {
  const std::vector<Problem> problems = validate(job);
  if (problems.empty()) return job;
  Problem first = problems.front();
  if (problems.size() > 1) {
    if (!first.next.empty()) first.next += " ";
    first.next += "(" + std::to_string(problems.size() - 1) + " more.)";
  }
  return tl::unexpected(std::move(first));
}

}  // namespace baywright
