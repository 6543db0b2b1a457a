// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <string_view>
#include <vector>

#include "clearance/assessment.h"
#include "job/job.h"

namespace baywright {

/// assess() for job after job: keeps the swings of golfers, the obstacles of the room and the trees of scans
/// that did not change. It never gives another answer than assess(), to the last bit. One thread at a time.
class Assessor {
 public:
  Assessor();
  ~Assessor();
  Assessor(Assessor&&) noexcept;
  Assessor& operator=(Assessor&&) noexcept;

  Assessment assess(const Job& job);

  /// The findings of one check alone, as assess() has them but in no order; empty for a name that is no
  /// check. Much faster, for searches that try many jobs.
  std::vector<Finding> check(const Job& job, std::string_view name);

 private:
  struct Kept;
  std::unique_ptr<Kept> kept_;
};

}  // namespace baywright
