// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace baywright {

/// Lengths of a standing adult in metres, as fixed shares of stature H (1.0 to 2.3 m; shoes are taken as part
/// of it).
///
/// Sources of the shares: Drillis and Contini 1966 as printed in Winter, Biomechanics and Motor Control of
/// Human Movement, fig. 4.1 (heights of shoulder 0.818, hip 0.530, ankle 0.039; upper arm 0.186, forearm
/// 0.146, hand 0.108); checked against the means of ANSUR II 2012 (4,082 men, 1,986 women: shoulder 0.820,
/// acromion to grip 0.390 and 0.386, half the shoulder breadth 0.118 and 0.112). Girths are rounded from body
/// breadths and depths (common practice, no source). One person differs from the mean share by about 1.2 %
/// (shoulder height) to 3 % (reach).
struct BodyLengths {
  double stature;
  double shoulder;       ///< height of the shoulders standing upright
  double hip;            ///< height of the hip joints standing upright
  double ankle;          ///< height of the ankle
  double trunk;          ///< middle of the hips to middle of the shoulders
  double upperArm;       ///< shoulder to elbow
  double forearm;        ///< elbow to the middle of the gripping hand
  double halfShoulders;  ///< middle of the chest to one shoulder joint
  double halfHips;       ///< middle of the pelvis to one hip joint
  double halfStance;     ///< middle of the stance to one ankle, full swing
  double footAhead;      ///< ankle to the tip of the toes
  double thigh;
  double shin;
  double neck;   ///< middle of the shoulders to the lower end of the head
  double crown;  ///< middle of the shoulders to the top of the head

  double headRadius;
  double chestRadius;
  double shoulderRadius;
  double pelvisRadius;
  double upperArmRadius;
  double forearmRadius;
  double thighRadius;
  double shinRadius;

  bool operator==(const BodyLengths&) const = default;

  double arm() const { return upperArm + forearm; }  ///< shoulder to grip, straight
};

BodyLengths bodyOf(double stature);

}  // namespace baywright
