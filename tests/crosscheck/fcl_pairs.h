// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <fcl/fcl.h>

#include <memory>

#include "geometry/closest.h"
#include "random_shapes.h"

/// A capsule near a box, in our shapes and in FCL's.
namespace baywright::test {

struct FclPair {
  Capsule capsule;
  ConvexPolyhedron box;
  fcl::CollisionObjectd theirCapsule;
  fcl::CollisionObjectd theirBox;
};

inline fcl::Transform3d fclPlaced(const Mat3& axes, const Vec3& at) {
  fcl::Transform3d map = fcl::Transform3d::Identity();
  map.linear() = axes;
  map.translation() = at;
  return map;
}

inline FclPair randomFclPair(RandomShapes& random) {
  const Capsule capsule = random.capsule(1.2);
  const Vec3 run = capsule.b - capsule.a;
  const Mat3 upright = Eigen::Quaterniond::FromTwoVectors(Vec3::UnitZ(), run.normalized()).toRotationMatrix();
  const Vec3 half(random.between(0.05, 0.6), random.between(0.05, 0.6), random.between(0.05, 0.6));
  const Mat3 axes =
      Eigen::Quaterniond(Eigen::AngleAxisd(random.between(0, 6.28), random.point(1).normalized()))
          .toRotationMatrix();
  const Vec3 at = random.point(1.2);
  return {capsule, *boxFrom(TiltedBox{at, Mat3(axes * half.asDiagonal())}),
          fcl::CollisionObjectd(std::make_shared<fcl::Capsuled>(capsule.radius, run.norm()),
                                fclPlaced(upright, 0.5 * (capsule.a + capsule.b))),
          fcl::CollisionObjectd(std::make_shared<fcl::Boxd>(2 * half), fclPlaced(axes, at))};
}

inline double fclDistance(const FclPair& pair) {
  fcl::DistanceRequestd request(true, true);
  fcl::DistanceResultd result;
  return fcl::distance(&pair.theirCapsule, &pair.theirBox, request, result);
}

}  // namespace baywright::test
