// SPDX-License-Identifier: Apache-2.0
// A lens maker's optics note, "Keystone distortion": a projector 100 ft from a wall, tilted by 15 degrees, 30
// mm (1.181 in) lens, 0.446 in high format. It prints: half angle 10.69 degrees; near edge 7'6", far edge
// 48'1" above the lens; picture 40'7" high, 39'1" without tilt; stretch 3.8 %.
#include "optics/keystone.h"
#include "optics_scene.h"

namespace baywright::reference {
namespace {

constexpr double kHalfInch = 0.5 * kInch;  // the note rounds to inches

struct Note {
  Screen screen = screenOf(300 * kFoot, 300 * kFoot);
  Projector projector = panelOf(1000, 1000);
  ProjectorMount mount;
  Picture picture;

  Note() {
    mount.lens = {-100 * kFoot, 0, 0};
    mount.throwRatio = 1.181 / 0.446;
    mount.pitch = 15 * kDegree;
    picture = pictureOf(screen, projector, mount).value();
  }
};

TEST(KeystoneReference, HalfAngle) {
  EXPECT_NEAR(std::atan(0.5 * Note().picture.lens.extent.y()) / kDegree, 10.69, 0.005);
}

TEST(KeystoneReference, EdgesAboveTheLens) {
  const auto corners = Note().picture.cornersInBay;
  EXPECT_NEAR(corners[2].z(), 7 * kFoot + 6 * kInch, kHalfInch);
  EXPECT_NEAR(corners[1].z(), 48 * kFoot + 1 * kInch, kHalfInch);
}

TEST(KeystoneReference, HeightAndStretch) {
  const Note note;
  EXPECT_NEAR(note.picture.height, 40 * kFoot + 7 * kInch, kHalfInch);
  // Without tilt, from the same place along the axis: 100 ft / cos 15.
  ProjectorMount straight = note.mount;
  straight.pitch = 0;
  straight.lens.x() /= std::cos(note.mount.pitch);
  const double height = pictureOf(note.screen, note.projector, straight)->height;
  EXPECT_NEAR(height, 39 * kFoot + 1 * kInch, kHalfInch);
  EXPECT_NEAR(note.picture.height / height - 1, 0.038, 0.0005);
}

// Ratio of the far to the near edge, cos(tilt - half angle) / cos(tilt + half angle) (Wikipedia, Keystone
// effect): cos 4.31 / cos 25.69.
TEST(KeystoneReference, EdgeRatio) {
  const Note note;
  EXPECT_NEAR(note.picture.edgeRatioUp, 1.1066, 0.0001);
  EXPECT_NEAR(note.picture.edgeRatioAcross, 1, 1e-12);
  EXPECT_NEAR(note.picture.keystoneUp / kDegree, 15, 1e-9);
}

// Undoing it: the lower corners stay and the upper ones come in until both edges are as long, so the top
// keeps 1/1.1066 of its pixels and the lit part of the panel is a trapezium.
TEST(KeystoneReference, CornersComeInByTheEdgeRatio) {
  Note note;
  const auto corners = note.picture.cornersInBay;
  // A screen as wide as the near edge and as high as the picture, where the picture is.
  note.screen = screenOf(corners[2].y() - corners[3].y(), corners[1].z() - corners[2].z());
  note.screen.bottom = corners[2].z();
  const Picture picture = pictureOf(note.screen, note.projector, note.mount).value();
  const CornerFit fit = fitCorners(picture, note.projector, CornerFill::Screen).value();
  const double inward = 500 - 500 / 1.1066;
  EXPECT_NEAR(fit.moves[0].x(), inward, 0.05);
  EXPECT_NEAR(fit.moves[1].x(), -inward, 0.05);
  EXPECT_NEAR(fit.moves[0].y(), 0, 1e-6);
  EXPECT_NEAR(fit.moves[2].norm() + fit.moves[3].norm(), 0, 1e-6);
  EXPECT_NEAR(fit.pixelLoss, 0.5 * (1 - 1 / 1.1066), 1e-4);
}

}  // namespace
}  // namespace baywright::reference
