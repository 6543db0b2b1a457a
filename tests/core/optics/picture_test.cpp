// SPDX-License-Identifier: Apache-2.0
#include "optics/picture.h"

#include "optics_scene.h"

namespace baywright {
namespace {

TEST(Picture, FillsTheScreenExactlyFromTheRightDistance) {
  const Picture picture = seen(wideScreen(), centredProjector(), squareMount());
  const auto screen = picture.face.corners();
  for (std::size_t i = 0; i < 4; ++i) expectNear(picture.cornersOnScreen[i], screen[i], 1e-12);
  EXPECT_NEAR(picture.coverage, 1, 1e-12);
  EXPECT_NEAR(picture.spill, 0, 1e-12);
  EXPECT_NEAR(picture.width, 3.2, 1e-12);
  EXPECT_NEAR(picture.height, 1.8, 1e-12);
  EXPECT_NEAR(picture.throwDistance, 3.84, 1e-15);
  EXPECT_NEAR(picture.aspectLoss, 0, 1e-15);
  EXPECT_NEAR(picture.edgeRatioAcross, 1, 1e-12);
  EXPECT_NEAR(picture.edgeRatioUp, 1, 1e-12);
}

TEST(Picture, CornersLieOnTheRaysOfTheLens) {
  RandomMounts mounts(3);
  for (int i = 0; i < 200; ++i) {
    const auto picture = pictureOf(wideScreen(), centredProjector(), mounts.next());
    if (!picture) continue;
    const auto panel = picture->lens.panelCorners();
    for (std::size_t k = 0; k < 4; ++k) {
      EXPECT_EQ(picture->cornersInBay[k].x(), 0);
      expectNear(*panelFromBay(picture->lens, picture->cornersInBay[k]), panel[k], 1e-7);
      expectNear(mapped(picture->screenFromPanel, panel[k]).value(), picture->cornersOnScreen[k], 1e-9);
      expectNear(mapped(picture->panelFromScreen, picture->cornersOnScreen[k]).value(), panel[k], 1e-7);
    }
  }
}

// Two pictures a little larger than the screen, and one half beside it: areas by hand.
TEST(Picture, CountsCoverageAndSpillByArea) {
  ProjectorMount mount = squareMount();
  mount.throwRatio = 1.0;  // 3.84 x 2.16 m
  Picture picture = seen(wideScreen(), centredProjector(), mount);
  EXPECT_NEAR(picture.coverage, 1, 1e-12);
  EXPECT_NEAR(picture.spill, 1 - 5.76 / (3.84 * 2.16), 1e-12);
  mount = squareMount();
  mount.lens.y() = 0.8;  // a quarter of the width to the right
  picture = seen(wideScreen(), centredProjector(), mount);
  EXPECT_NEAR(picture.coverage, 0.75, 1e-12);
  EXPECT_NEAR(picture.spill, 0.25, 1e-12);
  mount.lens.y() = 10;
  picture = seen(wideScreen(), centredProjector(), mount);
  EXPECT_EQ(picture.coverage, 0);
  EXPECT_EQ(picture.spill, 1);
  EXPECT_TRUE(picture.lit.empty());
}

TEST(Picture, CoverageAndSpillAgreeWithCountingPoints) {
  RandomMounts mounts(4);
  constexpr int kPoints = 40000;
  const double tolerance = 4 * 0.5 / std::sqrt(kPoints);  // four standard deviations of a share
  for (int i = 0; i < 20; ++i) {
    const auto picture = pictureOf(wideScreen(), centredProjector(), mounts.next());
    if (!picture) continue;
    int lit = 0;
    for (int k = 0; k < kPoints; ++k) {
      const Vec2 p{mounts.between(0, 3.2), mounts.between(0, 1.8)};
      const auto pixel = panelFromBay(picture->lens, bayFromScreen(picture->face, p));
      lit += pixel && pixel->minCoeff() >= 0 && (pixel->array() <= picture->lens.panel.array()).all();
    }
    EXPECT_NEAR(picture->coverage, lit / double(kPoints), tolerance);
    EXPECT_NEAR((1 - picture->spill) * picture->area, picture->coverage * picture->face.area(), 1e-9);
  }
}

TEST(Picture, LitPartIsTheSameOnScreenAndPanel) {
  RandomMounts mounts(5);
  for (int i = 0; i < 50; ++i) {
    const auto picture = pictureOf(wideScreen(), centredProjector(), mounts.next());
    if (!picture || picture->lit.empty()) continue;
    ASSERT_EQ(picture->lit.size(), picture->litOnPanel.size());
    EXPECT_GT(signedArea(picture->lit), 0);
    EXPECT_GT(signedArea(picture->litOnPanel), 0);
    for (const Vec2& pixel : picture->litOnPanel) {
      EXPECT_GE(pixel.minCoeff(), -1e-6);
      EXPECT_LE((pixel - picture->lens.panel).maxCoeff(), 1e-6);
    }
  }
}

TEST(Picture, MirrorsWhenProjectorIsMirrored) {
  RandomMounts mounts(6);
  for (int i = 0; i < 50; ++i) {
    const ProjectorMount mount = mounts.next();
    ProjectorMount other = mount;
    other.lens.y() = -mount.lens.y();
    other.yaw = -mount.yaw;
    other.roll = -mount.roll;
    other.shiftSide = -mount.shiftSide;
    const auto a = pictureOf(wideScreen(), centredProjector(), mount);
    const auto b = pictureOf(wideScreen(), centredProjector(), other);
    ASSERT_EQ(bool(a), bool(b));
    if (!a) continue;
    EXPECT_NEAR(a->coverage, b->coverage, 1e-12);
    EXPECT_NEAR(a->spill, b->spill, 1e-12);
    EXPECT_NEAR(a->keystoneAcross, -b->keystoneAcross, 1e-12);
    EXPECT_NEAR(a->keystoneUp, b->keystoneUp, 1e-12);
    expectNear(a->cornersOnScreen[0], {3.2 - b->cornersOnScreen[1].x(), b->cornersOnScreen[1].y()}, 1e-9);
    expectNear(a->cornersOnScreen[2], {3.2 - b->cornersOnScreen[3].x(), b->cornersOnScreen[3].y()}, 1e-9);
  }
}

TEST(Picture, ScalesWithTheWholeSetUp) {
  RandomMounts mounts(7);
  for (int i = 0; i < 50; ++i) {
    ProjectorMount mount = mounts.next();
    const auto a = pictureOf(wideScreen(), centredProjector(), mount);
    if (!a) continue;
    mount.lens *= 2;
    Screen twice = wideScreen();
    twice.width *= 2, twice.height *= 2, twice.bottom *= 2;
    const Picture b = seen(twice, centredProjector(), mount);
    EXPECT_NEAR(b.coverage, a->coverage, 1e-12);
    EXPECT_NEAR(b.area, 4 * a->area, 1e-9 * b.area);
    EXPECT_NEAR(b.edgeRatioUp, a->edgeRatioUp, 1e-12);
  }
}

TEST(Picture, GrowsWhenTheProjectorMovesBackWithTheSameZoom) {
  double before = 0;
  for (double distance = 2; distance < 6; distance += 0.25) {
    ProjectorMount mount = squareMount();
    mount.lens.x() = -distance;
    const Picture picture = seen(wideScreen(), centredProjector(), mount);
    EXPECT_GT(picture.area, before);
    EXPECT_NEAR(picture.width, distance / 1.2, 1e-12);
    before = picture.area;
  }
}

TEST(Picture, ShiftMakesNoKeystone) {
  Projector projector = centredProjector();
  ProjectorMount mount = squareMount();
  mount.shiftUp = 0.6;
  mount.shiftSide = 0.4;
  const Picture picture = seen(wideScreen(), projector, mount);
  EXPECT_NEAR(picture.edgeRatioAcross, 1, 1e-12);
  EXPECT_NEAR(picture.edgeRatioUp, 1, 1e-12);
  EXPECT_EQ(picture.keystoneUp, 0);
  EXPECT_EQ(picture.keystoneAcross, 0);
}

TEST(Picture, NamesTheKeystoneByItsAxis) {
  ProjectorMount mount = squareMount();
  mount.pitch = degrees(12);
  Picture picture = seen(wideScreen(), centredProjector(), mount);
  EXPECT_NEAR(picture.keystoneUp, degrees(12), 1e-12);
  EXPECT_NEAR(picture.keystoneAcross, 0, 1e-12);
  EXPECT_GT(picture.edgeRatioUp, 1.05);
  EXPECT_NEAR(picture.edgeRatioAcross, 1, 1e-12);
  const auto& c = picture.cornersOnScreen;
  EXPECT_GT((c[0] - c[1]).norm(), (c[3] - c[2]).norm()) << "it looks up, so the top is farther and wider";

  mount = squareMount();
  mount.yaw = degrees(-9);
  picture = seen(wideScreen(), centredProjector(), mount);
  EXPECT_NEAR(picture.keystoneAcross, degrees(-9), 1e-12);
  EXPECT_NEAR(picture.keystoneUp, 0, 1e-12);
  EXPECT_GT(picture.edgeRatioAcross, 1.05);
}

TEST(Picture, TellsAspectLossBothWays) {
  EXPECT_NEAR(aspectLossOf(16.0 / 9, 4.0 / 3), 0.25, 1e-15);
  EXPECT_NEAR(aspectLossOf(4.0 / 3, 16.0 / 9), 0.25, 1e-15);
  EXPECT_EQ(aspectLossOf(1.6, 1.6), 0);
}

TEST(Picture, RefusesALensBehindTheScreen) {
  ProjectorMount mount = squareMount();
  mount.lens.x() = 0.2;
  const auto picture = pictureOf(wideScreen(), centredProjector(), mount);
  ASSERT_FALSE(picture);
  EXPECT_NE(picture.error().what.find("not in front of the screen"), std::string::npos);
  mount.lens.x() = 0;
  EXPECT_FALSE(pictureOf(wideScreen(), centredProjector(), mount));
}

TEST(Picture, RefusesABeamThatMissesThePlaneAndNamesTheCorner) {
  ProjectorMount mount = squareMount();
  mount.yaw = degrees(85);
  const auto picture = pictureOf(wideScreen(), centredProjector(), mount);
  ASSERT_FALSE(picture);
  EXPECT_NE(picture.error().what.find("top right"), std::string::npos);
  mount.yaw = degrees(180);
  EXPECT_FALSE(pictureOf(wideScreen(), centredProjector(), mount));
}

TEST(Picture, RefusesAScreenWithoutSize) {
  Screen screen = wideScreen();
  screen.height = 0;
  EXPECT_FALSE(pictureOf(screen, centredProjector(), squareMount()));
}

}  // namespace
}  // namespace baywright
