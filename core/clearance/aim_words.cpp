// SPDX-License-Identifier: Apache-2.0
#include "clearance/aim_words.h"

#include <cmath>

#include "units/angle_text.h"
#include "units/number_text.h"
#include "units/quantity_text.h"

namespace baywright {

std::string aimWords(const ProjectorMount& mount, const UnitSystem& units) {
  const auto share = [&](double value, const char* more, const char* less) {
    return formatQuantity(std::abs(value), QuantityKind::Ratio, units) + (value < 0 ? less : more);
  };
  const auto angle = [&](double value, const char* more, const char* less) {
    return formatAngle(std::abs(value), units) + (value < 0 ? less : more);
  };
  std::string text = "a throw ratio of " + formatNumber(mount.throwRatio, 2, units);
  if (mount.shiftUp != 0 || mount.shiftSide != 0)
    text += ", a lens shift of " + share(mount.shiftUp, " up", " down") + " and " +
            share(mount.shiftSide, " to the right", " to the left");
  if (mount.yaw != 0 || mount.pitch != 0)
    text += ", turned " + angle(mount.pitch, " up", " down") + " and " +
            angle(mount.yaw, " to the right", " to the left");
  return text;
}

}  // namespace baywright
