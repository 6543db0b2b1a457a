// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "clearance/door_geometry.h"
#include "drawing/marks.h"
#include "drawing/plan_parts.h"
#include "drawing/silhouette.h"
#include "job/find.h"
#include "job/room_geometry.h"

namespace baywright::detail {
namespace {

// An opening on the plan: its jambs on the inner face, and the wall it goes through.
struct Place {
  const Opening& opening;
  OpeningPlace at;
  double thickness;

  Vec2 outer(const Vec2& inner) const { return inner - thickness * at.inward; }
  // A point `inward` metres into the room from the inner face, `along` metres from the start.
  Vec2 point(double along, double inward) const { return at.start + along * at.along + inward * at.inward; }
  double width() const { return (at.end - at.start).norm(); }
};

void drawHingedDoor(Board& board, const Place& place) {
  const Opening& door = place.opening;
  const bool atStart = door.hinge == HingeSide::Start;
  const bool inward = door.swing == LeafSwing::IntoRoom;
  // The leaf turns about the jamb on the face that it opens to.
  const Vec2 jamb = atStart ? place.at.start : place.at.end;
  const Vec2 pivot = inward ? jamb : place.outer(jamb);
  const Vec2 closed = atStart ? place.at.along : Vec2(-place.at.along);
  const double sense = atStart == inward ? 1 : -1;
  const double closedAngle = std::atan2(closed.y(), closed.x());
  const double openAngle = closedAngle + sense * door.openAngle;
  const Vec2 leaf = place.width() * Vec2(std::cos(openAngle), std::sin(openAngle));
  const Vec2 across = -sense * door.leafThickness * leftOf(leaf.normalized());
  board.add(polygon(Layer::Openings, {pivot, pivot + leaf, pivot + leaf + across, pivot + across}, door.id));
  board.add(polyline(Layer::Openings, arc(pivot, place.width(), closedAngle, openAngle), door.id));
}

void drawWindow(Board& board, const Place& place) {
  const Vec2 a = place.at.start;
  const Vec2 b = place.at.end;
  const Vec2 middle = -place.thickness / 2 * place.at.inward;
  board.add(strokes(Layer::Openings, {{a, b}, {a + middle, b + middle}, {place.outer(a), place.outer(b)}},
                    place.opening.id));
}

// The panel closed in its opening, and overhead its tracks, with the panel between them where it may stay
// open.
void drawSectionalDoor(Board& board, const Place& place, const Room& room) {
  const Opening& door = place.opening;
  const double panel = std::min(door.panelThickness, place.thickness);
  board.add(polygon(
      Layer::Openings,
      {place.at.start, place.at.end, place.point(place.width(), -panel), place.point(0, -panel)}, door.id));
  const auto bodies = sectionalDoor(room, door);
  if (!bodies) return;
  for (const ConvexPolyhedron& track : bodies->tracks) {
    board.add(polygon(Layer::Overhead, silhouetteOf(track, flat), door.id));
  }
  if (door.staysOpen && bodies->open)
    board.add(polygon(Layer::Overhead, silhouetteOf(*bodies->open, flat), door.id));
}

// Whatever is over the way through is dashed.
void drawPassage(Board& board, const Place& place) {
  board.add(
      strokes(Layer::Overhead,
              {{place.at.start, place.at.end}, {place.outer(place.at.start), place.outer(place.at.end)}},
              place.opening.id));
}

}  // namespace

void drawOpenings(Board& board, const ViewInput& input) {
  const Room& room = input.job.room;
  for (const Opening& opening : room.openings) {
    const auto at = openingPlace(room, opening.id);
    const Wall* wall = findById(room.walls, opening.wall);
    if (!at || !wall) continue;
    const Place place{opening, *at, wall->thickness};
    switch (opening.kind) {
      case OpeningKind::HingedDoor:
        drawHingedDoor(board, place);
        break;
      case OpeningKind::SectionalDoor:
        drawSectionalDoor(board, place, room);
        break;
      case OpeningKind::Window:
        drawWindow(board, place);
        break;
      case OpeningKind::Passage:
        drawPassage(board, place);
        break;
    }
  }
}

}  // namespace baywright::detail
