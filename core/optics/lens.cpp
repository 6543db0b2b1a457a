// SPDX-License-Identifier: Apache-2.0
#include "optics/lens.h"

#include <cmath>

namespace baywright {
namespace {

bool finite(const ProjectorMount& mount) {
  return mount.lens.allFinite() && std::isfinite(mount.yaw) && std::isfinite(mount.pitch) &&
         std::isfinite(mount.roll) && std::isfinite(mount.throwRatio) && std::isfinite(mount.shiftUp) &&
         std::isfinite(mount.shiftSide);
}

/// Half a turn of the body about its axis turns the offset over.
double restingOffset(const Projector& projector, MountKind kind) {
  return kind == MountKind::Ceiling ? -projector.offset : projector.offset;
}

void turn(ProjectorLens& lens, const ProjectorMount& mount) {
  const double sy = std::sin(mount.yaw), cy = std::cos(mount.yaw);
  const double sp = std::sin(mount.pitch), cp = std::cos(mount.pitch);
  const double sr = std::sin(mount.roll), cr = std::cos(mount.roll);
  const Vec3 right{-sy, cy, 0};
  const Vec3 up{-sp * cy, -sp * sy, cp};
  lens.axis = {cp * cy, cp * sy, sp};
  lens.right = cr * right - sr * up;
  lens.up = cr * up + sr * right;
}

}  // namespace

Result<ProjectorLens> lensOf(const Projector& projector, const ProjectorMount& mount) {
  if (!finite(mount))
    return fail("The projector's place, angles, zoom or shift is not a number.", "placement / projector",
                "Type it again.");
  if (projector.panelWidth < 1 || projector.panelHeight < 1)
    return fail("The projector's native resolution has no pixels.", "kit / projector / panel",
                "Give both sides as in its data sheet, for example 1920 x 1080.");
  if (!(mount.throwRatio > 0))
    return fail("The projector's throw ratio is not above zero.", "placement / projector / throw ratio",
                "Give the distance to the picture over the picture's width, for example 1.2.");
  if (!std::isfinite(projector.offset))
    return fail(
        "The projector's offset is not a number.", "kit / projector / offset",
        "Give it as a share of the picture's height; 0.5 puts the picture's edge level with the lens.");

  ProjectorLens lens;
  lens.centre = mount.lens;
  turn(lens, mount);
  lens.panel = {projector.panelWidth, projector.panelHeight};
  const double width = 1 / mount.throwRatio;
  lens.extent = {width, width * lens.panel.y() / lens.panel.x()};
  lens.middle = {mount.shiftSide * lens.extent.x(),
                 (restingOffset(projector, mount.kind) + mount.shiftUp) * lens.extent.y()};
  return lens;
}

Vec3 bayRayFromPanel(const ProjectorLens& lens, const Vec2& pixel) {
  const double right = lens.middle.x() + (pixel.x() / lens.panel.x() - 0.5) * lens.extent.x();
  const double up = lens.middle.y() + (0.5 - pixel.y() / lens.panel.y()) * lens.extent.y();
  return lens.axis + right * lens.right + up * lens.up;
}

Vec3 lensFromBay(const ProjectorLens& lens, const Vec3& p) {
  const Vec3 from = p - lens.centre;
  return {from.dot(lens.axis), from.dot(lens.right), from.dot(lens.up)};
}

std::optional<Vec2> panelFromBay(const ProjectorLens& lens, const Vec3& p) {
  const Vec3 q = lensFromBay(lens, p);
  if (!(q.x() > 0)) return std::nullopt;
  return panelFromLens(lens, q);
}

Vec2 panelFromLens(const ProjectorLens& lens, const Vec3& q) {
  const double right = (q.y() / q.x() - lens.middle.x()) / lens.extent.x();
  const double up = (q.z() / q.x() - lens.middle.y()) / lens.extent.y();
  return {(0.5 + right) * lens.panel.x(), (0.5 - up) * lens.panel.y()};
}

}  // namespace baywright
