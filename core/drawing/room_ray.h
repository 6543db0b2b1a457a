// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "job/room.h"

namespace baywright::detail {

/// How far it is from a point on the plan to the first wall face in a direction (unit vector), metres;
/// openings count as wall. Nullopt where the way meets none. Internal to `drawing`.
std::optional<double> distanceToWall(const Room& room, const Vec2& from, const Vec2& direction);

}  // namespace baywright::detail
