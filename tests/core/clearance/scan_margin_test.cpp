// SPDX-License-Identifier: Apache-2.0
#include "clearance/scan_margin.h"

#include <gtest/gtest.h>

#include "findings.h"
#include "geometry/mesh.h"

namespace baywright {
namespace {

using namespace testing;

std::shared_ptr<const TriangleMesh> wallMesh(double y) {
  const auto f = [](double v) { return static_cast<float>(v); };
  std::vector<Eigen::Vector3f> corners = {{0, f(y), 0}, {12, f(y), 0}, {12, f(y), 4}, {0, f(y), 4}};
  return std::make_shared<const TriangleMesh>(
      *TriangleMesh::from(std::move(corners), {{0, 1, 2}, {0, 2, 3}}));
}

RoomScan meshScan(double y) {
  RoomScan scan;
  scan.id = Id{900};
  scan.name = "Scan";
  scan.mesh = wallMesh(y);
  return scan;
}

TEST(ScanObstacle, LeavesTheFloorOut) {
  RoomScan scan;
  scan.mesh = std::make_shared<const TriangleMesh>(
      *TriangleMesh::from({{0, 0, 0}, {4, 0, 0.01f}, {4, 4, 0}}, {{0, 1, 2}}));
  EXPECT_FALSE(scanObstacle(scan));
}

TEST(ScanObstacle, IsNoneWhereTheFitterSaysSo) {
  RoomScan scan = meshScan(1);
  EXPECT_TRUE(scanObstacle(scan));
  scan.isObstacle = false;
  EXPECT_FALSE(scanObstacle(scan));
}

TEST(ScanMargin, AgreesWithTheSameWallAsASolid) {
  const double wallAt = 2.2;
  const Job plain = roomyHall().withoutMonitor().job();
  Job scanned = plain;
  scanned.roomScans.push_back(meshScan(wallAt));
  const Finding scan = findingOf(scanned, "swing_room/<driver>/scan");
  ASSERT_TRUE(scan.margin);
  const Finding wall = findingOf(plain, "swing_room/<driver>/wall");
  // Robin shoots along x from y = 4.5; wall A is at y = 0, the scanned one at 2.2.
  EXPECT_TRUE(contains(wall.sentence, "wall"));
  const Job shifted = roomyHall().withoutMonitor().withBox("Block", {6, wallAt - 0.05}, 12, 0.1, 0, 4).job();
  EXPECT_NEAR(scan.margin->value, findingOf(shifted, "swing_room/<driver>/other").margin->value, 1e-5);
}

TEST(ScanMargin, TreeAgreesWithLookingAtEverything) {
  const Job job = roomyHall().job();
  const Swing swing = *swingOf(job.golfers[0], job.golfers[0].clubs[0]);
  const PlacedSwing at = placed(swing.expected, {Mat3::Identity(), {6, 4.5, 0}});
  const auto obstacle = scanObstacle(meshScan(2.5));
  ASSERT_TRUE(obstacle);
  const auto fast = tightest(swing.expected, at, *obstacle, {0.15, 0.005, 3});
  const auto slow = tightest(swing.expected, at, *obstacle, {0.15, 0.005, 3}, Search::Everything);
  ASSERT_TRUE(fast && slow);
  EXPECT_EQ(fast->margin, slow->margin);
}

TEST(ScanMargin, WorksOnPointsToo) {
  auto points = std::make_shared<std::vector<Eigen::Vector3f>>();
  for (float x = 0; x < 12; x += 0.02f) {
    for (float z = 0.1f; z < 4; z += 0.02f) points->push_back({x, 2.2f, z});
  }
  Job job = roomyHall().withoutMonitor().job();
  RoomScan scan;
  scan.id = Id{901};
  scan.name = "Cloud";
  scan.points = points;
  job.roomScans.push_back(scan);
  Job meshed = job;
  meshed.roomScans[0] = meshScan(2.2);
  // Points 2 cm apart are at most 14 mm from any place of the wall: a gap of some decimetres grows by under a
  // millimetre.
  const double cloud = findingOf(job, "swing_room/<driver>/scan").margin->value;
  const double mesh = findingOf(meshed, "swing_room/<driver>/scan").margin->value;
  EXPECT_GE(cloud, mesh - 1e-6);
  EXPECT_LE(cloud, mesh + 0.002);
}

}  // namespace
}  // namespace baywright
