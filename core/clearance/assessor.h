// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>

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

 private:
  struct Kept;
  std::unique_ptr<Kept> kept_;
};

}  // namespace baywright
