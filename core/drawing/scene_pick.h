// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "drawing/solids.h"

namespace baywright {

struct ScenePick {
  Id id;
  Vec3 point = Vec3::Zero();
  double distance = 0;
};

/// The nearest opaque solid that the ray meets from its front; see-through zones let the ray pass. `along`
/// has unit length. Back faces are not met, as the renderer does not show them.
std::optional<ScenePick> pickSolid(const std::vector<SceneSolid>& solids, const Vec3& from,
                                   const Vec3& along);

/// Box around all opaque solids; empty when there is none.
Eigen::AlignedBox3d sceneBounds(const std::vector<SceneSolid>& solids);

}  // namespace baywright
