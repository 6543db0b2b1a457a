// SPDX-License-Identifier: Apache-2.0
#include "clearance/collect.h"

#include <algorithm>
#include <limits>

#include "clearance/quantities.h"
#include "clearance/worst_margin.h"

namespace baywright {
namespace {

int order(Verdict verdict) {
  switch (verdict) {
    case Verdict::Blocked:
      return 0;
    case Verdict::Tight:
      return 1;
    case Verdict::Unknown:
      return 2;
    case Verdict::Clear:
      break;
  }
  return 3;
}

double rankOf(const Finding& finding) {
  return finding.margin ? margins95(*finding.margin) : -std::numeric_limits<double>::infinity();
}

bool concerns(const Finding& finding, Id id) {
  return std::find(finding.subjects.begin(), finding.subjects.end(), id) != finding.subjects.end();
}

/// `findings` are sorted worst first, so the first that concerns a swing is its worst.
void judge(SwingZone& zone, const std::vector<Finding>& findings) {
  for (const Finding& finding : findings) {
    if (!finding.check.starts_with("swing_") || !concerns(finding, zone.golfer) ||
        !concerns(finding, zone.club))
      continue;
    zone.verdict = finding.verdict;
    zone.worstMoment = finding.moment.value_or(0);
    return;
  }
}

Verdict verdictUnder(const std::vector<Finding>& findings, const std::string& key) {
  for (const Finding& finding : findings) {
    if (finding.key == key) return finding.verdict;
  }
  return Verdict::Clear;
}

}  // namespace

bool isShownBefore(const Finding& a, const Finding& b) {
  if (order(a.verdict) != order(b.verdict)) return order(a.verdict) < order(b.verdict);
  if (rankOf(a) != rankOf(b)) return rankOf(a) < rankOf(b);
  return a.key < b.key;
}

Assessment collect(Snapshot snapshot, std::vector<CheckResult> results) {
  Assessment assessment;
  for (CheckResult& result : results) {
    std::move(result.findings.begin(), result.findings.end(), std::back_inserter(assessment.findings));
    std::move(result.figures.begin(), result.figures.end(), std::back_inserter(assessment.quantities));
  }
  std::sort(assessment.findings.begin(), assessment.findings.end(), isShownBefore);
  std::sort(assessment.quantities.begin(), assessment.quantities.end(),
            [](const Quantity& a, const Quantity& b) { return a.name < b.name; });
  for (SwingSetting& setting : snapshot.swings) {
    judge(setting.zone, assessment.findings);
    assessment.swings.push_back(std::move(setting.zone));
  }
  for (BallSetting& ball : snapshot.balls) assessment.balls.push_back(std::move(ball.zone));
  assessment.picture = std::move(snapshot.picture.zone);
  const auto key = [](Id opening, const char* aspect) {
    return "doors_and_exits/" + idText(opening) + "/" + aspect;
  };
  for (DoorSweep& door : snapshot.doors)
    door.verdict = verdictUnder(assessment.findings, key(door.opening, "opens"));
  for (Way& way : snapshot.ways) way.verdict = verdictUnder(assessment.findings, key(way.exit, "way"));
  assessment.doors = std::move(snapshot.doors);
  assessment.ways = std::move(snapshot.ways);
  assessment.obstacles = std::move(snapshot.obstacles);
  return assessment;
}

int Assessment::count(Verdict verdict) const {
  return static_cast<int>(std::count_if(findings.begin(), findings.end(),
                                        [&](const Finding& finding) { return finding.verdict == verdict; }));
}

const Finding* Assessment::find(std::string_view key) const {
  const auto found = std::find_if(findings.begin(), findings.end(),
                                  [&](const Finding& finding) { return finding.key == key; });
  return found == findings.end() ? nullptr : &*found;
}

Vec3 worldFromSwing(const SwingZone& zone, const Vec3& p) {
  return worldFromBay(zone.bay, zone.strikePointInBay + p);
}

}  // namespace baywright
