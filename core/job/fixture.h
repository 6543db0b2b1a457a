// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "base/id.h"
#include "geometry/vec.h"
#include "job/dimension.h"

namespace baywright {

enum class FixtureKind {
  Shelving,
  Beam,
  Duct,
  Light,
  Fan,
  Column,
  Opener,
  Furniture,
  PowerOutlet,
  DataOutlet,
  Other
};

/// Upright box. `width` lies along the heading (radians from world x), `depth` across it; metres, > 0.
struct BoxShape {
  Vec2 centre = Vec2::Zero();
  double heading = 0;
  double width = 1;
  double depth = 0.4;

  bool operator==(const BoxShape&) const = default;
};

/// Upright prism over a simple polygon, counter-clockwise or clockwise, possibly concave.
struct PrismShape {
  std::vector<Vec2> outline;

  bool operator==(const PrismShape&) const = default;
};

/// Upright cylinder.
struct CylinderShape {
  Vec2 centre = Vec2::Zero();
  double radius = 0.1;

  bool operator==(const CylinderShape&) const = default;
};

using FixtureShape = std::variant<BoxShape, PrismShape, CylinderShape>;

/// What stands or hangs in a room. It fills its shape from `bottom` to `top` (heights above the floor).
struct Fixture {
  Id id;
  std::string name;
  FixtureKind kind = FixtureKind::Shelving;
  FixtureShape shape;
  Dimension bottom = taped(0);
  Dimension top = guessed(1);
  Instrument planInstrument = Instrument::Guess;  ///< how position and size on the plan were found
  bool breakable = false;                         ///< a ball must not reach it

  bool operator==(const Fixture&) const = default;
};

}  // namespace baywright
