// SPDX-License-Identifier: Apache-2.0
#include "optics/aim.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "optics/keystone.h"

namespace baywright {
namespace {

/// Zoom and aim depend on each other a little when the body is turned: rounds of a secant, about six are
/// needed.
constexpr int kRounds = 20;
constexpr double kZoomSettled = 1e-13;

/// The way from the lens to the middle of the screen, along (d, r, u).
Vec3 wayToMiddle(const ScreenFace& face, const Vec3& lens) {
  return bayFromScreen(face, face.middle()) - lens;
}

/// A projector never looks along the screen, whatever its data sheet claims; radians.
constexpr double kMostTurn = 1.4;

double within(double value, double limit) {
  return std::clamp(value, -std::max(0.0, limit), std::max(0.0, limit));
}

/// Lens shift that puts the picture's middle on the screen's, as far as the projector can, for a square axis.
void shiftToward(ProjectorMount& mount, const Projector& projector, const Vec3& way) {
  const double width = way.x() / mount.throwRatio;
  const double height = width * projector.panelHeight / projector.panelWidth;
  const double offset = mount.kind == MountKind::Ceiling ? -projector.offset : projector.offset;
  mount.shiftUp = within(way.z() / height - offset, projector.shiftUpMax);
  mount.shiftSide = within(way.y() / width, projector.shiftSideMax);
}

/// Turns the body so that the ray through the panel's middle, (1, side, up) along (axis, right, up), goes
/// `way`. Pitch raises it to the way's elevation, yaw then swings it round to its direction. Each is held
/// within what the keystone correction can undo: pitch is the angle up, atan(tan(yaw) / cos(pitch)) the angle
/// across.
void turnToward(ProjectorMount& mount, const Projector& projector, const Vec2& middle, const Vec3& way) {
  const Vec3 ray{1, middle.x(), middle.y()};
  const double rise = way.z() / way.norm() * ray.norm() / std::hypot(1.0, ray.z());
  const double most = std::clamp(projector.keystoneMax, 0.0, kMostTurn);
  const double pitch = std::asin(std::clamp(rise, -1.0, 1.0)) - std::atan(ray.z());
  mount.pitch = within(pitch, most);
  const double ahead = std::cos(mount.pitch) - ray.z() * std::sin(mount.pitch);
  const double yaw = std::atan2(way.y(), way.x()) - std::atan2(ray.y(), ahead);
  const double mostYaw = std::atan(std::tan(most) * std::cos(mount.pitch));
  mount.yaw = within(yaw, mostYaw);
  if (std::abs(mount.pitch) < kNoKeystone) mount.pitch = 0;
  if (std::abs(mount.yaw) < kNoKeystone) mount.yaw = 0;
}

/// How many times larger the picture would have to be about its middle to hold every corner of the screen.
double growthNeeded(const ProjectorLens& lens, const ScreenFace& face) {
  double growth = 0;
  for (const Vec2& corner : face.corners()) {
    const Vec3 q = lensFromBay(lens, bayFromScreen(face, corner));
    if (!(q.x() > 0)) return std::numeric_limits<double>::infinity();
    const Vec2 off = (Vec2{q.y(), q.z()} / q.x() - lens.middle).cwiseQuotient(0.5 * lens.extent);
    growth = std::max(growth, off.cwiseAbs().maxCoeff());
  }
  return growth;
}

/// Shift and turn for the mount's zoom; how much the picture would then have to grow.
double aimed(ProjectorMount& mount, const Projector& projector, const ScreenFace& face, const Vec3& way) {
  shiftToward(mount, projector, way);
  mount.yaw = mount.pitch = 0;
  const auto straight = lensOf(projector, mount);
  if (!straight) return 1;
  turnToward(mount, projector, straight->middle, way);
  const auto turned = lensOf(projector, mount);
  return turned ? growthNeeded(*turned, face) : 1;
}

/// Finds the zoom at which the picture just holds the screen: log(growth) as a function of log(throw ratio)
/// is nearly a line of slope 1.
void zoomAndAim(ProjectorMount& mount, const Projector& projector, const ScreenFace& face, const Vec3& way) {
  double growth = aimed(mount, projector, face, way);
  double slope = 1;
  for (int round = 0; round < kRounds; ++round) {
    const double before = mount.throwRatio, growthBefore = growth;
    const double wanted = before * std::exp(-std::log(growth) / slope);
    mount.throwRatio = std::clamp(wanted, projector.throwMin, projector.throwMax);
    growth = aimed(mount, projector, face, way);
    if (std::abs(mount.throwRatio - before) < kZoomSettled * before) return;
    slope = std::log(growth / growthBefore) / std::log(mount.throwRatio / before);
    if (!(slope > 0.1 && slope < 10)) slope = 1;
  }
}

}  // namespace

double MountMargins::least() const {
  return std::min({zoomWide, zoomLong, focusNear, focusFar, shiftUp, shiftSide, keystone, coverage, spill});
}

MountMargins mountMargins(const Picture& picture, const Projector& projector, const ProjectorMount& mount,
                          const AimNeeds& needs) {
  MountMargins margins;
  margins.zoomWide = mount.throwRatio - projector.throwMin;
  margins.zoomLong = projector.throwMax - mount.throwRatio;
  margins.focusNear = picture.throwDistance - projector.distanceMin;
  margins.focusFar = projector.distanceMax - picture.throwDistance;
  margins.shiftUp = projector.shiftUpMax - std::abs(mount.shiftUp);
  margins.shiftSide = projector.shiftSideMax - std::abs(mount.shiftSide);
  margins.keystone = projector.keystoneMax - keystoneAngle(picture);
  margins.coverage = picture.coverage - needs.coverage;
  margins.spill = 1 - (1 - picture.aspectLoss) * (1 - needs.spill) - picture.spill;
  return margins;
}

Result<Aim> aimAt(const Screen& screen, const Projector& projector, const ProjectorMount& place,
                  const AimNeeds& needs) {
  const ScreenFace face = faceOf(screen);
  const Vec3 way = wayToMiddle(face, place.lens);
  ProjectorMount mount;
  mount.kind = place.kind;
  mount.lens = place.lens;
  mount.throwRatio = projector.throwMin;
  if (way.x() > 0 && projector.throwMin > 0 && projector.throwMin <= projector.throwMax) {
    const double aspect = static_cast<double>(projector.panelWidth) / projector.panelHeight;
    const double width = std::max(face.size.x(), face.size.y() * aspect);
    mount.throwRatio = std::clamp(way.x() / width, projector.throwMin, projector.throwMax);
    zoomAndAim(mount, projector, face, way);
  }
  return pictureOf(screen, projector, mount).map([&](const Picture& picture) {
    const MountMargins margins = mountMargins(picture, projector, mount, needs);
    return Aim{mount, picture, margins, margins.least() >= -kAimTolerance};
  });
}

}  // namespace baywright
