// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "base/problem.h"
#include "clearance/finding.h"
#include "fit/change.h"

namespace baywright {

/// All changes of one kind in one direction, from nothing to `most`.
struct ChangeFamily {
  ChangeKind kind = ChangeKind::MoveBay;
  double most = 0;   ///< metres, radians or lux: Change::amount
  double step = 0;   ///< between tries on the way there; what works over less than a step may be missed
  double grain = 0;  ///< amounts offered are multiples of this
  std::function<Result<Job>(const Job&, double amount)> apply;
  std::function<std::string(double amount)> sentence;
};

/// The changes that may help with a finding, in a fixed order. The directions are those along and across the
/// bay and, where the finding has two points, the way from the second to the first on the plan: what frees it
/// soonest.
std::vector<ChangeFamily> changeFamilies(const Job& job, const Finding& finding);

}  // namespace baywright
