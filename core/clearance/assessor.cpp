// SPDX-License-Identifier: Apache-2.0
#include "clearance/assessor.h"

#include <algorithm>

#include "clearance/assess.h"
#include "clearance/checks.h"
#include "clearance/collect.h"
#include "clearance/snapshot.h"

namespace baywright {

struct Assessor::Kept {
  SnapshotMaker maker;
};

Assessor::Assessor() : kept_(std::make_unique<Kept>()) {}
Assessor::~Assessor() = default;
Assessor::Assessor(Assessor&&) noexcept = default;
Assessor& Assessor::operator=(Assessor&&) noexcept = default;

Assessment Assessor::assess(const Job& job) {
  Snapshot snapshot = kept_->maker.make(job, kAllNeeds);
  std::vector<CheckResult> results;
  for (const CheckRow& row : checks()) results.push_back(row.run(inputOf(job, snapshot)));
  return collect(std::move(snapshot), std::move(results));
}

std::vector<Finding> Assessor::check(const Job& job, std::string_view name) {
  const CheckRow* row = findCheck(name);
  if (!row) return {};
  const Snapshot snapshot = kept_->maker.make(job, row->needs);
  return row->run(inputOf(job, snapshot)).findings;
}

Assessment assess(const Job& job) {
  return Assessor().assess(job);
}

}  // namespace baywright
