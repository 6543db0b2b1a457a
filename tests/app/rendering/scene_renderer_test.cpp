// SPDX-License-Identifier: Apache-2.0
#include "rendering/scene_renderer.h"

#include <gtest/gtest.h>

#include "clearance/assess.h"
#include "drawing/scene_pick.h"
#include "rendering/gl_probe.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

/// A square that faces up, one metre wide, round the origin.
SceneSolid square(Layer layer, float z) {
  SceneSolid solid;
  solid.id = Id{1};
  solid.layer = layer;
  solid.vertices = {{-0.5F, -0.5F, z}, {0.5F, -0.5F, z}, {0.5F, 0.5F, z}, {-0.5F, 0.5F, z}};
  solid.normals.assign(4, {0, 0, 1});
  solid.indices = {0, 1, 2, 0, 2, 3};
  return solid;
}

class Renderer : public ::testing::Test {
 protected:
  void SetUp() override {
    const GlInfo gl = probeGl();
    if (!gl.usable) GTEST_SKIP() << gl.reason.toStdString();
  }
};

TEST_F(Renderer, ShowsASolidWhereItIs) {
  SceneRenderer renderer;
  renderer.setSize({200, 200});
  renderer.setSolids({square(Layer::Fixtures, 0)}, {});
  OrbitCamera camera;
  camera.pitch = -89;
  camera.distance = 3;
  renderer.setCamera(camera);
  const QImage image = renderer.settledImage();
  ASSERT_FALSE(image.isNull());
  EXPECT_NE(image.pixel(100, 100), image.pixel(5, 5));
}

TEST_F(Renderer, ShowsNothingFromBehind) {
  SceneRenderer renderer;
  renderer.setSize({200, 200});
  renderer.setSolids({square(Layer::Fixtures, 0)}, {});
  OrbitCamera camera;
  camera.pitch = 60;
  camera.distance = 3;
  renderer.setCamera(camera);
  const QImage image = renderer.settledImage();
  ASSERT_FALSE(image.isNull());
  EXPECT_EQ(image.pixel(100, 100), image.pixel(5, 5));
}

TEST_F(Renderer, FollowsAChangeOfTheSolids) {
  SceneRenderer renderer;
  renderer.setSize({120, 120});
  renderer.setSolids({square(Layer::Fixtures, 0), square(Layer::Floor, -0.2F)}, {});
  OrbitCamera camera;
  camera.pitch = -89;
  camera.distance = 3;
  renderer.setCamera(camera);
  const QRgb before = renderer.settledImage().pixel(60, 60);
  SceneRenderer::Look look;
  look.selected = Id{1};
  renderer.setSolids({square(Layer::Fixtures, 0)}, look);
  EXPECT_NE(renderer.settledImage().pixel(60, 60), before);
}

TEST_F(Renderer, DrawsAWholeRoomTheSameTwice) {
  const Job job = testing::garage(7.0, 6.0).withGolfer(1.8, Hand::Right).withClub().job();
  const std::vector<SceneSolid> solids = sceneSolids(job, assess(job), {});
  SceneRenderer renderer;
  renderer.setSize({320, 240});
  renderer.setSolids(solids, {});
  OrbitCamera camera;
  camera.fit(sceneBounds(solids), QSizeF(320, 240));
  renderer.setCamera(camera);
  const QImage first = renderer.settledImage();
  ASSERT_FALSE(first.isNull());
  EXPECT_EQ(renderer.settledImage(), first);
}

TEST(GlProbe, CanBeSwitchedOff) {
  qputenv("BAYWRIGHT_NO_3D", "1");
  const GlInfo info = probeGl();
  qunsetenv("BAYWRIGHT_NO_3D");
  EXPECT_FALSE(info.usable);
  EXPECT_FALSE(info.reason.isEmpty());
}

}  // namespace
}  // namespace baywright
