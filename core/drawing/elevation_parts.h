// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "drawing/board.h"
#include "drawing/room_section.h"
#include "drawing/view_input.h"

namespace baywright::detail {

/// How an elevation looks at the bay.
struct Sight {
  ViewKind view;
  BayPose bay;
  SectionLine cut;  ///< x of the cut is x of the view
  Vec2 away{1, 0};  ///< the direction of sight on the plan, unit
  std::vector<RoomStretch> section;

  /// World to the view.
  Vec2 operator()(const Vec3& p) const { return {cut.xOf(flat(p)), p.z()}; }
  /// Bay frame (d, r, u) to the view.
  Vec2 fromBay(const Vec3& p) const { return {view == ViewKind::Side ? p.x() : p.y(), p.z()}; }
  /// Metres beyond the cut; negative on the viewer's side.
  double depthOf(const Vec2& p) const { return (p - cut.through).dot(away); }
};
Sight sightOf(const ViewInput& input, ViewKind view);

// The parts of an elevation, each in a file of its own; elevation.cpp puts them together. Internal to
// `drawing`.

// elevation_room.cpp
void drawSection(Board& board, const Sight& sight);
void drawOpeningsBeyond(Board& board, const ViewInput& input, const Sight& sight);
void drawFixtures(Board& board, const ViewInput& input, const Sight& sight);
/// Where there is room near the middle of what is drawn of it.
void drawFixtureName(Board& board, const Fixture& fixture, const Vec2& middle);

// elevation_bay.cpp
void drawBay(Board& board, const ViewInput& input, const Sight& sight);
void drawBeam(Board& board, const ViewInput& input, const Sight& sight);
void drawBall(Board& board, const ViewInput& input, const Sight& sight);
/// What the marks of the ball are.
void drawBallNames(Board& board, const ViewInput& input, const Sight& sight);
void drawPeople(Board& board, const ViewInput& input, const Sight& sight);

// elevation_dimensions.cpp
void drawDimensions(Board& board, const ViewInput& input, const Sight& sight);

}  // namespace baywright::detail
