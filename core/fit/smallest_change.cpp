// SPDX-License-Identifier: Apache-2.0
#include "fit/smallest_change.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

#include "clearance/assessor.h"
#include "fit/change_family.h"

namespace baywright {
namespace {

std::set<std::string> blockedKeys(const Assessment& assessment) {
  std::set<std::string> keys;
  for (const Finding& finding : assessment.findings) {
    if (finding.verdict == Verdict::Blocked) keys.insert(finding.key);
  }
  return keys;
}

class ChangeSearch {
 public:
  ChangeSearch(const Job& job, Finding finding) : job_(job), finding_(std::move(finding)) {
    blockedBefore_ = blockedKeys(assessor_.assess(job));
  }

  /// The smallest amount that works, as a multiple of the family's grain.
  std::optional<Change> smallest(const ChangeFamily& family, const Progress& progress) {
    double failing = 0;
    for (double amount = family.step; amount <= family.most; amount += family.step) {
      if (progress.stop()) return std::nullopt;
      if (!clears(family, amount)) {
        failing = amount;
        continue;
      }
      if (auto change = refined(family, failing, amount)) return change;
      failing = amount;
    }
    return std::nullopt;
  }

 private:
  bool clears(const ChangeFamily& family, double amount) {
    const Result<Job> changed = family.apply(job_, amount);
    if (!changed) return false;
    for (const Finding& finding : assessor_.check(*changed, finding_.check)) {
      if (finding.key == finding_.key) return finding.verdict == Verdict::Clear;
    }
    return true;
  }

  /// Between an amount that fails and one that works, rounded up to the grain and assessed in full.
  std::optional<Change> refined(const ChangeFamily& family, double failing, double working) {
    while (working - failing > family.grain / 4) {
      const double middle = 0.5 * (failing + working);
      (clears(family, middle) ? working : failing) = middle;
    }
    const double amount = std::ceil(working / family.grain) * family.grain;
    const Result<Job> changed = family.apply(job_, amount);
    if (!changed || !clears(family, amount)) return std::nullopt;
    const std::set<std::string> blocked = blockedKeys(assessor_.assess(*changed));
    if (!std::includes(blockedBefore_.begin(), blockedBefore_.end(), blocked.begin(), blocked.end()))
      return std::nullopt;
    return Change{family.kind, amount, family.sentence(amount), *changed};
  }

  const Job& job_;
  Finding finding_;
  Assessor assessor_;
  std::set<std::string> blockedBefore_;
};

/// A switch or a dial is nearest at hand; moving something costs nothing; turning is harder to mark; a new
/// frame or another club has to be bought or agreed.
int effort(ChangeKind kind) {
  switch (kind) {
    case ChangeKind::AimProjector:
    case ChangeKind::DimLights:
      return 0;
    case ChangeKind::MoveBay:
    case ChangeKind::MoveStrikePoint:
    case ChangeKind::MoveProjector:
    case ChangeKind::MoveMonitor:
    case ChangeKind::MoveBystander:
      return 1;
    case ChangeKind::TurnBay:
      return 2;
    case ChangeKind::LowerFrame:
    case ChangeKind::ShorterClub:
      break;
  }
  return 3;
}

bool isSmaller(const Change& a, const Change& b) {
  return std::pair(effort(a.kind), a.amount) < std::pair(effort(b.kind), b.amount);
}

}  // namespace

Result<std::vector<Change>> smallestChanges(const Job& job, const std::string& findingKey,
                                            const Progress& progress) {
  const Assessment before = Assessor().assess(job);
  const Finding* finding = before.find(findingKey);
  if (!finding) return fail("This job has no finding called " + findingKey + ".");
  if (finding->verdict != Verdict::Blocked && finding->verdict != Verdict::Tight) {
    return fail(finding->subject + " needs no change.", findingKey);
  }
  ChangeSearch search(job, *finding);
  const std::vector<ChangeFamily> families = changeFamilies(job, *finding);
  std::vector<Change> changes;
  for (std::size_t i = 0; i < families.size(); ++i) {
    if (progress.stop()) return std::vector<Change>();
    progress.at(static_cast<double>(i) / static_cast<double>(families.size()));
    auto change = search.smallest(families[i], progress);
    if (!change) continue;
    const auto same =
        std::find_if(changes.begin(), changes.end(), [&](const Change& c) { return c.kind == change->kind; });
    if (same == changes.end()) {
      changes.push_back(std::move(*change));
    } else if (change->amount < same->amount) {
      *same = std::move(*change);
    }
  }
  progress.at(1);
  std::stable_sort(changes.begin(), changes.end(), isSmaller);
  return changes;
}

}  // namespace baywright
