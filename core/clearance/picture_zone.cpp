// SPDX-License-Identifier: Apache-2.0
#include "clearance/picture_zone.h"

#include <algorithm>
#include <cmath>

#include "geometry/rigid_map.h"
#include "optics/aim.h"

namespace baywright {
namespace {

/// What begins this near before the screen's face stands behind it: rounding puts it on either side, metres.
constexpr double kAtTheFace = 1e-6;

std::vector<Capsule> poseInBay(const SwingZone& zone, double moment) {
  std::vector<Capsule> capsules;
  const RigidMap bayFromSwing{Mat3::Identity(), zone.strikePointInBay};
  for (const SwingCapsule& part : poseAt(*zone.swing, moment))
    capsules.push_back(transformed(part.capsule, bayFromSwing));
  return capsules;
}

/// How the share at address changes when the golfer stands elsewhere by one standard uncertainty.
double addressSigma(const Picture& picture, const std::vector<Capsule>& address, double share,
                    const Vec3& sigmas) {
  double variance = 0;
  for (int axis = 0; axis < 3; ++axis) {
    std::vector<Capsule> moved;
    const RigidMap step{Mat3::Identity(), sigmas[axis] * Vec3::Unit(axis)};
    for (const Capsule& capsule : address) moved.push_back(transformed(capsule, step));
    const double change = obstructionBy(picture, std::span<const Capsule>(moved)).share - share;
    variance += change * change;
  }
  return std::sqrt(variance);
}

PictureZone::GolferShadow shadowOf(const Picture& picture, const SwingZone& zone, double placementSigma) {
  std::vector<std::vector<Capsule>> poses;
  std::vector<BodyAtMoment> moments;
  poses.reserve(kShadowMoments + 1);
  for (int i = 0; i <= kShadowMoments; ++i) {
    const double moment = static_cast<double>(i) / kShadowMoments;
    poses.push_back(poseInBay(zone, moment));
    moments.push_back({moment, poses.back()});
  }
  PictureZone::GolferShadow shade;
  shade.golfer = zone.golfer;
  shade.club = zone.club;
  shade.shadow = shadowOf(picture, poses.front(), moments);
  shade.worstMoment = moments[shade.shadow.worstMoment].time;
  const SwingEnvelope& envelope = zone.swing->expected;
  const double level = std::hypot(envelope.sigmaLevel, placementSigma);
  shade.addressSigma =
      addressSigma(picture, poses.front(), shade.shadow.atAddress, {level, level, envelope.sigmaUp});
  return shade;
}

}  // namespace

std::vector<LightBlocker> lightBlockers(std::span<const RoomObstacle> obstacles, const BayPose& bay) {
  const RigidMap world = worldFromBay(bay);
  const RigidMap toBay{world.linear.transpose(), -(world.linear.transpose() * world.offset)};
  std::vector<LightBlocker> blockers;
  for (std::size_t i = 0; i < obstacles.size(); ++i) {
    const RoomObstacle& obstacle = obstacles[i];
    const bool own =
        obstacle.kind == ObstacleKind::Projector || obstacle.kind == ObstacleKind::ProjectorMount;
    if (own || obstacle.kind == ObstacleKind::Bystander || !obstacle.missing.empty()) continue;
    Solid inBay = transformed(obstacle.solid, toBay);
    if (boundsOf(inBay).low.x() > -kAtTheFace) continue;
    blockers.push_back({i, std::move(inBay)});
  }
  return blockers;
}

Result<PictureZone> pictureAlone(const Option& option, const Requirements& requirements) {
  const Kit& kit = option.kit;
  const ProjectorMount& mount = option.placement.projector;
  auto picture = pictureOf(kit.screen, kit.projector, mount);
  if (!picture) return tl::unexpected(picture.error());
  PictureZone zone;
  zone.picture = std::move(*picture);
  auto corners = fitCorners(zone.picture, kit.projector, CornerFill::Screen);
  if (!corners) return tl::unexpected(corners.error());
  zone.corners = std::move(*corners);
  zone.brightness = brightnessOf(zone.picture, lightOf(kit.projector, kit.screen, requirements.ambient),
                                 zone.corners.target);
  const AimNeeds needs{requirements.coverage, requirements.spill};
  if (auto where = mountingZone(kit.screen, kit.projector, mount.kind, mount.lens.z(), needs)) {
    zone.mountingZone = std::move(*where);
  }
  return zone;
}

std::vector<PictureZone::GolferShadow> golferShadows(const Picture& picture,
                                                     std::span<const SwingSetting> swings,
                                                     double placementSigma) {
  std::vector<PictureZone::GolferShadow> shadows;
  for (const SwingSetting& setting : swings) {
    const auto taken = [&](const PictureZone::GolferShadow& s) { return s.golfer == setting.zone.golfer; };
    if (!setting.zone.swing || std::any_of(shadows.begin(), shadows.end(), taken)) continue;
    shadows.push_back(shadowOf(picture, setting.zone, placementSigma));
  }
  return shadows;
}

}  // namespace baywright
