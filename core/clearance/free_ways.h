// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "geometry/polygon.h"

namespace baywright {

/// A gap in the floor's outline that leads out.
struct WayOut {
  Segment2 sill;                ///< from jamb to jamb on the floor's outline
  Vec2 inward = Vec2::UnitX();  ///< unit normal into the room
};

/// Where people may walk: a floor with things standing on it, seen from above. World plan, metres.
struct WalkInput {
  Ring floor;
  std::vector<Ring>
      obstacles;  ///< closed outlines in any winding; they may touch, overlap and stick through walls
  std::vector<Vec2> from;  ///< where people set out
  std::vector<WayOut> exits;
};

/// The widest way out through one exit: of all ways, the one whose narrowest place is widest; of equally wide
/// ones the shortest along the middle lines. Of several places to set out from, the one whose way is
/// narrowest. A way begins in any free disc over the place, so what is narrow beside it counts only when the
/// way leads on through it.
struct WidestWay {
  /// Diameter of the largest disc that gets out, as far as the exit's own jambs leave it alone; 0: there is
  /// no way. What stands in or before the exit counts.
  double clearWidth = 0;
  std::vector<Vec2> path;  ///< from the start to the sill's middle; empty when there is no way
  /// The ends of a diameter of that disc: on what stands there where it is squeezed right between two things,
  /// else across the way.
  Vec2 narrowA = Vec2::Zero();
  Vec2 narrowB = Vec2::Zero();
};

/// One answer an exit. Method: outlines are replaced by points no more than kWalkSpacing apart; among points
/// the widest way follows their Voronoi diagram, and its width is that of the smallest free disc with its
/// middle on it, exactly. Where that disc lies right between two points it is measured again from point to
/// outline (gapAt). The width is that of the outlines to within kWalkSpacing^2 / (8 width), 0.4 mm at 0.8 m;
/// so is the choice between ways. Coordinates are rounded to 0.01 mm. What is narrower than kWalkSpacing does
/// not count as a way.
std::vector<WidestWay> widestWays(const WalkInput& input);
inline constexpr double kWalkSpacing = 0.05;

}  // namespace baywright
