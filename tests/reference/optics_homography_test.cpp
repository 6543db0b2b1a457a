// SPDX-License-Identifier: Apache-2.0
// P. Heckbert, Fundamentals of Texture Mapping and Image Warping, 1989, section 2.2.3: the map from the unit
// square to a quadrangle in closed form, here against the map that the pinhole gives.
#include "geometry/homography.h"
#include "optics_scene.h"

namespace baywright::reference {
namespace {

Picture turnedPicture() {
  const Screen screen = screenOf(3.2, 1.8);
  ProjectorMount mount = opposite(screen, 3.84, 1.0);
  mount.yaw = 12 * kDegree;
  mount.pitch = -17 * kDegree;
  mount.roll = 4 * kDegree;
  mount.shiftUp = 0.3;
  return pictureOf(screen, panelOf(1920, 1080), mount).value();
}

// Corners (0,0) (4,0) (3,2) (1,2): matrix [4 2 0; 0 4 0; 0 1 1], middle at (2, 4/3), where the diagonals
// cross.
TEST(HomographyReference, HeckbertsTrapezium) {
  const std::array<Vec2, 4> corners{Vec2{0, 0}, Vec2{4, 0}, Vec2{3, 2}, Vec2{1, 2}};
  const Homography map = homographyFromUnitSquare(corners).value();
  Mat3 expected;
  expected << 4, 2, 0, 0, 4, 0, 0, 1, 1;
  EXPECT_NEAR((map.matrix / map.matrix(2, 2) - expected).norm(), 0, 1e-9);
  EXPECT_NEAR((mapped(map, {0.5, 0.5}).value() - Vec2{2, 4.0 / 3}).norm(), 0, 1e-9);
}

TEST(HomographyReference, PinholeAgreesWithHeckbert) {
  const Picture picture = turnedPicture();
  const Homography heckbert = homographyFromUnitSquare(picture.cornersOnScreen).value();
  for (double x = 0; x <= 1; x += 0.125)
    for (double y = 0; y <= 1; y += 0.125) {
      const Vec2 ours = mapped(picture.screenFromPanel, {1920 * x, 1080 * y}).value();
      EXPECT_NEAR((ours - mapped(heckbert, {x, y}).value()).norm(), 0, 1e-9);
    }
}

// Hartley and Zisserman, Multiple View Geometry, 2nd ed., section 2.3 and 2.5: a projective map keeps
// straight lines, so the panel's middle falls where the picture's diagonals cross; and it keeps the cross
// ratio of four points on a line.
TEST(HomographyReference, DiagonalsCrossInTheMiddle) {
  const Picture picture = turnedPicture();
  const auto& c = picture.cornersOnScreen;
  const Vec2 first = c[2] - c[0], second = c[3] - c[1];
  const Vec2 crossing = c[0] + cross(c[1] - c[0], second) / cross(first, second) * first;
  EXPECT_NEAR((mapped(picture.screenFromPanel, {960, 540}).value() - crossing).norm(), 0, 1e-9);
}

TEST(HomographyReference, CrossRatioIsKept) {
  const Picture picture = turnedPicture();
  const std::array<double, 4> along{0.1, 0.35, 0.6, 0.95};
  std::array<Vec2, 4> image;
  for (std::size_t i = 0; i < 4; ++i)
    image[i] = mapped(picture.screenFromPanel, {1920 * along[i], 200 + 700 * along[i]}).value();
  const auto ratio = [](double ac, double bd, double bc, double ad) { return ac * bd / (bc * ad); };
  const double before =
      ratio(along[2] - along[0], along[3] - along[1], along[2] - along[1], along[3] - along[0]);
  const double after = ratio((image[2] - image[0]).norm(), (image[3] - image[1]).norm(),
                             (image[2] - image[1]).norm(), (image[3] - image[0]).norm());
  EXPECT_NEAR(after, before, 1e-12);
}

}  // namespace
}  // namespace baywright::reference
