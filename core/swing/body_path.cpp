// SPDX-License-Identifier: Apache-2.0
#include "swing/body_path.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "swing/two_link.h"

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;
// A little below the full height of the shoulders: nobody finishes a swing stretched to the last.
constexpr double kFinishShoulders = 0.98;

using KeyPose = std::array<Vec3, kJoints>;

Vec3& at(KeyPose& pose, Joint joint) {
  return pose[static_cast<std::size_t>(joint)];
}

/// The joint between two bones that span from `a` to `b`, bent toward `pole`; on the straight line when it is
/// too far.
struct Bones {
  Vec3 a, b;
  double first, second;
  Vec3 pole;
};
Vec3 bend(const Bones& bones) {
  const Vec3 span = bones.b - bones.a;
  const double distance = span.norm();
  const double reach = bones.first + bones.second;
  if (distance >= reach || distance <= 0) return bones.a + span * (bones.first / reach);
  const Vec3 along = span / distance;
  const double foot =
      (distance * distance + bones.first * bones.first - bones.second * bones.second) / (2 * distance);
  const double height = std::sqrt(std::max(0.0, bones.first * bones.first - foot * foot));
  const Vec3 across = bones.pole - bones.pole.dot(along) * along;
  const double size = across.norm();
  return bones.a + foot * along + (size > 0 ? Vec3(height / size * across) : Vec3::Zero());
}

/// Where trunk, head and legs are when the arms are at an angle.
void placeTrunk(const BodyPathInput& input, double arms, KeyPose& pose) {
  const BodySchedule& schedule = bodySchedule(input.style);
  const BodyLengths& body = input.body;
  const double h = body.stature;
  const double up = schedule.standUp(arms);
  const double tilt = input.posture.spineTilt * (1 - up);
  const Vec3 spine(0, std::sin(tilt), std::cos(tilt));

  const Vec3& addressHub = input.posture.hub;
  const Vec3 tallHub(0, addressHub.y(), kFinishShoulders * body.shoulder);
  const Vec3 hub = addressHub + up * (tallHub - addressHub) + Vec3(schedule.hubShift(arms) * h, 0, 0);
  const Vec3 tallPelvis = tallHub - Vec3(0, 0, body.trunk);
  const Vec3 pelvis = input.posture.pelvis + up * (tallPelvis - input.posture.pelvis) +
                      Vec3(schedule.pelvisShift(arms) * h, 0, 0);
  at(pose, Joint::Hub) = hub;
  at(pose, Joint::Pelvis) = pelvis;
  at(pose, Joint::Chest) = hub - body.chestRadius * spine;
  at(pose, Joint::HeadLow) = hub + (body.neck + body.headRadius) * spine;
  at(pose, Joint::HeadHigh) = hub + (body.crown - body.headRadius) * spine;

  const double turn = schedule.shoulderTurn(arms);
  const Vec3 shoulders(std::cos(turn), std::sin(turn) * std::cos(tilt), -std::sin(turn) * std::sin(tilt));
  at(pose, Joint::LeadShoulder) = hub + body.halfShoulders * shoulders;
  at(pose, Joint::TrailShoulder) = hub - body.halfShoulders * shoulders;

  const double hipTurn = schedule.hipTurn(arms);
  const Vec3 hips(std::cos(hipTurn), std::sin(hipTurn), 0);
  at(pose, Joint::LeadHip) = pelvis + body.halfHips * hips;
  at(pose, Joint::TrailHip) = pelvis - body.halfHips * hips;
  at(pose, Joint::LeadAnkle) = {body.halfStance, addressHub.y(), body.ankle};
  // At the finish the trail foot stands on its toes.
  at(pose, Joint::TrailAnkle) = {-body.halfStance + 0.05 * h * up, addressHub.y(),
                                 body.ankle + 0.07 * h * up};
  // Knees bend toward the ball, at the finish toward the target.
  const Vec3 knees(0.8 * up, 1, 0);
  at(pose, Joint::LeadKnee) =
      bend({at(pose, Joint::LeadHip), at(pose, Joint::LeadAnkle), body.thigh, body.shin, knees});
  at(pose, Joint::TrailKnee) =
      bend({at(pose, Joint::TrailHip), at(pose, Joint::TrailAnkle), body.thigh, body.shin, knees});
}

/// Elbows hang below the arms, at the finish also ahead of them.
void placeElbows(const BodyPathInput& input, double arms, KeyPose& pose) {
  const BodyLengths& body = input.body;
  const Vec3 pole(0.75 * bodySchedule(input.style).standUp(arms), 0, -1);
  const Vec3& grip = at(pose, Joint::Grip);
  at(pose, Joint::LeadElbow) = bend({at(pose, Joint::LeadShoulder), grip, body.upperArm, body.forearm, pole});
  at(pose, Joint::TrailElbow) =
      bend({at(pose, Joint::TrailShoulder), grip, body.upperArm, body.forearm, pole});
}

std::vector<double> inRadians(std::initializer_list<double> degrees) {
  std::vector<double> radians;
  for (const double angle : degrees) radians.push_back(angle * kDegree);
  return radians;
}

