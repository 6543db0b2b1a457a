// SPDX-License-Identifier: Apache-2.0
#include "optics/obstruction.h"

#include <chrono>

#include "optics/detail/convex.h"
#include "optics_scene.h"

namespace baywright {
namespace {

/// From `low` to `high` in the bay frame.
Solid block(const Vec3& low, const Vec3& high) {
  TiltedBox box;
  box.centre = 0.5 * (low + high);
  box.halfAxes = (0.5 * (high - low)).asDiagonal();
  return boxFrom(box).value();
}

const Picture kPicture = pictureOf(wideScreen(), centredProjector(), squareMount()).value();

double shareOf(const Picture& picture, const Solid& solid) {
  return obstructionBy(picture, std::array{solid}).share;
}
double shareOf(const Picture& picture, const Capsule& capsule) {
  return obstructionBy(picture, std::array{capsule}).share;
}

/// Smallest distance of the ray (lens to a screen point) to the core of a capsule, by walking both: slow and
/// plain.
bool rayMeets(const Vec3& from, const Vec3& to, const Capsule& capsule) {
  for (int i = 0; i <= 400; ++i) {
    const Vec3 p = from + (to - from) * (i / 400.0);
    const Vec3 along = capsule.b - capsule.a;
    const double square = along.squaredNorm();
    const double t = square > 0 ? std::clamp((p - capsule.a).dot(along) / square, 0.0, 1.0) : 0;
    if ((p - capsule.a - t * along).norm() <= capsule.radius) return true;
  }
  return false;
}

// A plate half way from lens to screen throws a shadow of twice its size: 0.4 x 0.3 m becomes 0.8 x 0.6 m.
TEST(Obstruction, ThinPlateHalfWayShadesFourTimesItsArea) {
  const Obstructions found =
      obstructionBy(kPicture, std::array{block({-1.92, -0.2, 1.0}, {-1.919, 0.2, 1.3})});
  EXPECT_NEAR(found.share, 0.8 * 0.6 / 5.76, 2e-4);
  ASSERT_EQ(found.parts.size(), 1u);
  EXPECT_NEAR(signedArea(found.parts[0].outlineOnScreen), 0.8 * 0.6, 2e-3);
  double left = 9, right = 0, top = 0, bottom = 9;
  for (const Vec2& p : found.parts[0].outlineOnScreen) {
    left = std::min(left, p.x()), right = std::max(right, p.x());
    bottom = std::min(bottom, p.y()), top = std::max(top, p.y());
  }
  EXPECT_NEAR(left, 1.2, 1e-9);
  EXPECT_NEAR(right, 2.0, 1e-9);
  EXPECT_NEAR(bottom, 0.5, 1e-9) << "0.4 m under the lens's height, which is 0.9 m up the screen";
  EXPECT_NEAR(top, 1.1, 1e-9);
}

TEST(Obstruction, WhatIsBesideBehindOrBeyondTakesNothing) {
  EXPECT_EQ(shareOf(kPicture, block({-2, 2, 0}, {-1, 3, 2})), 0);
  EXPECT_EQ(shareOf(kPicture, block({-6, -1, 0}, {-4, 1, 2})), 0) << "behind the lens";
  EXPECT_EQ(shareOf(kPicture, block({0.01, -1, 0}, {1, 1, 2})), 0) << "behind the screen";
  EXPECT_EQ(shareOf(kPicture, block({-3, -1, 2.3}, {-1, 1, 2.4})), 0) << "over the beam";
}

TEST(Obstruction, FlatBodyOnTheScreenTakesItsOwnArea) {
  EXPECT_NEAR(shareOf(kPicture, block({-1e-5, -0.5, 0.5}, {0.5, 0.5, 1.5})), 1 / 5.76, 1e-5)
      << "whatever of it is behind the screen";
}

TEST(Obstruction, BodyThatHoldsTheLensTakesAll) {
  const Obstructions found = obstructionBy(kPicture, std::array{block({-4, -0.3, 1}, {-3.5, 0.3, 1.4})});
  EXPECT_DOUBLE_EQ(found.share, 1);
  EXPECT_NEAR(signedArea(found.parts[0].outlineOnScreen), 5.76, 1e-9);
  EXPECT_DOUBLE_EQ(shareOf(kPicture, Capsule{{-4, 0, 1}, {-3.7, 0, 1.3}, 0.3}), 1);
  EXPECT_DOUBLE_EQ(shareOf(kPicture, Solid(Cylinder{{-4, 0, 1.2}, {-3.5, 0, 1.2}, 0.3})), 1);
}

TEST(Obstruction, CeilingSlabFromBehindTheLensToTheScreenIsCutWhereItEntersTheBeam) {
  // Underside 0.3 m above the lens. It would come down on the screen 0.3 m above the middle, but the
  // slab ends 1.84 m before the screen: shadow from 0.3 * 3.84 / 2 = 0.576 m above the middle to the top
  // (0.9).
  const double share = shareOf(kPicture, block({-6, -5, 1.5}, {-1.84, 5, 1.6}));
  EXPECT_NEAR(share, (0.9 - 0.576) / 1.8, 1e-9);
}

TEST(Obstruction, SharesAreOfWhatFallsOnTheScreen) {
  // The picture is twice the screen's width; a plate on the spilled half does no harm.
  ProjectorMount mount = squareMount();
  mount.throwRatio = 0.6;
  const Picture wide = seen(wideScreen(), centredProjector(), mount);
  EXPECT_EQ(shareOf(wide, block({-0.01, 1.7, 0}, {0, 2.5, 2})), 0);
  EXPECT_NEAR(shareOf(wide, block({-1e-6, 0, 0.3}, {0, 1.6, 2.1})), 0.5, 1e-5);
}

TEST(Obstruction, OverlappingShadowsCountOnce) {
  const Solid plate = block({-1.92, -0.2, 1.0}, {-1.91, 0.2, 1.3});
  const Obstructions twice = obstructionBy(kPicture, std::array{plate, plate});
  EXPECT_EQ(twice.parts.size(), 2u);
  EXPECT_NEAR(twice.share, twice.parts[0].share, 1e-12);
  const Solid beside = block({-1.92, 0.3, 1.0}, {-1.91, 0.5, 1.3});
  const Obstructions both = obstructionBy(kPicture, std::array{plate, beside});
  EXPECT_NEAR(both.share, both.parts[0].share + both.parts[1].share, 1e-12);
}

TEST(Obstruction, NamesWhichObstaclesShadeInTheirOrder) {
  const std::array solids{block({-2, 2, 0}, {-1, 3, 2}), block({-2, 0, 1}, {-1.9, 0.1, 1.1}),
                          block({-6, -1, 0}, {-4, 1, 2}), block({-1, 0.4, 1}, {-0.9, 0.5, 1.1})};
  const Obstructions found = obstructionBy(kPicture, solids);
  ASSERT_EQ(found.parts.size(), 2u);
  EXPECT_EQ(found.parts[0].obstacle, 1u);
  EXPECT_EQ(found.parts[1].obstacle, 3u);
}

TEST(Obstruction, BallInTheMiddleShadesTheDiscOfItsTangentCone) {
  // tan(asin(R / D)) * throw distance.
  const Capsule ball{{-1.84, 0, 1.2}, {-1.84, 0, 1.2}, 0.1};
  const double radius = std::tan(std::asin(0.1 / 2.0)) * 3.84;
  const double share = kPi * radius * radius / 5.76;
  EXPECT_GE(shareOf(kPicture, ball), share);
  EXPECT_LE(shareOf(kPicture, ball), share * 1.006);
}

TEST(Obstruction, CapsulesAgreeWithRays) {
  RandomMounts random(51);
  constexpr int kAcross = 64, kDown = 36;
  for (int i = 0; i < 12; ++i) {
    ProjectorMount mount = random.next();
    mount.yaw *= 0.4, mount.pitch *= 0.4;
    const auto picture = pictureOf(wideScreen(), centredProjector(), mount);
    if (!picture || picture->litOnPanel.empty()) continue;
    const Capsule capsule{{random.between(-1.8, -0.5), random.between(-1, 1), random.between(0.2, 2)},
                          {random.between(-1.8, -0.5), random.between(-1, 1), random.between(0.2, 2)},
                          random.between(0.05, 0.3)};
    int lit = 0, shaded = 0;
    for (int x = 0; x < kAcross; ++x)
      for (int y = 0; y < kDown; ++y) {
        const Vec2 pixel{(x + 0.5) * 1920 / kAcross, (y + 0.5) * 1080 / kDown};
        if (locate(picture->litOnPanel, pixel) != Location::Inside) continue;
        ++lit;
        const Vec2 p = mapped(picture->screenFromPanel, pixel).value();
        shaded += rayMeets(picture->lens.centre, bayFromScreen(picture->face, p), capsule);
      }
    ASSERT_GT(lit, 0);
    EXPECT_NEAR(shareOf(*picture, capsule), shaded / double(lit), 0.02);
  }
}

TEST(Obstruction, FlatBodiesAgreeWithTheirBrackets) {
  // A box holds its inscribed ball and lies in its enclosing one: its shadow is between theirs.
  RandomMounts random(52);
  for (int i = 0; i < 100; ++i) {
    const Vec3 centre{random.between(-2.5, -0.8), random.between(-0.5, 0.5), random.between(0.8, 1.6)};
    const double half = random.between(0.02, 0.15);
    const double share =
        shareOf(kPicture, block(centre - Vec3::Constant(half), centre + Vec3::Constant(half)));
    EXPECT_GE(share, shareOf(kPicture, Capsule{centre, centre, half}) / 1.006);
    EXPECT_LE(share, shareOf(kPicture, Capsule{centre, centre, half * std::sqrt(3.0)}));
  }
}

TEST(Obstruction, CylinderLiesBetweenItsPrismsAndEqualsACapsuleWithoutCaps) {
  const Cylinder post{{-1.5, 0.3, 0}, {-1.5, 0.3, 2.5}, 0.05};
  const double share = shareOf(kPicture, Solid(post));
  const double inscribed = 0.05 / std::sqrt(2.0);
  EXPECT_GT(share, shareOf(kPicture, block({-1.5 - inscribed, 0.3 - inscribed, 0},
                                           {-1.5 + inscribed, 0.3 + inscribed, 2.5})));
  EXPECT_LT(share, shareOf(kPicture, block({-1.55, 0.25, 0}, {-1.45, 0.35, 2.5})));
  EXPECT_NEAR(share, shareOf(kPicture, Capsule{post.a, post.b, 0.05}), 0.01 * share)
      << "both ends are off the picture";
}

TEST(Obstruction, CapsuleThroughTheScreenCountsItsFrontPart) {
  const Capsule whole{{-0.5, 0, 1.2}, {0.8, 0, 1.2}, 0.1};
  const Capsule front{{-0.5, 0, 1.2}, {0, 0, 1.2}, 0.1};
  EXPECT_GE(shareOf(kPicture, whole), shareOf(kPicture, front));
  EXPECT_GT(shareOf(kPicture, Capsule{{0.05, 0, 1.2}, {0.9, 0, 1.2}, 0.1}), 0)
      << "its round end stands before it";
  EXPECT_EQ(shareOf(kPicture, Capsule{{0.11, 0, 1.2}, {0.9, 0, 1.2}, 0.1}), 0);
}

TEST(Obstruction, NothingWithoutPicture) {
  ProjectorMount mount = squareMount();
  mount.lens.y() = 20;
  const Picture missed = seen(wideScreen(), centredProjector(), mount);
  EXPECT_EQ(shareOf(missed, block({-3, -20, 0}, {-1, 30, 3})), 0);
  EXPECT_FALSE(beamBody(missed));
}

TEST(Obstruction, BeamBodyIsThePyramidToTheLitPart) {
  const ConvexPolyhedron beam = beamBody(kPicture).value();
  EXPECT_NEAR(beam.volume(), 5.76 * 3.84 / 3, 1e-9);
  ProjectorMount mount = squareMount();
  mount.roll = degrees(20);
  mount.throwRatio = 1.0;
  const Picture rolled = seen(wideScreen(), centredProjector(), mount);
  EXPECT_GT(rolled.lit.size(), 4u);
  EXPECT_NEAR(beamBody(rolled)->volume(), signedArea(rolled.lit) * 3.84 / 3, 1e-9);
}

// A ratio to plain work in the same run, so that it holds on any machine: 200 boxes, a fifth of them in the
// beam, against the same number of full projections of the panel's corners.
TEST(Obstruction, TwoHundredBoxesAreCheap) {
  RandomMounts random(53);
  std::vector<Solid> solids;
  for (int i = 0; i < 200; ++i) {
    const Vec3 low{random.between(-5, -0.5), random.between(-3, 3), random.between(0, 2.5)};
    solids.push_back(block(low, low + Vec3{0.3, 0.3, 0.3}));
  }
  const auto timed = [](const auto& work) {
    double best = 1e9;
    for (int i = 0; i < 20; ++i) {
      const auto start = std::chrono::steady_clock::now();
      work();
      best = std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    }
    return best;
  };
  double share = 0;
  std::size_t parts = 0;
  const double boxes = timed([&] {
    const Obstructions found = obstructionBy(kPicture, solids);
    share = found.share;
    parts = found.parts.size();
  });
  EXPECT_GT(parts, 20u);
  EXPECT_GT(share, 0.1);
  double sum = 0;
  const double pictures = timed([&] {
    for (int i = 0; i < 200; ++i) sum += seen(wideScreen(), centredProjector(), squareMount()).area;
  });
  EXPECT_LT(boxes, 10 * pictures) << boxes * 1e6 << " us against " << pictures * 1e6 << " us";
  RecordProperty("microseconds", std::to_string(boxes * 1e6));
}

}  // namespace
}  // namespace baywright
