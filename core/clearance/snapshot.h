// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <vector>

#include "clearance/check.h"
#include "clearance/obstacles.h"
#include "job/job.h"

namespace baywright {

/// What the checks look at, worked out of a job.
struct Snapshot {
  std::shared_ptr<const Obstacles> obstacles;
  std::shared_ptr<const std::vector<ScanObstacle>> scans;
  std::vector<SwingSetting> swings;  ///< point into the job they were made from
  std::vector<BallSetting> balls;
  PictureSetting picture;
  std::vector<DoorSweep> doors;
  std::vector<Way> ways;
};

/// The job must be the one that the snapshot was made from; it must live as long as the answer.
CheckInput inputOf(const Job& job, const Snapshot& snapshot);

/// Makes snapshots of job after job and keeps the parts whose inputs are equal to those of the job before.
/// Equal inputs give equal parts, so what is kept is what would be made again.
class SnapshotMaker {
 public:
  SnapshotMaker();
  ~SnapshotMaker();

  /// Parts that are not needed stay empty.
  Snapshot make(const Job& job, const CheckNeeds& needs);

 private:
  struct Kept;
  std::unique_ptr<Kept> kept_;
};

}  // namespace baywright
