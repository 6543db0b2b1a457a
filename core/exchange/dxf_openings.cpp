// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_openings.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "exchange/dxf_names.h"
#include "job/limits.h"
#include "job/room_geometry.h"
#include "units/number_text.h"

namespace baywright::detail {

namespace {

// Leaves of hinged doors (common practice, no source), and how far a door turns on a plan.
constexpr Range kLeaf{0.5, 1.4};
constexpr Range kTurn{0.70, 2.27};
// How exactly arcs, leaves and jambs meet on a drawing: the leaf is thick and often set back in its frame.
constexpr double kMeets = 0.10;
constexpr double kOnLine = 0.02;           // a gap's ends lie on the wall that it is a gap of
constexpr double kNarrowestOpening = 0.4;  // metres: nobody passes or looks out
constexpr std::size_t kMostSwings = 1000;  // each is compared with every line

struct Line {
  Segment2 segment;
  std::size_t curve = 0;
};

// Straight pieces as long as a leaf.
std::vector<Line> leafLines(const DxfDrawing& drawing, double scale) {
  std::vector<Line> lines;
  for (std::size_t c = 0; c < drawing.curves.size(); ++c) {
    const DxfCurve& curve = drawing.curves[c];
    if (curve.hidden) continue;
    const std::size_t count = curve.closed ? curve.points.size() : curve.points.size() - 1;
    for (std::size_t i = 0; i < count; ++i) {
      const Segment2 line{scale * curve.points[i], scale * curve.points[(i + 1) % curve.points.size()]};
      const double length = (line.b - line.a).norm();
      if (length > kLeaf.low - 2 * kMeets && length < kLeaf.high + 2 * kMeets) lines.push_back({line, c});
    }
  }
  return lines;
}

bool runsBetween(const Segment2& line, const Vec2& a, const Vec2& b) {
  return ((line.a - a).norm() <= kMeets && (line.b - b).norm() <= kMeets) ||
         ((line.a - b).norm() <= kMeets && (line.b - a).norm() <= kMeets);
}

std::string metresText(double metres) {
  return formatNumber(metres, 2, UnitSystem{}) + " m";
}

/// An opening on its wall: offset and width along the inner face.
struct PlaceOnWall {
  WallLine wall;
  double offset = 0;
  double width = 0;
};

// The wall that runs along a piece of the outline, within `aside` of both ends.
std::optional<PlaceOnWall> placeOnWall(const Room& room, const Vec2& a, const Vec2& b, double aside) {
  std::optional<PlaceOnWall> best;
  double bestAside = aside;
  for (const WallLine& wall : wallLines(room)) {
    const double apart =
        std::max(std::abs(wall.inward.dot(a - wall.start)), std::abs(wall.inward.dot(b - wall.start)));
    const double from = std::min(wall.along.dot(a - wall.start), wall.along.dot(b - wall.start));
    const double to = std::max(wall.along.dot(a - wall.start), wall.along.dot(b - wall.start));
    if (apart > bestAside || from < -kMeets || to > wall.length + kMeets) continue;
    bestAside = apart;
    const double start = std::max(0.0, from);
    best = PlaceOnWall{wall, start, std::min(wall.length, to) - start};
  }
  return best;
}

Opening openingAt(const PlaceOnWall& place, OpeningKind kind) {
  Opening opening;
  opening.wall = place.wall.wall;
  opening.kind = kind;
  opening.offset = {place.offset, Instrument::Drawing, true};
  opening.width = {place.width, Instrument::Drawing, true};
  opening.sill = kind == OpeningKind::Window ? notMeasured(0.9) : guessed(0);
  opening.height = notMeasured(kind == OpeningKind::Window ? 1.2 : 2.03);
  return opening;
}

void hang(Opening& opening, const PlaceOnWall& place, const Vec2& hinge, const Vec2& open) {
  const double along = place.wall.along.dot(hinge - place.wall.start);
  opening.hinge = along < place.offset + 0.5 * place.width ? HingeSide::Start : HingeSide::End;
  const bool inward = place.wall.inward.dot(open - hinge) > 0;
  opening.swing = inward ? LeafSwing::IntoRoom : LeafSwing::OutOfRoom;
}

/// A swing, and which end of its arc it shuts at.
struct Shut {
  std::size_t swing = 0;
  std::size_t end = 0;
};

class OpeningFinder {
 public:
  OpeningFinder(const Room& room, double wallThickness, const DxfDrawing& drawing, double scale,
                const Vec2& shift)
      : room_(room), reach_(wallThickness + kMeets), drawing_(drawing), scale_(scale), shift_(shift) {
    swings_ = doorSwings(drawing, scale);
    const auto lines = leafLines(drawing, scale);
    for (DoorSwing& swing : swings_) {
      for (std::size_t end = 0; end < 2; ++end)
        swing.leaf[end] = std::any_of(lines.begin(), lines.end(), [&](const Line& line) {
          return runsBetween(line.segment, swing.hinge, swing.ends[end]);
        });
      swing.hinge += shift;
      for (Vec2& end : swing.ends) end += shift;
    }
    used_.assign(swings_.size(), false);
  }

