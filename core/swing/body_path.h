// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <span>

#include "swing/body.h"
#include "swing/curve.h"
#include "swing/posture.h"
#include "swing/schedule.h"

namespace baywright {

enum class BodyPart { Head, Torso, LeadArm, TrailArm, Legs, Shaft, ClubHead };

enum class Joint {
  Hub,  ///< middle of the shoulders, about which the arms turn
  Grip,
  HeadLow,
  HeadHigh,
  Chest,
  Pelvis,
  LeadShoulder,
  TrailShoulder,
  LeadElbow,
  TrailElbow,
  LeadHip,
  TrailHip,
  LeadKnee,
  TrailKnee,
  LeadAnkle,
  TrailAnkle
};
inline constexpr std::size_t kJoints = 16;

/// The joints of a right-hander over the angle of the arms (radians, positive in the backswing), in the swing
/// frame (envelope.h). The hands go exactly round the arc of the two-link swing; every other joint follows a
/// smooth curve through postures every 15 to 25 degrees, in which the limbs have their lengths: between them
/// a limb is right to 5 %.
struct BodyPath {
  SwingStyle style = SwingStyle::Expected;
  double planeSlope = 0;
  double arm = 0;  ///< hub to hands at impact
  Vec3 arcShift =
      Vec3::Zero();  ///< of the middle of the arc from the hub while the club is away from the ball
  std::array<PointCurve, kJoints> joints;  ///< Grip stays empty: gripAt

  bool operator==(const BodyPath&) const = default;
};

struct BodyPathInput {
  BodyLengths body;
  AddressPosture posture;
  SwingStyle style = SwingStyle::Expected;
  Vec3 arcShift = Vec3::Zero();
};

BodyPath bodyPathOf(const BodyPathInput& input);

/// Slope of the swing plane when the arms are at an angle; its bounds over a range of angles.
double planeSlopeAt(const BodyPath& path, double arms);
Rates planeSlopeOver(const BodyPath& path, double fromArms, double toArms);

Vec3 jointAt(const BodyPath& path, Joint joint, double arms);
Rates jointOver(const BodyPath& path, Joint joint, double fromArms, double toArms);

/// A limb is a capsule between two joints.
struct Limb {
  BodyPart part;
  Joint from;
  Joint to;
  double BodyLengths::*radius;
};
std::span<const Limb> limbs();

}  // namespace baywright
