// SPDX-License-Identifier: Apache-2.0
#include "clearance/door_geometry.h"

#include <algorithm>
#include <cmath>

#include "job/room_geometry.h"

namespace baywright {
namespace {

/// A box given along the opening (from its start jamb), into the room and upward.
struct DoorBox {
  double from, to, near, far, bottom, top;
};

std::optional<ConvexPolyhedron> bodyOf(const OpeningPlace& place, const DoorBox& box) {
  const auto at = [&](double along, double into) {
    return Vec2(place.start + along * place.along + into * place.inward);
  };
  const Ring plan = {at(box.from, box.near), at(box.to, box.near), at(box.to, box.far),
                     at(box.from, box.far)};
  const auto body = convexPrismFrom({plan, SlopedPlane::level(box.bottom), SlopedPlane::level(box.top)});
  return body ? std::optional(*body) : std::nullopt;
}

ObstacleUncertainty uncertaintyOf(const Room& room, const Opening& opening) {
  ObstacleUncertainty u;
  const auto wall = wallLine(room, opening.wall);
  const double across = wall ? wall->sigmaAt(opening.offset.value + opening.width.value / 2) : 0;
  const double along = combinedSigma(opening.offset.uncertain().sigma, opening.width.uncertain().sigma);
  const double plan = std::hypot(std::max(across, along), kTrackSigma);
  u.atFrom = u.atTo = PlanCovariance::isotropic(plan);
  const double height = combinedSigma(opening.sill.uncertain().sigma, opening.height.uncertain().sigma);
  u.bottom = u.top = std::hypot(height, kTrackSigma);
  return u;
}

}  // namespace

std::optional<SectionalDoorBodies> sectionalDoor(const Room& room, const Opening& opening) {
  const auto place = openingPlace(room, opening.id);
  if (!place) return std::nullopt;
  const double width = (place->end - place->start).norm();
  const double top = place->top + opening.trackHeadroom;
  const double depth = opening.trackDepth > 0 ? opening.trackDepth : opening.height.value + kTrackRunOut;
  SectionalDoorBodies door;
  const bool known =
      opening.offset.known && opening.width.known && opening.sill.known && opening.height.known;
  if (!known) door.missing = "place and size of " + opening.name;
  const double underside = known ? top - kTrackHeight : 0;
  for (const double from : {-kTrackGap - kTrackWidth, width + kTrackGap}) {
    const double to = from + kTrackWidth;
    for (const DoorBox& box : {DoorBox{from, to, 0, kTrackHeight, place->bottom, top},
                               DoorBox{from, to, kTrackHeight, depth, underside, top}}) {
      if (auto body = bodyOf(*place, box)) door.tracks.push_back(std::move(*body));
    }
  }
  const double hang = known ? top - std::max(kTrackHeight, opening.panelThickness) : 0;
  door.open = bodyOf(*place, {-kTrackGap, width + kTrackGap, 0, depth, hang, top});
  door.uncertainty = uncertaintyOf(room, opening);
  return door;
}

std::vector<Vec2> leafSector(const Room& room, const Opening& opening) {
  const auto place = openingPlace(room, opening.id);
  if (!place) return {};
  const bool atStart = opening.hinge == HingeSide::Start;
  const Vec2 hinge = atStart ? place->start : place->end;
  const Vec2 shut = atStart ? place->along : -place->along;
  const Vec2 across = opening.swing == LeafSwing::IntoRoom ? place->inward : -place->inward;
  const double radius = (place->end - place->start).norm();
  // Tangents of n equal arcs stick out by 1 / cos(half an arc) - 1; four degrees a side gives 6e-4.
  const double angle = std::clamp(opening.openAngle, 0.0, kPi);
  const int arcs = std::max(1, static_cast<int>(std::ceil(angle / (4 * kPi / 180))));
  const double half = angle / arcs / 2;
  std::vector<Vec2> sector = {hinge, hinge + radius * shut};
  for (int i = 0; i < arcs; ++i) {
    const double a = (2 * i + 1) * half;
    sector.push_back(hinge + radius / std::cos(half) * (std::cos(a) * shut + std::sin(a) * across));
  }
  sector.push_back(hinge + radius * (std::cos(angle) * shut + std::sin(angle) * across));
  if (signedArea(sector) < 0) std::reverse(sector.begin(), sector.end());
  return sector;
}

Uncertain clearOpeningWidth(const Opening& opening) {
  Uncertain width = opening.width.uncertain();
  if (opening.kind == OpeningKind::HingedDoor) width.value -= opening.leafThickness;
  return width;
}

}  // namespace baywright
