// SPDX-License-Identifier: Apache-2.0
#include "optics/projector_body.h"

#include "optics_scene.h"

namespace baywright {
namespace {

TEST(ProjectorBody, HasTheLensInTheMiddleOfItsFront) {
  Projector projector = centredProjector();
  projector.body = {0.3, 0.4, 0.12};
  const ConvexPolyhedron body = projectorBody(projector, squareMount()).value();
  expectNear(body.bounds().low, {-4.14, -0.2, 1.14}, 1e-12);
  expectNear(body.bounds().high, {-3.84, 0.2, 1.26}, 1e-12);
}

TEST(ProjectorBody, TurnsWithTheMount) {
  Projector projector = centredProjector();
  projector.body = {0.3, 0.4, 0.12};
  ProjectorMount mount = squareMount();
  mount.pitch = degrees(-90);  // looks straight down: its length stands up from the lens
  const ConvexPolyhedron body = projectorBody(projector, mount).value();
  EXPECT_NEAR(body.bounds().low.z(), 1.2, 1e-12);
  EXPECT_NEAR(body.bounds().high.z(), 1.5, 1e-12);
  EXPECT_NEAR(body.volume(), 0.3 * 0.4 * 0.12, 1e-12);
}

TEST(ProjectorBody, RefusesAFlatOne) {
  Projector projector = centredProjector();
  projector.body = {0.3, 0, 0.1};
  EXPECT_FALSE(projectorBody(projector, squareMount()));
}

}  // namespace
}  // namespace baywright
