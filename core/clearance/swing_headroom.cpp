// SPDX-License-Identifier: Apache-2.0
#include "clearance/checks.h"
#include "clearance/swing_findings.h"

namespace baywright {
namespace {

bool isOverhead(const RoomObstacle& obstacle) {
  switch (obstacle.kind) {
    case ObstacleKind::Ceiling:
    case ObstacleKind::SectionalDoor:
    case ObstacleKind::DoorTrack:
      return true;
    case ObstacleKind::Fixture:
      return obstacle.overhead;
    default:
      return false;
  }
}

}  // namespace

CheckResult checkSwingHeadroom(const CheckInput& input) {
  return swingFindings(input, {"swing_headroom", isOverhead});
}

}  // namespace baywright
