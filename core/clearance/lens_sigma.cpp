// SPDX-License-Identifier: Apache-2.0
#include "clearance/lens_sigma.h"

#include <cmath>
#include <optional>

namespace baywright {

double sigmaFromLens(const Option& option, const std::function<double(const Picture&)>& figure) {
  const double sigma = option.placement.sigma;
  const auto at = [&](const Vec3& shift) -> std::optional<double> {
    ProjectorMount mount = option.placement.projector;
    mount.lens += shift;
    const auto picture = pictureOf(option.kit.screen, option.kit.projector, mount);
    return picture ? std::optional(figure(*picture)) : std::nullopt;
  };
  double variance = 0;
  for (int axis = 0; axis < 3; ++axis) {
    const Vec3 step = sigma * Vec3::Unit(axis);
    const auto more = at(step);
    const auto less = at(-step);
    if (!more || !less) continue;
    const double change = 0.5 * (*more - *less);
    variance += change * change;
  }
  return std::sqrt(variance);
}

}  // namespace baywright
