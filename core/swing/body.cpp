// SPDX-License-Identifier: Apache-2.0
#include "swing/body.h"

namespace baywright {

BodyLengths bodyOf(double stature) {
  const double h = stature;
  BodyLengths body{};
  body.stature = h;
  body.shoulder = 0.818 * h;
  body.hip = 0.530 * h;
  body.ankle = 0.039 * h;
  body.trunk = body.shoulder - body.hip;
  body.upperArm = 0.186 * h;
  body.forearm = (0.146 + 0.108 / 2) * h;  // to the middle of the closed hand
  body.halfShoulders = 0.118 * h;
  body.halfHips = 0.050 * h;
  body.halfStance = 0.120 * h;
  body.footAhead = 0.119 * h;
  body.thigh = 0.245 * h;
  body.shin = 0.246 * h;
  body.neck = 0.052 * h;
  body.crown = h - body.shoulder;
  body.headRadius = 0.053 * h;
  body.chestRadius = 0.075 * h;
  body.shoulderRadius = 0.045 * h;
  body.pelvisRadius = 0.058 * h;
  body.upperArmRadius = 0.028 * h;
  body.forearmRadius = 0.024 * h;
  body.thighRadius = 0.045 * h;
  body.shinRadius = 0.032 * h;
  return body;
}

}  // namespace baywright
