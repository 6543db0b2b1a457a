// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>
#include <set>

#include "clearance/kit_bodies.h"
#include "drawing/bay_plan.h"
#include "drawing/marks.h"
#include "drawing/plan_parts.h"
#include "drawing/silhouette.h"
#include "optics/projector_body.h"

namespace baywright::detail {
namespace {

Path outlineOf(const BayPlan& bay, const ConvexPolyhedron& body, Id id) {
  return polygon(Layer::Bay, silhouetteOf(body, [&](const Vec3& p) { return bay(p.x(), p.y()); }), id);
}

void drawFrame(Board& board, const BayPlan& bay, const ViewInput& input) {
  const Frame& frame = input.kit().frame;
  const double front = frame.behindScreen - frame.depth;
  Path footprint =
      polygon(Layer::Bay, bay.box(front, frame.behindScreen, -frame.width / 2, frame.width / 2), frame.id);
  footprint.fill = Fill::Soft;
  board.add(std::move(footprint));
  std::vector<Ring> posts;
  const double side = frame.width / 2 - frame.tube;
  for (const double r : {-frame.width / 2, side}) {
    for (const double d : {front, frame.behindScreen - frame.tube})
      posts.push_back(bay.box(d, d + frame.tube, r, r + frame.tube));
  }
  board.add(areaOf(Layer::Bay, std::move(posts), Fill::Full, frame.id));
}

void drawScreen(Board& board, const BayPlan& bay, const ViewInput& input) {
  const Screen& screen = input.kit().screen;
  const double half = screen.width / 2;
  Path face = polyline(Layer::Bay, {bay(0, -half), bay(0, half)}, screen.id);
  face.weight = LineWeight::Thick;
  board.add(std::move(face));
  // How far a hard shot pushes it back.
  Path travel = polyline(
      Layer::Bay, {bay(0, -half), bay(screen.travel, -half / 3), bay(screen.travel, half / 3), bay(0, half)},
      screen.id);
  travel.dash = LineDash::Dotted;
  board.add(std::move(travel));
}

void drawMatAndMonitor(Board& board, const BayPlan& bay, const ViewInput& input) {
  const Mat& mat = input.kit().mat;
  const Vec2 at = input.placement().matCentre;
  board.add(polygon(Layer::Bay,
                    bay.box(at.x() - mat.length / 2, at.x() + mat.length / 2, at.y() - mat.width / 2,
                            at.y() + mat.width / 2),
                    mat.id));
  if (!input.kit().hasMonitor) return;
  const auto body = monitorBody(input.kit().monitor, input.placement().monitor);
  if (body) board.add(outlineOf(bay, *body, input.kit().monitor.id));
}

void drawProjector(Board& board, const BayPlan& bay, const ViewInput& input) {
  if (!input.kit().hasProjector) return;
  const ProjectorMount& mount = input.placement().projector;
  const Id id = input.kit().projector.id;
  if (const auto body = projectorBody(input.kit().projector, mount)) {
    Path outline = outlineOf(bay, *body, id);
    if (mount.lens.z() > kPlanCut) outline.dash = LineDash::Dashed;
    board.add(std::move(outline));
  }
  Symbol lens;
  lens.kind = SymbolKind::Lens;
  lens.at = bay(mount.lens.x(), mount.lens.y());
  lens.angle = input.placement().bay.heading - mount.yaw;  // yaw turns to the right
  lens.id = id;
  board.add(lens);
}

}  // namespace

void drawBay(Board& board, const ViewInput& input) {
  const BayPlan bay{input.placement().bay};
  drawFrame(board, bay, input);
  drawScreen(board, bay, input);
  drawMatAndMonitor(board, bay, input);
  drawProjector(board, bay, input);
  for (const Vec3& at : strikePoints(input.job)) {
    Symbol strike;
    strike.at = bay(at.x(), at.y());
    strike.angle = input.placement().bay.heading;
    strike.sizeMm = 4;
    strike.id = input.kit().mat.id;
    board.add(strike);
  }
}

void drawPeople(Board& board, const ViewInput& input) {
  std::set<Id> drawn;
  for (const SwingZone& zone : input.assessment.swings) {
    if (!zone.swing || !drawn.insert(zone.golfer).second) continue;
    const SwingOutline& outline = input.outlines.of(zone.swing, SwingSight::FromAbove, zone.clearance);
    if (outline.address.empty()) continue;
    board.add(areaOf(Layer::People, planRings(outline.address, zone), Fill::None, zone.golfer));
  }
  for (const Bystander& person : input.job.bystanders) {
    Path place = polygon(Layer::People, circleRing(person.position, person.radius), person.id);
    place.fill = Fill::Soft;
    board.add(std::move(place));
    if (!input.options.labels) continue;
    Text name = textAt(Layer::Labels, person.position - Vec2(0, person.radius + board.mm(3)), person.name,
                       TextAnchor::Centre);
    name.heightMm = kSmallText;
    name.id = person.id;
    board.addWhereFree(std::array{name});
  }
}

}  // namespace baywright::detail
