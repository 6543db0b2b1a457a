// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "geometry/polygon.h"

namespace baywright {

/// Where people may walk: a floor with things standing on it, seen from above. World plan, metres.
struct WalkInput {
  Ring floor;
  std::vector<Ring> obstacles;  ///< closed outlines, in any winding; they may touch, overlap and stick through walls
  Vec2 from = Vec2::Zero();
  std::vector<Segment2> exits;  ///< each a gap in the floor's outline
};

/// The widest way to one exit: of all ways, the one whose narrowest place is widest.
struct WidestWay {
  double clearWidth = 0;  ///< diameter of the largest disc that gets through, metres; 0: there is no way
  std::vector<Vec2> path;  ///< from the start to the exit's middle; empty when there is no way
  Vec2 narrowA = Vec2::Zero();  ///< the two points it squeezes between; both at the start when nothing is narrow
  Vec2 narrowB = Vec2::Zero();
};

/// One answer an exit. Outlines are replaced by points on them, never more than kWalkSpacing apart; a way has to pass
/// between pairs of points that are neighbours in their Delaunay triangulation, and of all ways the one with the
/// widest narrowest pair is taken, which is exact for points. Between outlines the pair's true gap is then measured
/// along the two edges that its points came from. A gap that faces an edge's inside is found by points up to half a
/// spacing off, which makes it look wider by less than kWalkSpacing^2 / (8 gap), 0.4 mm at 0.8 m; ways that differ by
/// less may be taken for each other. Nothing narrower than kWalkSpacing counts as a way.
std::vector<WidestWay> widestWays(const WalkInput& input);
inline constexpr double kWalkSpacing = 0.05;

}  // namespace baywright
