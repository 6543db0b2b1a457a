// SPDX-License-Identifier: Apache-2.0
#include "optics/eye_safety.h"

#include "optics_scene.h"

namespace baywright {
namespace {

TEST(EyeSafety, BeamUnderTheCeilingFallsWithDistanceUntilTheScreen) {
  ProjectorMount mount = squareMount();
  mount.lens.z() = 2.4;
  const ProjectorLens lens = lensOf(centredProjector(), mount).value();
  // Lower edge falls half the picture's height, 0.5 / (1.2 * 16 / 9), a metre.
  const double slope = 0.5 / (1.2 * 16 / 9);
  EXPECT_NEAR(lowestLight(lens, 1.0), 2.4 - slope, 1e-12);
  EXPECT_NEAR(lowestLight(lens, 2.0), 2.4 - 2 * slope, 1e-12);
  EXPECT_NEAR(lowestLight(lens, 50), 2.4 - 3.84 * slope, 1e-12);
}

TEST(EyeSafety, BeamThatOnlyRisesIsLowestAtTheLens) {
  Projector projector = centredProjector();
  projector.offset = 0.6;
  ProjectorMount mount = squareMount();
  mount.kind = MountKind::Floor;
  EXPECT_EQ(lowestLight(lensOf(projector, mount).value(), 3), 1.2);
}

}  // namespace
}  // namespace baywright
