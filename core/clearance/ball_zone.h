// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <span>
#include <vector>

#include "clearance/check.h"
#include "clearance/obstacle.h"
#include "job/job.h"

namespace baywright {

/// Balls from the strike points of those who swing, right hand first; the right-hander's when nobody does.
/// Keeps what does not depend on the room from one job to the next.
class BallZoneMaker {
 public:
  BallZoneMaker();
  ~BallZoneMaker();
  BallZoneMaker(BallZoneMaker&&) noexcept;
  BallZoneMaker& operator=(BallZoneMaker&&) noexcept;

  std::vector<BallSetting> make(const Job& job, std::span<const RoomObstacle> obstacles);

 private:
  struct Kept;
  std::unique_ptr<Kept> kept_;
};

}  // namespace baywright
