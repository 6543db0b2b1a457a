// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <set>

#include "clearance/kit_bodies.h"
#include "drawing/ball_marks.h"
#include "drawing/bay_plan.h"
#include "drawing/elevation_parts.h"
#include "drawing/marks.h"
#include "drawing/silhouette.h"
#include "optics/projector_body.h"

namespace baywright::detail {
namespace {

using Box = Eigen::AlignedBox2d;

Box boxFrom(const Sight& sight, const Vec3& a, const Vec3& b) {
  return Box(sight.fromBay(a)).extend(sight.fromBay(b));
}

void drawFrame(Board& board, const ViewInput& input, const Sight& sight) {
  const Frame& frame = input.kit().frame;
  const double half = frame.width / 2;
  const Box outer =
      boxFrom(sight, {frame.behindScreen - frame.depth, -half, 0}, {frame.behindScreen, half, frame.height});
  board.add(rectangle(Layer::Bay, outer, frame.id));
  // Uprights and the bar over them; nothing lies on the floor between the sides.
  const Vec2 tube(frame.tube, frame.tube);
  const Box inner(outer.min() + Vec2(tube.x(), 0), outer.max() - tube);
  if (!inner.isEmpty()) {
    board.add(polyline(
        Layer::Bay,
        {inner.min(), {inner.min().x(), inner.max().y()}, inner.max(), {inner.max().x(), inner.min().y()}},
        frame.id));
  }
}

void drawScreen(Board& board, const ViewInput& input, const Sight& sight) {
  const Screen& screen = input.kit().screen;
  const double half = screen.width / 2;
  const Box face = boxFrom(sight, {0, -half, screen.bottom}, {0, half, screen.bottom + screen.height});
  Path outline = sight.view == ViewKind::Side ? polyline(Layer::Bay, {face.min(), face.max()}, screen.id)
                                              : rectangle(Layer::Bay, face, screen.id);
  outline.weight = LineWeight::Thick;
  board.add(std::move(outline));
  if (sight.view != ViewKind::Side) return;
  const double third = screen.height / 3;
  Path travel = polyline(Layer::Bay,
                         {face.min(),
                          {screen.travel, screen.bottom + third},
                          {screen.travel, screen.bottom + 2 * third},
                          face.max()},
                         screen.id);
  travel.dash = LineDash::Dotted;
  board.add(std::move(travel));
}

// The way of a ball as far as the room goes.
std::vector<Vec2> untilWall(const std::vector<Vec2>& path, const std::vector<RoomStretch>& section) {
  if (section.empty()) return path;
  const double low = section.front().left.x;
  const double high = section.back().right.x;
  std::vector<Vec2> seen;
  for (const Vec2& p : path) {
    if (p.x() >= low && p.x() <= high) {
      seen.push_back(p);
      continue;
    }
    if (!seen.empty()) {
      const double wall = p.x() < low ? low : high;
      const Vec2& last = seen.back();
      seen.push_back(last + (wall - last.x()) / (p.x() - last.x()) * (p - last));
    }
    break;
  }
  return seen;
}

// The worst ball's way back, to the wall; empty where there is none to show.
std::vector<Vec2> reboundPath(const ViewInput& input, const Sight& sight, const BallZone& zone) {
  if (!input.options.rebound || !zone.rebound) return {};
  std::vector<Vec2> path;
  for (const Vec3& p : zone.rebound->worst.path) path.push_back(sight.fromBay(p));
  return untilWall(path, sight.section);
}

// Beside a mark, in one of some rows above or below it, where there is room.
void label(Board& board, const Vec2& at, const std::string& words, std::initializer_list<double> rows) {
  std::vector<Text> candidates;
  for (const double row : rows) {
    Text text =
        textAt(Layer::Labels, at + Vec2(0, board.mm(row * 2 * kSmallText)), words, TextAnchor::Centre);
    text.heightMm = kSmallText;
    text.onGround = true;
    candidates.push_back(std::move(text));
  }
  board.addWhereFree(candidates);
}

// A solid of the bay; on the viewer's side of the cut it is dashed.
void drawBody(Board& board, const Sight& sight, const ConvexPolyhedron& body, Id id) {
  Path outline = polygon(Layer::Bay, silhouetteOf(body, [&](const Vec3& p) { return sight.fromBay(p); }), id);
  if (sight.depthOf(flat(worldFromBay(sight.bay, body.middle()))) < 0) outline.dash = LineDash::Dashed;
  board.add(std::move(outline));
}

void drawProjector(Board& board, const ViewInput& input, const Sight& sight) {
  if (!input.kit().hasProjector) return;
  const ProjectorMount& mount = input.placement().projector;
  const Id id = input.kit().projector.id;
  if (const auto body = projectorBody(input.kit().projector, mount)) drawBody(board, sight, *body, id);
  if (input.assessment.obstacles) {
    for (const RoomObstacle& obstacle : *input.assessment.obstacles) {
      const Cylinder* pole = std::get_if<Cylinder>(&obstacle.solid);
      if (obstacle.kind != ObstacleKind::ProjectorMount || !pole) continue;
      const Vec2 side(pole->radius, 0);
      Box box(sight(pole->a) - side);
      box.extend(sight(pole->a) + side).extend(sight(pole->b) - side).extend(sight(pole->b) + side);
      board.add(rectangle(Layer::Bay, box, id));
    }
  }
  Symbol lens;
  lens.kind = sight.view == ViewKind::Side ? SymbolKind::Lens : SymbolKind::Corner;
  lens.at = sight.fromBay(mount.lens);
  lens.angle = sight.view == ViewKind::Side ? mount.pitch : 0;
  lens.id = id;
  board.add(lens);
}

}  // namespace

void drawBay(Board& board, const ViewInput& input, const Sight& sight) {
  drawFrame(board, input, sight);
  drawScreen(board, input, sight);
  const Mat& mat = input.kit().mat;
  const Vec2 at = input.placement().matCentre;
  const Vec2 half(mat.length / 2, mat.width / 2);
  board.add(
      rectangle(Layer::Bay, boxFrom(sight, raised(at - half, 0), raised(at + half, mat.thickness)), mat.id));
  if (input.kit().hasMonitor) {
    const auto body = monitorBody(input.kit().monitor, input.placement().monitor);
    if (body) drawBody(board, sight, *body, input.kit().monitor.id);
  }
  drawProjector(board, input, sight);
  for (const Vec3& strike : strikePoints(input.job)) {
    Symbol symbol;
    symbol.at = sight.fromBay({strike.x(), strike.y(), mat.thickness});
    symbol.id = mat.id;
    board.add(symbol);
  }
}

void drawBeam(Board& board, const ViewInput& input, const Sight& sight) {
  if (!input.assessment.picture) return;
  const Picture& picture = input.assessment.picture->picture;
  std::vector<Vec2> points;
  for (const Vec3& corner : picture.cornersInBay) points.push_back(sight.fromBay(corner));
  if (sight.view == ViewKind::Side) points.push_back(sight.fromBay(picture.lens.centre));
  if (sight.view == ViewKind::Side) points = convexHull(std::move(points));
  board.add(areaOf(Layer::Beam, {std::move(points)}, Fill::Soft, input.kit().projector.id));
}

void drawBall(Board& board, const ViewInput& input, const Sight& sight) {
  for (const BallZone* zone : differentShots(input.assessment)) {
    if (sight.view == ViewKind::DownRange) {
      const auto arrivals = arrivalBox(*zone);
      if (input.options.capture && arrivals) board.add(rectangle(Layer::Capture, *arrivals));
      continue;
    }
    if (input.options.capture && zone->fan.elevation.size() >= 3)
      board.add(areaOf(Layer::Capture, {zone->fan.elevation}, Fill::Soft));
    auto path = reboundPath(input, sight, *zone);
    if (path.size() >= 2) board.add(polyline(Layer::Rebound, std::move(path)));
  }
}

void drawBallNames(Board& board, const ViewInput& input, const Sight& sight) {
  for (const BallZone* zone : differentShots(input.assessment)) {
    const auto arrivals = arrivalBox(*zone);
    if (sight.view == ViewKind::DownRange) {
      if (input.options.capture && arrivals)
        label(board, {arrivals->center().x(), arrivals->max().y()}, "shots", {0.3, -1, -2});
      continue;
    }
    if (input.options.capture && arrivals) {
      const Vec2 at = 0.8 * Vec2(0, arrivals->center().y()) + 0.2 * sight.fromBay(zone->ball);
      label(board, at, "shots", {-0.5, -1.5, 0.5});
    }
    const auto path = reboundPath(input, sight, *zone);
    if (path.size() < 2) continue;
    const auto top = std::max_element(path.begin(), path.end(),
                                      [](const Vec2& a, const Vec2& b) { return a.y() < b.y(); });
    label(board, *top, reboundText(*zone->rebound, input.job.units), {0.5, 1.5, -1});
  }
}

void drawPeople(Board& board, const ViewInput& input, const Sight& sight) {
  const SwingSight from = sight.view == ViewKind::Side ? SwingSight::FromTheSide : SwingSight::DownRange;
  std::set<Id> drawn;
  for (const SwingZone& zone : input.assessment.swings) {
    if (!zone.swing || !drawn.insert(zone.golfer).second) continue;
    std::vector<Ring> rings = input.outlines.of(zone.swing, from, zone.clearance).address;
    if (rings.empty()) continue;
    const Vec2 strike = sight.fromBay(zone.strikePointInBay);
    for (Ring& ring : rings) {
      for (Vec2& p : ring) p += strike;
    }
    board.add(areaOf(Layer::People, std::move(rings), Fill::None, zone.golfer));
  }
}

}  // namespace baywright::detail
