// SPDX-License-Identifier: Apache-2.0
#include "drawing/scene_scans.h"

#include <gtest/gtest.h>

#include "drawing/scene_pick.h"
#include "support/job_builder.h"

namespace baywright::detail {
namespace {

using namespace testing;

using Points = std::vector<Eigen::Vector3f>;

/// The inside of the room and a crate of half a metre about (2, 1.5), every two centimetres.
RoomScan roomWithCrate() {
  Points points;
  const auto patch = [&](const Vec3& at, const Vec3& u, const Vec3& v) {
    const int nu = static_cast<int>(u.norm() / 0.02);
    const int nv = static_cast<int>(v.norm() / 0.02);
    for (int i = 0; i <= nu; ++i) {
      for (int j = 0; j <= nv; ++j)
        points.push_back((at + u * i / std::max(1, nu) + v * j / std::max(1, nv)).cast<float>());
    }
  };
  patch({0, 0, 0}, {4, 0, 0}, {0, 3, 0});
  patch({0, 0, 2.5}, {4, 0, 0}, {0, 3, 0});
  patch({0, 0, 0}, {4, 0, 0}, {0, 0, 2.5});
  patch({0, 3, 0}, {4, 0, 0}, {0, 0, 2.5});
  patch({0, 0, 0}, {0, 3, 0}, {0, 0, 2.5});
  patch({4, 0, 0}, {0, 3, 0}, {0, 0, 2.5});
  for (const double x : {1.75, 2.25}) patch({x, 1.25, 0}, {0, 0.5, 0}, {0, 0, 0.5});
  for (const double y : {1.25, 1.75}) patch({1.75, y, 0}, {0.5, 0, 0}, {0, 0, 0.5});
  patch({1.75, 1.25, 0.5}, {0.5, 0, 0}, {0, 0.5, 0});
  RoomScan scan;
  scan.points = std::make_shared<const Points>(std::move(points));
  return scan;
}

Aabb3 boundsOf(const MeshBuilder& mesh) {
  Aabb3 bounds;
  for (const Eigen::Vector3f& p : mesh.vertices) {
    const Vec3 at = p.cast<double>();
    bounds = joined(bounds, {at, at});
  }
  return bounds;
}

TEST(SceneScans, ShowWhatTheModelDoesNotAccountFor) {
  const Job job = garage(4, 3).withCeiling(2.5).job();
  const Aabb3 bounds = boundsOf(leftoverOf(roomWithCrate(), job.room));
  EXPECT_TRUE(bounds.low.isApprox(Vec3(1.75, 1.25, 0.1), 0.06)) << bounds.low.transpose();
  EXPECT_TRUE(bounds.high.isApprox(Vec3(2.3, 1.8, 0.55), 0.06)) << bounds.high.transpose();
}

TEST(SceneScans, ShowNothingOnceEverythingIsModelled) {
  const Job job = garage(4, 3).withCeiling(2.5).withBox("Crate", {2, 1.5}, 0.5, 0.5, 0, 0.5).job();
  EXPECT_TRUE(leftoverOf(roomWithCrate(), job.room).indices.empty());
}

TEST(SceneScans, ShowEverythingBeforeThereAreWalls) {
  const Aabb3 bounds = boundsOf(leftoverOf(roomWithCrate(), Room{}));
  EXPECT_LT(bounds.low.x(), 0.01);
  EXPECT_GT(bounds.high.z(), 2.49);
}

TEST(SceneScans, FollowTheRoomAndGiveTheSameAsAFreshLook) {
  const RoomScan scan = roomWithCrate();
  ScanLeftovers kept;
  const Job first = garage(4, 3).withCeiling(2.5).job();
  const Job second = garage(4, 3).withCeiling(2.5).withBox("Crate", {2, 1.5}, 0.5, 0.5, 0, 0.5).job();
  EXPECT_EQ(kept.of(scan, first.room).indices, leftoverOf(scan, first.room).indices);
  EXPECT_TRUE(kept.of(scan, second.room).indices.empty());
  EXPECT_EQ(kept.of(scan, first.room).vertices, leftoverOf(scan, first.room).vertices);
}

TEST(SceneScans, AreHiddenWithTheScanAndPickedWithTheirFrontsOutward) {
  Job job = garage(4, 3).withCeiling(2.5).job();
  RoomScan scan = roomWithCrate();
  scan.id = job.takeId();
  job.roomScans = {scan};
  SceneOptions options;
  options.ceiling = false;
  const auto picked = [&] {
    return pickSolid(sceneSolids(job, Assessment{}, options), {2, 1.5, 2.2}, {0, 0, -1});
  };
  ASSERT_TRUE(picked());
  EXPECT_EQ(picked()->id, scan.id);
  EXPECT_NEAR(picked()->point.z(), 0.55, 0.051);
  job.roomScans[0].visible = false;
  ASSERT_TRUE(picked());
  EXPECT_NE(picked()->id, scan.id);
}

}  // namespace
}  // namespace baywright::detail