/// Angles of the arms at which the body is posed exactly; closer together where the arms fold.
std::span<const double> keyAngles(SwingStyle style) {
  static const std::vector<double> expected =
      inRadians({-150, -140, -128, -116, -104, -90, -70, -45, -20, 0, 20, 45, 70, 90, 110, 130});
  static const std::vector<double> straight = inRadians(
      {-180, -157.5, -135, -112.5, -90, -67.5, -45, -22.5, 0, 22.5, 45, 67.5, 90, 112.5, 135, 157.5, 180});
  return style == SwingStyle::Expected ? expected : straight;
}

/// The hands, from the middle of their arc.
Vec3 armAt(const BodyPath& path, double arms) {
  const double reach = path.arm * bodySchedule(path.style).armReach(arms);
  return reach * linkDirection(arms, planeSlopeAt(path, arms));
}

}  // namespace

double planeSlopeAt(const BodyPath& path, double arms) {
  return path.planeSlope - kFinishFlattening * bodySchedule(path.style).flattening(arms);
}

Rates planeSlopeOver(const BodyPath& path, double fromArms, double toArms) {
  Rates rates = kFinishFlattening * bodySchedule(path.style).flattening.over(fromArms, toArms);
  rates.size = path.planeSlope;
  return rates;
}

Vec3 jointAt(const BodyPath& path, Joint joint, double arms) {
  if (joint != Joint::Grip) return path.joints[static_cast<std::size_t>(joint)](arms);
  const Vec3 hub = path.joints[static_cast<std::size_t>(Joint::Hub)](arms);
  return hub + bodySchedule(path.style).awayFromBall(arms) * path.arcShift + armAt(path, arms);
}

Rates jointOver(const BodyPath& path, Joint joint, double fromArms, double toArms) {
  if (joint != Joint::Grip) return path.joints[static_cast<std::size_t>(joint)].over(fromArms, toArms);
  const BodySchedule& schedule = bodySchedule(path.style);
  const Rates arms{0, 1, 0};
  return path.joints[static_cast<std::size_t>(Joint::Hub)].over(fromArms, toArms) +
         path.arcShift.norm() * schedule.awayFromBall.over(fromArms, toArms) +
         path.arm * (schedule.armReach.over(fromArms, toArms) *
                     turned(arms, planeSlopeOver(path, fromArms, toArms)));
}

BodyPath bodyPathOf(const BodyPathInput& input) {
  BodyPath path;
  path.style = input.style;
  path.planeSlope = input.posture.planeSlope;
  path.arm = input.posture.arm();
  path.arcShift = input.arcShift;

  const std::span<const double> angles = keyAngles(input.style);
  std::vector<KeyPose> poses(angles.size());
  for (std::size_t i = 0; i < angles.size(); ++i) {
    placeTrunk(input, angles[i], poses[i]);
    at(poses[i], Joint::Grip) = at(poses[i], Joint::Hub) +
                                bodySchedule(input.style).awayFromBall(angles[i]) * input.arcShift +
                                armAt(path, angles[i]);
    placeElbows(input, angles[i], poses[i]);
  }
  std::vector<Vec3> points(angles.size());
  for (std::size_t joint = 0; joint < kJoints; ++joint) {
    if (joint == static_cast<std::size_t>(Joint::Grip)) continue;
    for (std::size_t i = 0; i < angles.size(); ++i) points[i] = poses[i][joint];
    path.joints[joint] = smoothCurve(angles, points);
  }
  return path;
}

std::span<const Limb> limbs() {
  using enum Joint;
  static constexpr std::array kLimbs{
      Limb{BodyPart::Head, HeadLow, HeadHigh, &BodyLengths::headRadius},
      Limb{BodyPart::Torso, Pelvis, Chest, &BodyLengths::chestRadius},
      Limb{BodyPart::Torso, LeadShoulder, TrailShoulder, &BodyLengths::shoulderRadius},
      Limb{BodyPart::Torso, LeadHip, TrailHip, &BodyLengths::pelvisRadius},
      Limb{BodyPart::LeadArm, LeadShoulder, LeadElbow, &BodyLengths::upperArmRadius},
      Limb{BodyPart::LeadArm, LeadElbow, Grip, &BodyLengths::forearmRadius},
      Limb{BodyPart::TrailArm, TrailShoulder, TrailElbow, &BodyLengths::upperArmRadius},
      Limb{BodyPart::TrailArm, TrailElbow, Grip, &BodyLengths::forearmRadius},
      Limb{BodyPart::Legs, LeadHip, LeadKnee, &BodyLengths::thighRadius},
      Limb{BodyPart::Legs, TrailHip, TrailKnee, &BodyLengths::thighRadius},
      Limb{BodyPart::Legs, LeadKnee, LeadAnkle, &BodyLengths::shinRadius},
      Limb{BodyPart::Legs, TrailKnee, TrailAnkle, &BodyLengths::shinRadius}};
  return kLimbs;
}

}  // namespace baywright
