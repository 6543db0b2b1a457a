// SPDX-License-Identifier: Apache-2.0
#include "drawing/solids.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "drawn_job.h"
#include "mesh_checks.h"

namespace baywright {
namespace {

using namespace baywright::testing;

std::vector<SceneSolid> scene(const Job& job, const SceneOptions& options = {}) {
  return sceneSolids(job, handMadeAssessment(job), options);
}

std::vector<SceneSolid> on(const std::vector<SceneSolid>& solids, Layer layer) {
  std::vector<SceneSolid> found;
  for (const SceneSolid& solid : solids) {
    if (solid.layer == layer) found.push_back(solid);
  }
  return found;
}

Eigen::AlignedBox3f boxOf(const SceneSolid& solid) {
  Eigen::AlignedBox3f box;
  for (const Eigen::Vector3f& p : solid.vertices) box.extend(p);
  return box;
}

double areaOf(const SceneSolid& solid) {
  double area = 0;
  for (std::size_t i = 0; i + 2 < solid.indices.size(); i += 3) {
    const Eigen::Vector3f a = solid.vertices[solid.indices[i]];
    area +=
        (solid.vertices[solid.indices[i + 1]] - a).cross(solid.vertices[solid.indices[i + 2]] - a).norm() / 2;
  }
  return area;
}

TEST(SceneSolids, AreSoundMeshes) {
  for (const Job& job : {smallGarage(), slopedWorkshop()}) {
    for (const SceneSolid& solid : scene(job)) {
      EXPECT_FALSE(solid.indices.empty());
      EXPECT_EQ(solid.vertices.size(), solid.normals.size());
      for (const std::uint32_t index : solid.indices) ASSERT_LT(index, solid.vertices.size());
      for (const Eigen::Vector3f& p : solid.vertices) EXPECT_TRUE(p.allFinite());
      EXPECT_EQ(turnedNormals(solid.vertices, solid.normals, solid.indices), 0) << styleOf(solid.layer).name;
    }
  }
}

TEST(SceneSolids, ComeOpaqueFirst) {
  const auto solids = scene(slopedWorkshop());
  EXPECT_TRUE(std::is_partitioned(solids.begin(), solids.end(),
                                  [](const SceneSolid& solid) { return solid.opacity >= 1; }));
  EXPECT_LT(solids.back().opacity, 1);
}

TEST(SceneSolids, WallsFaceIntoTheRoomWithoutTheirOpenings) {
  const Job job = smallGarage();
  double area = 0;
  for (const SceneSolid& wall : on(scene(job), Layer::Walls)) {
    area += areaOf(wall);
    const Eigen::Vector3f inward = Eigen::Vector3f(3, 2, 1.3f) - wall.vertices.front();
    EXPECT_GT(wall.normals.front().dot(inward), 0);
  }
  EXPECT_NEAR(area, 2 * (6 + 4) * 2.6 - 0.9 * 2.03 - 1.2 * 1.1, 1e-3);
}

TEST(SceneSolids, WallsReachUpToASlopedAndSteppedCeiling) {
  const Job job = slopedWorkshop();
  const auto solids = scene(job);
  const auto walls = on(solids, Layer::Walls);
  ASSERT_EQ(walls.size(), 6u);
  // Wall A at y = 0: 1.5 m at 2.25, where the lower part is, then 5.5 m at 2.3.
  EXPECT_NEAR(areaOf(walls[0]), 1.5 * 2.25 + 5.5 * 2.3, 2e-3);
  // Wall B at x = 7 climbs with the slope.
  EXPECT_NEAR(areaOf(walls[1]), 3.5 * (2.3 + 3.0) / 2, 2e-3);
}

TEST(SceneSolids, FloorAndCeilingFaceEachOther) {
  const auto solids = scene(smallGarage());
  const auto floor = on(solids, Layer::Floor);
  ASSERT_EQ(floor.size(), 1u);
  EXPECT_NEAR(areaOf(floor[0]), 24, 1e-4);
  EXPECT_GT(floor[0].normals.front().z(), 0.99f);
  const auto ceiling = on(solids, Layer::Overhead);
  ASSERT_EQ(ceiling.size(), 1u);
  EXPECT_NEAR(areaOf(ceiling[0]), 24, 1e-4);
  EXPECT_LT(ceiling[0].normals.front().z(), -0.99f);
}

TEST(SceneSolids, LeaveTheCeilingOutOnRequest) {
  SceneOptions options;
  options.ceiling = false;
  EXPECT_TRUE(on(scene(smallGarage(), options), Layer::Overhead).empty());
}

TEST(SceneSolids, FixturesFillTheirShape) {
  const Job job = smallGarage();
  const auto solids = scene(job);
  const auto fixtures = on(solids, Layer::Fixtures);
  ASSERT_EQ(fixtures.size(), 1u);
  EXPECT_NEAR(volumeOf(fixtures[0].vertices, fixtures[0].indices), 1.5 * 0.4 * 1.9, 1e-4);
  EXPECT_EQ(fixtures[0].id, idNamed(job, "Shelving"));
}

TEST(SceneSolids, EnvelopesStandAtTheirStrikePointAndCarryTheVerdict) {
  const Job job = smallGarage();
  const auto solids = scene(job);
  const auto swings = on(solids, Layer::Swing);
  ASSERT_EQ(swings.size(), 1u);
  EXPECT_EQ(swings[0].verdict, Verdict::Blocked);
  EXPECT_LT(swings[0].opacity, 1);
  // Strike point at (2.9, 2.0); a right-hander facing +x stands on the left, so at greater y.
  const auto box = boxOf(swings[0]);
  EXPECT_NEAR(box.center().x(), 2.9, 0.05);
  EXPECT_NEAR(box.max().y(), 2.0 + 1.05, 0.08);
  EXPECT_GT(volumeOf(swings[0].vertices, swings[0].indices), 0.2);
}

TEST(SceneSolids, ShowOnlyTheZonesThatAreAskedFor) {
  SceneOptions options;
  options.zones.swing = options.zones.swingBound = options.zones.beam = options.zones.capture =
      options.zones.rebound = false;
  const auto solids = scene(smallGarage(), options);
  for (const Layer layer : {Layer::Swing, Layer::SwingBound, Layer::Beam, Layer::Capture, Layer::Rebound}) {
    EXPECT_TRUE(on(solids, layer).empty()) << styleOf(layer).name;
    EXPECT_FALSE(on(scene(smallGarage()), layer).empty()) << styleOf(layer).name;
  }
}

TEST(SceneSolids, BeamRunsFromTheLensToTheScreen) {
  const auto solids = scene(smallGarage());
  const auto beams = on(solids, Layer::Beam);
  ASSERT_EQ(beams.size(), 1u);
  const auto box = boxOf(beams[0]);
  EXPECT_NEAR(box.min().x(), 5.5 - 3.2, 1e-3);
  EXPECT_NEAR(box.max().x(), 5.5, 1e-3);
  EXPECT_GT(volumeOf(beams[0].vertices, beams[0].indices), 0);
}

TEST(SceneSolids, PutGolfersInTheAskedMoment) {
  const Job job = smallGarage();
  Assessment assessment = handMadeAssessment(job);
  auto swing = swingOf(job.golfers.front(), job.golfers.front().clubs.front());
  ASSERT_TRUE(swing);
  assessment.swings.front().swing = std::make_shared<Swing>(*swing);
  SceneOptions top;
  top.moment = 0.4;
  const auto still = sceneSolids(job, assessment, {});
  const auto moving = sceneSolids(job, assessment, top);
  const auto people = on(still, Layer::People);
  ASSERT_EQ(people.size(), 1u);
  EXPECT_EQ(people[0].id, job.golfers.front().id);
  EXPECT_GT(boxOf(on(moving, Layer::People)[0]).max().z(), boxOf(people[0]).max().z());
}

TEST(SceneSolids, OfABuilderAreThoseOfTheFunction) {
  SceneBuilder builder;
  const Job job = slopedWorkshop();
  const Assessment assessment = handMadeAssessment(job);
  builder.build(smallGarage(), handMadeAssessment(smallGarage()), {});
  const auto kept = builder.build(job, assessment, {});
  const auto fresh = sceneSolids(job, assessment, {});
  ASSERT_EQ(kept.size(), fresh.size());
  for (std::size_t i = 0; i < kept.size(); ++i) {
    EXPECT_EQ(kept[i].vertices, fresh[i].vertices);
    EXPECT_EQ(kept[i].indices, fresh[i].indices);
  }
}

TEST(SceneSolids, OfAnEmptyJobAreItsKit) {
  const Job job = newJob();
  const auto solids = sceneSolids(job, handMadeAssessment(job), {});
  EXPECT_TRUE(on(solids, Layer::Floor).empty());
  EXPECT_FALSE(on(solids, Layer::Bay).empty());
}

}  // namespace
}  // namespace baywright
