// SPDX-License-Identifier: Apache-2.0
#include "optics/screen_face.h"

#include "optics_scene.h"

namespace baywright {
namespace {

TEST(ScreenFace, StandsOnItsBottomAndIsCentredInTheBay) {
  const ScreenFace face = faceOf(wideScreen());
  const auto corners = face.corners();
  expectNear(bayFromScreen(face, corners[0]), {0, -1.6, 2.1}, 1e-15);
  expectNear(bayFromScreen(face, corners[1]), {0, 1.6, 2.1}, 1e-15);
  expectNear(bayFromScreen(face, corners[2]), {0, 1.6, 0.3}, 1e-15);
  expectNear(bayFromScreen(face, corners[3]), {0, -1.6, 0.3}, 1e-15);
  EXPECT_DOUBLE_EQ(face.area(), 5.76);
}

TEST(ScreenFace, GoesToTheBayAndBack) {
  const ScreenFace face = faceOf(wideScreen());
  const Vec2 p{0.7, 1.3};
  expectNear(screenFromBay(face, bayFromScreen(face, p)), p, 1e-15);
}

}  // namespace
}  // namespace baywright
