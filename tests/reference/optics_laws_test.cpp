// SPDX-License-Identifier: Apache-2.0
// Laws of light and shadow from any physics or geometry textbook.
#include "optics/brightness.h"
#include "optics/obstruction.h"
#include "optics_scene.h"

namespace baywright::reference {
namespace {

const PictureLight kLight{.lumens = 3000, .nativeContrast = 2000, .gain = 1, .ambient = 0, .spread = {}};

double middleLux(double distance, double tilt) {
  const Screen screen = screenOf(20, 20);
  ProjectorMount mount = opposite(screen, distance * std::cos(tilt), 1.5);
  mount.lens.z() -= distance * std::sin(tilt);
  mount.pitch = tilt;
  const Picture picture = pictureOf(screen, panelOf(1920, 1080), mount).value();
  return illuminanceAt(picture, kLight, {10, 10});
}

// Kepler 1604: twice as far, a quarter of the light.
TEST(LawsReference, InverseSquare) {
  EXPECT_NEAR(middleLux(2, 0) / middleLux(4, 0), 4, 1e-9);
  EXPECT_NEAR(middleLux(2, 0) / middleLux(6, 0), 9, 1e-9);
}

// Lambert 1760: a screen turned by an angle receives the cosine of it; 60 degrees halve the light.
TEST(LawsReference, Cosine) {
  for (const double angle : {10.0, 30.0, 45.0})
    EXPECT_NEAR(middleLux(3, angle * kDegree) / middleLux(3, 0), std::cos(angle * kDegree), 1e-9);
  EXPECT_NEAR(middleLux(3, 60 * kDegree) / middleLux(3, 0), 0.5, 1e-9);
}

/// Ellipse in which a cone meets a plane: half angle a, axis at an angle t to the plane's normal, apex at
/// height h. Major axis h (tan(t + a) - tan(t - a)), minor half axis h sin a / sqrt(cos^2 t - sin^2 a).
double shadowOfBall(double h, double t, double a) {
  const double major = 0.5 * h * (std::tan(t + a) - std::tan(t - a));
  const double minor = h * std::sin(a) / std::sqrt(std::pow(std::cos(t), 2) - std::pow(std::sin(a), 2));
  return kPi * major * minor;
}

// Conic sections (Dandelin 1822): the shadow of a ball by a point of light is an ellipse.
TEST(LawsReference, ShadowOfABallIsAnEllipse) {
  const Screen screen = screenOf(20, 20);
  const Picture picture = pictureOf(screen, panelOf(1000, 1000), opposite(screen, 4, 0.2)).value();
  for (const double angle : {0.0, 20.0, 40.0, 55.0}) {
    const double t = angle * kDegree, distance = 2, radius = 0.3;
    const Vec3 centre = picture.lens.centre + distance * Vec3{std::cos(t), std::sin(t), 0};
    const Capsule ball{centre, centre, radius};
    const double shaded = obstructionBy(picture, std::array{ball}).share * 400;
    const double ellipse = shadowOfBall(4, t, std::asin(radius / distance));
    EXPECT_GE(shaded, ellipse * (1 - 1e-12)) << "never too little";
    EXPECT_LE(shaded, ellipse * 1.01) << angle;
  }
}

// Thales: a stick of 1 m, a third of the way from lens to wall, throws a shadow of 3 m.
TEST(LawsReference, ShadowOfAStickBySimilarTriangles) {
  const Screen screen = screenOf(20, 20);
  const Picture picture = pictureOf(screen, panelOf(1000, 1000), opposite(screen, 3, 0.15)).value();
  const Capsule stick{{-2, 0, 10}, {-2, 0, 11}, 1e-4};
  const auto outline = obstructionBy(picture, std::array{stick}).parts.at(0).outlineOnScreen;
  double top = 0, bottom = 99;
  for (const Vec2& p : outline) top = std::max(top, p.y()), bottom = std::min(bottom, p.y());
  EXPECT_NEAR(top - bottom, 3, 0.001);
}

}  // namespace
}  // namespace baywright::reference
