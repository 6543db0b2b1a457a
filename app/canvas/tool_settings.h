// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "job/fixture.h"
#include "job/opening.h"

namespace baywright {

/// What the tools that place things place. Ids are zero; positions are the tools' to give.
struct ToolSettings {
  Fixture fixture{{},       "Shelving",  FixtureKind::Shelving, BoxShape{Vec2::Zero(), 0, 1.0, 0.4},
                  taped(0), guessed(1.8)};
  Opening opening;
};

}  // namespace baywright