  void takeGap(const Segment2& gap);
  void takeSwing(std::size_t index);
  std::size_t swings() const { return swings_.size(); }
  FoundOpenings found;

 private:
  std::optional<Shut> swingAt(const Segment2& gap) const;
  void takeDoor(const PlaceOnWall& place, const Shut& shut);
  bool takeTwoLeaves(const Segment2& gap);
  bool hasWindow(const Segment2& gap) const;

  const Room& room_;
  double reach_;  // from the inner face to where a door may hang in the wall
  const DxfDrawing& drawing_;
  double scale_;
  Vec2 shift_;
  std::vector<DoorSwing> swings_;
  std::vector<bool> used_;
};

std::optional<Shut> OpeningFinder::swingAt(const Segment2& gap) const {
  const Vec2 along = (gap.b - gap.a).normalized();
  // Along the gap the jamb must be met; across it the door may hang anywhere in the wall.
  const auto meets = [&](const Vec2& point, const Vec2& jamb) {
    return std::abs(along.dot(point - jamb)) <= kMeets && std::abs(cross(along, point - jamb)) <= reach_;
  };
  for (std::size_t i = 0; i < swings_.size(); ++i) {
    if (used_[i]) continue;
    for (std::size_t end = 0; end < 2; ++end) {
      const DoorSwing& swing = swings_[i];
      if ((meets(swing.hinge, gap.a) && meets(swing.ends[end], gap.b)) ||
          (meets(swing.hinge, gap.b) && meets(swing.ends[end], gap.a)))
        return Shut{i, end};
    }
  }
  return std::nullopt;
}

bool OpeningFinder::hasWindow(const Segment2& gap) const {
  const auto isWindow = [](const std::string& name) {
    const auto hint = hintOf(name);
    return hint && hint->hint == NameHint::Window;
  };
  const Vec2 along = (gap.b - gap.a).normalized();
  const double width = (gap.b - gap.a).norm();
  for (const DxfCurve& curve : drawing_.curves) {
    const bool named =
        isWindow(drawing_.layers[static_cast<std::size_t>(curve.layer)].name) ||
        (curve.insert >= 0 && isWindow(drawing_.inserts[static_cast<std::size_t>(curve.insert)].block));
    if (!named || curve.hidden) continue;
    for (const Vec2& point : curve.points) {
      const Vec2 there = scale_ * point + shift_ - gap.a;
      const double place = along.dot(there);
      if (place > -kMeets && place < width + kMeets && std::abs(cross(along, there)) <= reach_) return true;
    }
  }
  return false;
}

void OpeningFinder::takeDoor(const PlaceOnWall& place, const Shut& shut) {
  const DoorSwing& swing = swings_[shut.swing];
  used_[shut.swing] = true;
  Opening door = openingAt(place, OpeningKind::HingedDoor);
  hang(door, place, swing.hinge, swing.ends[1 - shut.end]);
  found.push_back({door, "A hinged door " + metresText(place.width) + " wide in wall " + place.wall.name +
                             ", by the arc that its leaf sweeps."});
}

// Two leaves that meet in the middle of the gap are two doors side by side.
bool OpeningFinder::takeTwoLeaves(const Segment2& gap) {
  const Vec2 middle = 0.5 * (gap.a + gap.b);
  const auto first = swingAt({gap.a, middle});
  const auto second = swingAt({middle, gap.b});
  const auto firstPlace = placeOnWall(room_, gap.a, middle, kOnLine);
  const auto secondPlace = placeOnWall(room_, middle, gap.b, kOnLine);
  if (!first || !second || first->swing == second->swing || !firstPlace || !secondPlace) return false;
  takeDoor(*firstPlace, *first);
  takeDoor(*secondPlace, *second);
  return true;
}

void OpeningFinder::takeGap(const Segment2& gap) {
  const auto place = placeOnWall(room_, gap.a, gap.b, kOnLine);
  if (!place) return;
  if (place->width < kNarrowestOpening) {
    found.push_back({std::nullopt, "A gap of " + metresText(place->width) + " in wall " + place->wall.name +
                                       " was closed as too narrow for an opening."});
    return;
  }
  const std::string where = metresText(place->width) + " wide in wall " + place->wall.name;
  if (const auto shut = swingAt(gap)) {
    takeDoor(*place, *shut);
  } else if (takeTwoLeaves(gap)) {
    return;
  } else if (hasWindow(gap)) {
    found.push_back({openingAt(*place, OpeningKind::Window),
                     "A window " + where + ", by the name of its layer or block."});
  } else {
    found.push_back({openingAt(*place, OpeningKind::Passage),
                     "An opening " + where + ": say what closes it, if anything does."});
  }
}

// A door drawn over a wall that runs on beneath it.
void OpeningFinder::takeSwing(std::size_t index) {
  const DoorSwing& swing = swings_[index];
  if (used_[index] || swing.leaf[0] == swing.leaf[1]) return;
  const std::size_t shut = swing.leaf[0] ? 1 : 0;
  const auto place = placeOnWall(room_, swing.hinge, swing.ends[shut], reach_);
  if (!place || place->width < kLeaf.low) return;
  used_[index] = true;
  Opening door = openingAt(*place, OpeningKind::HingedDoor);
  hang(door, *place, swing.hinge, swing.ends[1 - shut]);
  found.push_back({door, "A hinged door " + metresText(place->width) + " wide in wall " + place->wall.name +
                             ", by its leaf and arc; the wall is drawn unbroken there."});
}

}  // namespace

std::vector<DoorSwing> doorSwings(const DxfDrawing& drawing, double metresPerUnit) {
  std::vector<DoorSwing> swings;
  for (std::size_t c = 0; c < drawing.curves.size(); ++c) {
    if (drawing.curves[c].hidden || swings.size() >= kMostSwings) continue;
    for (const DxfArc& arc : drawing.curves[c].arcs)
      if (kLeaf.contains(metresPerUnit * arc.radius) && kTurn.contains(std::abs(arc.sweep)))
        swings.push_back({metresPerUnit * arc.centre,
                          {metresPerUnit * arc.first(), metresPerUnit * arc.last()},
                          {},
                          metresPerUnit * arc.radius,
                          c});
  }
  return swings;
}

std::vector<bool> drawnDoors(const DxfDrawing& drawing, const std::vector<DoorSwing>& swings,
                             double metresPerUnit) {
  std::vector<bool> drawn(drawing.curves.size(), false);
  const auto lines = leafLines(drawing, metresPerUnit);
  for (const DoorSwing& swing : swings)
    for (const Line& line : lines) {
      const DxfCurve& curve = drawing.curves[line.curve];
      // A leaf is one line, or a thin outline; a wall that happens to run from hinge to end has more corners.
      const bool leaf = runsBetween(line.segment, swing.hinge, swing.ends[0]) ||
                        runsBetween(line.segment, swing.hinge, swing.ends[1]);
      constexpr std::size_t kLeafCorners = 6;
      if (!leaf || (curve.points.size() > kLeafCorners && line.curve != swing.curve)) continue;
      drawn[line.curve] = drawn[swing.curve] = true;
    }
  return drawn;
}

std::vector<Segment2> shutLeaves(const std::vector<DoorSwing>& swings, const std::vector<bool>& drawn) {
  std::vector<Segment2> leaves;
  for (const DoorSwing& swing : swings)
    if (drawn[swing.curve])
      for (const Vec2& end : swing.ends) leaves.push_back({swing.hinge, end});
  return leaves;
}

FoundOpenings openingsOf(const Room& room, const JoinedRoom& joined, double wallThickness,
                         const DxfDrawing& drawing, double metresPerUnit, const Vec2& shift) {
  OpeningFinder finder(room, wallThickness, drawing, metresPerUnit, shift);
  for (const Segment2& gap : joined.gaps) finder.takeGap({gap.a + shift, gap.b + shift});
  for (std::size_t i = 0; i < finder.swings(); ++i) finder.takeSwing(i);
  return std::move(finder.found);
}

}  // namespace baywright::detail
