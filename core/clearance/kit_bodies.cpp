// SPDX-License-Identifier: Apache-2.0
#include "clearance/kit_bodies.h"

#include <algorithm>

namespace baywright {
namespace {

std::optional<ConvexPolyhedron> boxBetween(const Vec3& low, const Vec3& high) {
  if (!((high - low).array() > 0).all()) return std::nullopt;
  const auto body = boxFrom(TiltedBox{0.5 * (low + high), Mat3((0.5 * (high - low)).asDiagonal())});
  return body ? std::optional(*body) : std::nullopt;
}

struct FrameSpan {
  double front, back, side;
};
FrameSpan spanOf(const Frame& frame) {
  return {-(frame.depth - frame.behindScreen), frame.behindScreen, frame.width / 2};
}

}  // namespace

std::vector<FramePanel> framePanels(const Frame& frame) {
  const auto [front, back, side] = spanOf(frame);
  const double tube = std::min({frame.tube, frame.width / 2, frame.height});
  std::vector<FramePanel> panels;
  const auto add = [&](const char* name, const Vec3& low, const Vec3& high, const Vec3& outward) {
    const Vec3 more = kFabricBacking * outward;
    auto body = boxBetween(low, high);
    auto backed = boxBetween(low + more.cwiseMin(0.0), high + more.cwiseMax(0.0));
    if (body && backed) panels.push_back({name, std::move(*body), std::move(*backed)});
  };
  add("the frame's left side", {front, -side, 0}, {back, -side + tube, frame.height}, -Vec3::UnitY());
  add("the frame's right side", {front, side - tube, 0}, {back, side, frame.height}, Vec3::UnitY());
  add("the frame's roof", {front, -side, frame.height - tube}, {back, side, frame.height}, Vec3::UnitZ());
  add("the screen", {0, -side, 0}, {std::max(back, tube), side, frame.height}, Vec3::UnitX());
  return panels;
}

std::optional<ConvexPolyhedron> frameBox(const Frame& frame) {
  return frameBoxBeside(frame, 0);
}

std::optional<ConvexPolyhedron> frameBoxAbove(const Frame& frame, double more) {
  const auto [front, back, side] = spanOf(frame);
  return boxBetween({front, -side, 0}, {back, side, frame.height + more});
}

std::optional<ConvexPolyhedron> frameBoxBeside(const Frame& frame, double more) {
  const auto [front, back, side] = spanOf(frame);
  return boxBetween({front, -side - more, 0}, {back, side + more, frame.height});
}

std::optional<ConvexPolyhedron> screenTravelBox(const Frame& frame, const Screen& screen, double more) {
  const double back = std::max(screen.travel + more, frame.behindScreen);
  const double side = screen.width / 2;
  return boxBetween({0, -side, std::max(screen.bottom, 0.0)}, {back, side, screen.bottom + screen.height});
}

std::optional<ConvexPolyhedron> monitorBody(const LaunchMonitor& monitor, const Vec3& at) {
  const Vec3 half = 0.5 * monitor.size;
  return boxBetween(at - Vec3(half.x(), half.y(), 0), at + Vec3(half.x(), half.y(), monitor.size.z()));
}

std::optional<Cylinder> mountDrop(const ConvexPolyhedron& body, MountKind kind, double ceilingHeight) {
  const Vec3& middle = body.middle();
  Cylinder drop{middle, middle, kMountRadius};
  if (kind == MountKind::Ceiling) {
    drop.b.z() = ceilingHeight;
  } else if (kind == MountKind::Floor) {
    drop.b.z() = 0;
  } else {
    return std::nullopt;
  }
  const bool hasLength =
      kind == MountKind::Ceiling ? drop.b.z() > body.bounds().high.z() : body.bounds().low.z() > 0;
  return hasLength ? std::optional(drop) : std::nullopt;
}

}  // namespace baywright
