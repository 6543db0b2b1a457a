// SPDX-License-Identifier: Apache-2.0
// Throw ratio, offset and shift.
#include "optics/aim.h"
#include "optics_scene.h"

namespace baywright::reference {
namespace {

// Throw ratio = distance from the lens pupil to the screen over the picture's width (IEC 62471-5, test
// set-up).
TEST(ThrowReference, OnePointTwoTimesThreeMetres) {
  const Screen screen = screenOf(3.0, 1.6875);
  const Picture picture = pictureOf(screen, panelOf(1920, 1080), opposite(screen, 3.6, 1.2)).value();
  EXPECT_NEAR(picture.width, 3.0, 1e-12);
  EXPECT_NEAR(picture.coverage, 1, 1e-12);
}

// A projector review's glossary (projectorreviews.com, Throw ratio): 1.2 and a 10 ft wide screen make 12 ft.
// Here the aim has to find the zoom.
TEST(ThrowReference, TwelveFeetForTenFeetOfScreen) {
  const Screen screen = screenOf(10 * kFoot, 10 * kFoot * 9 / 16);
  Projector projector = panelOf(1920, 1080);
  projector.throwMin = 1.0;
  projector.throwMax = 2.0;
  const Aim aim = aimAt(screen, projector, opposite(screen, 12 * kFoot, 1.9), {}).value();
  EXPECT_NEAR(aim.mount.throwRatio, 1.2, 1e-9);
}

// Offset as two makers' manuals work it out: pixels that the picture is moved over half its size, so that at
// 100 % all of it lies above the lens. Ours counts whole sizes, so 0.5 for 100 %. Others count whole heights
// from the far edge and call the same 100 % (itwissen.info, Image offset).
TEST(ThrowReference, HundredPercentOffsetPutsTheEdgeOnTheAxis) {
  const Screen screen = screenOf(3.0, 1.6875);
  Projector projector = panelOf(1920, 1080);
  projector.offset = 0.5;
  ProjectorMount mount = opposite(screen, 3.6, 1.2);
  mount.lens.z() = 1.6875;
  const Picture picture = pictureOf(screen, projector, mount).value();
  EXPECT_NEAR(picture.cornersInBay[0].z(), mount.lens.z(), 1e-12);
  EXPECT_NEAR(picture.coverage, 1, 1e-12);
}

// The manuals' own examples, in pixels from the lens to the picture's middle: 1920 x 1200, 600/600 = 100 %,
// 720/600 = 120 %, 240/600 = 40 %; 1920 x 1080, 648/540 = 120 %, and 192/960 = 20 % sideways.
TEST(ThrowReference, OffsetInPixels) {
  struct Example {
    int height;
    double percent;
    double pixels;
  };
  for (const Example& example :
       {Example{1200, 100, 600}, {1200, 120, 720}, {1200, 40, 240}, {1080, 120, 648}}) {
    const Screen screen = screenOf(1.920, example.height / 1000.0);
    Projector projector = panelOf(1920, example.height);
    projector.offset = example.percent / 100 / 2;
    ProjectorMount mount = opposite(screen, 2.4, 1.25);
    mount.kind = MountKind::Floor;
    mount.shiftSide = 0.20 / 2;
    const Picture picture = pictureOf(screen, projector, mount).value();
    const Vec2 middle = mapped(picture.screenFromPanel, 0.5 * picture.lens.panel).value();
    const Vec2 lens = screenFromBay(picture.face, mount.lens);
    EXPECT_NEAR((middle - lens).y() * 1000, example.pixels, 1e-9);  // a pixel is a millimetre here
    EXPECT_NEAR((middle - lens).x() * 1000, 192, 1e-9);
  }
}

// A projector's installation manual: 95 % vertical shift on a 56 x 100 in picture moves it 53.2 in, 52 %
// horizontal 52.0 in; the picture's middle is even with the lens at 0 %.
TEST(ThrowReference, ShiftInShares) {
  const Screen screen = screenOf(100 * kInch, 56 * kInch);
  const Projector projector = panelOf(100, 56);
  ProjectorMount mount = opposite(screen, 276 * kInch, 2.76);
  const Vec2 still = mapped(pictureOf(screen, projector, mount)->screenFromPanel, {50, 28}).value();
  EXPECT_NEAR((still - Vec2{50 * kInch, 28 * kInch}).norm(), 0, 1e-9);
  mount.shiftUp = 0.95;
  mount.shiftSide = 0.52;
  const Vec2 moved = mapped(pictureOf(screen, projector, mount)->screenFromPanel, {50, 28}).value();
  EXPECT_NEAR((moved - still).y() / kInch, 53.2, 1e-6);
  EXPECT_NEAR((moved - still).x() / kInch, 52.0, 1e-6);
}

}  // namespace
}  // namespace baywright::reference
