// SPDX-License-Identifier: Apache-2.0
#include "clearance/checks.h"
#include "clearance/swing_findings.h"

namespace baywright {

CheckResult checkSwingEquipment(const CheckInput& input) {
  const auto isKit = [](const RoomObstacle& obstacle) { return obstacle.inBay; };
  return swingFindings(input, {"swing_equipment", isKit});
}

}  // namespace baywright
