// SPDX-License-Identifier: Apache-2.0
// IEC 62471-5:2015 6.6.5, as the manuals of three makers quote it by its number: where the beam of a risk
// group 3 projector is hazardous it stays at least 2.0 m above the floor, 3.0 m where people are not
// restrained (and 1.0 m to either side, which is not modelled).
#include "optics/eye_safety.h"
#include "optics_scene.h"

namespace baywright::reference {
namespace {

/// Flat beam: its lower edge runs level, at the lens's height.
ProjectorLens levelBeamAt(double height) {
  Projector projector = panelOf(1920, 1080);
  projector.offset = 0.5;
  ProjectorMount mount;
  mount.kind = MountKind::Floor;
  mount.lens = {-4, 0, height};
  return lensOf(projector, mount).value();
}

TEST(EyeSafetyReference, BeamAtOnePointNineMetresIsTooLow) {
  EXPECT_LT(lowestLight(levelBeamAt(1.9), 1.5), kRg3BeamHeight);
  EXPECT_GE(lowestLight(levelBeamAt(2.0), 1.5), kRg3BeamHeight);
  EXPECT_LT(lowestLight(levelBeamAt(2.9), 1.5), kRg3BeamHeightUnrestrained);
}

}  // namespace
}  // namespace baywright::reference
