// SPDX-License-Identifier: Apache-2.0
#include "swing/body_path.h"

#include <gtest/gtest.h>

#include "swings.h"

namespace baywright {
namespace {

using enum Joint;

struct Bone {
  Joint from;
  Joint to;
  double BodyLengths::*length;
};
constexpr Bone kBones[] = {{LeadShoulder, LeadElbow, &BodyLengths::upperArm},
                           {LeadElbow, Grip, &BodyLengths::forearm},
                           {TrailShoulder, TrailElbow, &BodyLengths::upperArm},
                           {TrailElbow, Grip, &BodyLengths::forearm},
                           {LeadHip, LeadKnee, &BodyLengths::thigh},
                           {LeadKnee, LeadAnkle, &BodyLengths::shin},
                           {TrailHip, TrailKnee, &BodyLengths::thigh},
                           {TrailKnee, TrailAnkle, &BodyLengths::shin}};

TEST(BodyPath, KeepsTheLengthsOfLimbsThroughTheSwing) {
  for (const double stature : {1.525, 1.755, 2.0}) {
    for (const Club& club : {bag()[0], bag()[3]}) {
      const SwingPath path = pathOf(stature, club);
      for (double arms = -150; arms <= 130; arms += 2.5) {
        for (const Bone& bone : kBones) {
          const double length = (jointAt(path.joints, bone.from, arms * kDegree) -
                                 jointAt(path.joints, bone.to, arms * kDegree))
                                    .norm();
          EXPECT_NEAR(length / (path.body.*bone.length), 1, 0.05)
              << stature << " " << club.name << " arms " << arms << " bone " << int(bone.from);
        }
      }
    }
  }
}

TEST(BodyPath, BendsTheBackButDoesNotStretchIt) {
  for (const Club& club : {bag()[0], bag()[3]}) {
    const SwingPath path = pathOf(1.755, club);
    for (double arms = -150; arms <= 130; arms += 2.5) {
      const double back =
          (jointAt(path.joints, Pelvis, arms * kDegree) - jointAt(path.joints, Hub, arms * kDegree)).norm();
      EXPECT_GT(back, 0.90 * path.body.trunk) << arms;
      EXPECT_LT(back, 1.02 * path.body.trunk) << arms;
    }
  }
}

TEST(BodyPath, MovesWithoutJumps) {
  const SwingPath path = pathOf(1.755, bag()[0]);
  for (std::size_t joint = 0; joint < kJoints; ++joint) {
    for (double arms = -160; arms < 140; arms += 0.1) {
      const Vec3 step = jointAt(path.joints, Joint(joint), (arms + 0.1) * kDegree) -
                        jointAt(path.joints, Joint(joint), arms * kDegree);
      EXPECT_LT(step.norm(), 0.005) << joint << " " << arms;
    }
  }
}

TEST(BodyPath, BoundsTheMotionOfEveryJoint) {
  const SwingPath path = pathOf(1.755, bag()[0]);
  for (std::size_t joint = 0; joint < kJoints; ++joint) {
    for (double from = -150; from < 130; from += 20) {
      const Rates bound = jointOver(path.joints, Joint(joint), from * kDegree, (from + 20) * kDegree);
      const double h = 0.05 * kDegree;
      for (double arms = from * kDegree + h; arms < (from + 20) * kDegree - h; arms += h) {
        const Vec3 before = jointAt(path.joints, Joint(joint), arms - h);
        const Vec3 here = jointAt(path.joints, Joint(joint), arms);
        const Vec3 after = jointAt(path.joints, Joint(joint), arms + h);
        EXPECT_GE(bound.first, (after - here).norm() / h - 1e-6);
        EXPECT_GE(bound.second, (after - 2 * here + before).norm() / (h * h) - 1e-4) << joint << " " << from;
      }
    }
  }
}

TEST(BodyPath, TurnsTheShouldersBackAndThrough) {
  const SwingPath path = pathOf(1.755, bag()[0]);
  const auto leadShoulder = [&](double arms) {
    return Vec3(jointAt(path.joints, LeadShoulder, arms * kDegree) -
                jointAt(path.joints, Hub, arms * kDegree));
  };
  EXPECT_GT(leadShoulder(0).x(), 0.15);      // at address toward the target
  EXPECT_GT(leadShoulder(130).y(), 0.15);    // at the top under the chin, toward the ball
  EXPECT_LT(leadShoulder(-150).y(), -0.15);  // at the finish behind
}

TEST(BodyPath, FinishesTallOverTheLeadFoot) {
  const SwingPath path = pathOf(1.755, bag()[0]);
  const Vec3 crown = jointAt(path.joints, HeadHigh, -150 * kDegree);
  EXPECT_NEAR(crown.z() + path.body.headRadius, 0.98 * 1.755, 0.02);
  EXPECT_NEAR(jointAt(path.joints, Pelvis, -150 * kDegree).x(), path.body.halfStance, 0.06);
}

TEST(BodyPath, ShiftsTheArcOnlyAwayFromTheBall) {
  const BodyLengths body = bodyOf(1.755);
  BodyPathInput input{.body = body, .posture = postureOf(body, bag()[0])};
  const BodyPath still = bodyPathOf(input);
  input.arcShift = {0, -0.05, 0.1};
  const BodyPath shifted = bodyPathOf(input);
  EXPECT_EQ(jointAt(shifted, Grip, 0), jointAt(still, Grip, 0));
  for (const double arms : {-120.0, -60.0, 60.0, 120.0}) {
    const Vec3 moved = jointAt(shifted, Grip, arms * kDegree) - jointAt(still, Grip, arms * kDegree);
    EXPECT_LT((moved - input.arcShift).norm(), 1e-12) << arms;
  }
}

}  // namespace
}  // namespace baywright
