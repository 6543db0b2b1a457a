// SPDX-License-Identifier: Apache-2.0
// Properties of closest() that hold for every pair of shapes, and its agreement with brute force.
#include <gtest/gtest.h>

#include "brute_force.h"
#include "geometry/closest.h"
#include "random_shapes.h"

namespace baywright {
namespace {

using test::RandomShapes;

constexpr double kTight = 1e-9;

/// A certificate that needs no search: the witnesses lie on the shapes, and along escape the shapes are just
/// `distance` apart. For a gap this proves the distance; for an overlap, that the depth is enough.
template <class First, class Second>
void expectCertified(const First& first, const Second& second, const Closest& c) {
  EXPECT_NEAR(c.escape.norm(), 1, 1e-14);
  EXPECT_NEAR((c.onFirst - c.onSecond - c.distance * c.escape).norm(), 0, 1e-13);
  EXPECT_NEAR(test::wayOut(first, second, c.escape), -c.distance, kTight);
}

TEST(ClosestProperty, CapsuleAndSolidAgreeWithBruteForce) {
  RandomShapes random(101);
  const auto directions = test::spreadDirections(150);
  int overlaps = 0;
  for (int i = 0; i < 1500; ++i) {
    const Capsule capsule = random.capsule(0.9);
    const Solid solid = random.solid(0.5);
    const Closest c = closest(capsule, solid);
    const double core = c.distance + capsule.radius;
    ASSERT_NEAR(std::max(core, 0.0), test::distanceTo(capsule.core(), solid), kTight) << "pair " << i;
    ASSERT_LE(test::distanceTo(solid, c.onSecond), kTight) << "pair " << i;
    const Closest ofCore{core, c.onFirst + capsule.radius * c.escape, c.onSecond, c.escape};
    expectCertified(capsule.core(), solid, ofCore);
    ASSERT_LE(test::distanceTo(capsule.core(), ofCore.onFirst), kTight) << "pair " << i;
    if (core > 0) continue;
    ++overlaps;
    ASSERT_LE(-core, test::shortestWayOut(capsule.core(), solid, directions) + kTight) << "pair " << i;
  }
  EXPECT_GT(overlaps, 100);
}

TEST(ClosestProperty, SolidsAreCertifiedAndNoShorterWayOutIsFound) {
  RandomShapes random(102);
  const auto directions = test::spreadDirections(150);
  int overlaps = 0;
  for (int i = 0; i < 600; ++i) {
    const Solid a = random.solid(0.7);
    const Solid b = random.solid(0.7);
    const Closest c = closest(a, b);
    expectCertified(a, b, c);
    ASSERT_LE(test::distanceTo(b, c.onSecond), 2e-6) << "pair " << i;
    ASSERT_LE(test::distanceTo(a, c.onFirst), 2e-6) << "pair " << i;
    if (c.distance > 0) continue;
    ++overlaps;
    ASSERT_LE(-c.distance, test::shortestWayOut(a, b, directions) + 1e-8) << "pair " << i;
  }
  EXPECT_GT(overlaps, 100);
}

TEST(ClosestProperty, TriangleAgreesWithBruteForceInEveryOrderOfItsCorners) {
  RandomShapes random(103);
  for (int i = 0; i < 1000; ++i) {
    const Capsule capsule = random.capsule(0.8);
    const Triangle t = random.triangle(0.5);
    const double brute = test::distanceTo(capsule.core(), t) - capsule.radius;
    for (const Triangle& order :
         {t, Triangle{t.b, t.c, t.a}, Triangle{t.c, t.a, t.b}, Triangle{t.a, t.c, t.b},
          Triangle{t.c, t.b, t.a}, Triangle{t.b, t.a, t.c}}) {
      const Closest c = closest(capsule, order);
      ASSERT_NEAR(c.distance, brute, kTight) << "pair " << i;
      ASSERT_LE(test::distanceTo(t, c.onSecond), kTight);
      ASSERT_NEAR((c.onFirst - c.onSecond - c.distance * c.escape).norm(), 0, 1e-13);
    }
  }
}

TEST(ClosestProperty, SegmentsAgreeWithBruteForce) {
  RandomShapes random(104);
  for (int i = 0; i < 3000; ++i) {
    const Segment3 a = random.segment(0.8);
    const Segment3 b = random.segment(0.8);
    const double brute =
        test::leastConvex([&](double t) { return test::distanceTo(b, Vec3(a.a + t * (a.b - a.a))); });
    const Closest c = closest(a, b);
    ASSERT_NEAR(c.distance, brute, kTight) << "pair " << i;
    expectCertified(a, b, c);
  }
}

TEST(ClosestProperty, ExchangingTheShapesReversesTheAnswer) {
  RandomShapes random(105);
  for (int i = 0; i < 1000; ++i) {
    const Solid a = random.solid(0.7);
    const Solid b = random.solid(0.7);
    ASSERT_NEAR(closest(a, b).distance, closest(b, a).distance, 1e-9) << "pair " << i;
    const Capsule p = random.capsule(0.7);
    const Capsule q = random.capsule(0.7);
    ASSERT_NEAR(closest(p, q).distance, closest(q, p).distance, 1e-13) << "pair " << i;
  }
}

TEST(ClosestProperty, TurningAndShiftingBothChangesNothing) {
  RandomShapes random(106);
  for (int i = 0; i < 1000; ++i) {
    const Capsule capsule = random.capsule(0.9);
    const Solid solid = random.solid(0.5);
    RigidMap map = random.motion(20);
    if (random.oneIn(2)) map.linear.col(0) *= -1;  // a mirror as well
    const Closest here = closest(capsule, solid);
    const Closest there = closest(transformed(capsule, map), transformed(solid, map));
    ASSERT_NEAR(here.distance, there.distance, 1e-12) << "pair " << i;
  }
}

TEST(ClosestProperty, GrowingACapsuleTakesAsMuchFromTheDistance) {
  RandomShapes random(107);
  for (int i = 0; i < 500; ++i) {
    Capsule capsule = random.capsule(0.9);
    const Solid solid = random.solid(0.5);
    const double before = closest(capsule, solid).distance;
    capsule.radius += 0.3;
    ASSERT_NEAR(closest(capsule, solid).distance, before - 0.3, 1e-14);
  }
}

TEST(ClosestProperty, DistanceIsContinuousThroughContact) {
  // A core sinks into the body along the escape: the signed distance falls by what it moves, and then stays
  // negative (for bodies whose corners are no needles that a core could slip past).
  RandomShapes random(108);
  for (int i = 0; i < 400; ++i) {
    const Solid solid = random.oneIn(2) ? Solid(random.box(0.5)) : Solid(random.cylinder(0.5));
    const Capsule start = random.capsule(1.2);
    const Closest c = closest(start, solid);
    const auto moved = [&](double towards) {
      const Vec3 by = -(c.distance + start.radius + towards) * c.escape;
      return closest(Capsule{start.a + by, start.b + by, 0}, solid).distance;
    };
    for (const double step : {1e-3, 1e-6, 1e-9, 1e-12, 0.0}) {
      ASSERT_NEAR(moved(-step), step, 1e-12) << "pair " << i;
      ASSERT_GE(moved(step), -step - 1e-12) << "pair " << i;
      ASSERT_LE(moved(step), 1e-12) << "pair " << i;
    }
  }
}

TEST(ClosestProperty, LowerBoundNeverExceedsTheDistance) {
  RandomShapes random(109);
  for (int i = 0; i < 3000; ++i) {
    const Capsule capsule = random.capsule(0.9);
    const Solid solid = random.solid(0.5);
    ASSERT_LE(lowerBound(capsule, boundsOf(solid)), closest(capsule, solid).distance + 1e-12) << "pair " << i;
    const Triangle t = random.triangle(0.5);
    ASSERT_LE(lowerBound(capsule, boundsOf(t)), closest(capsule, t).distance + 1e-12) << "pair " << i;
  }
}

TEST(ClosestProperty, SlabOfFlatSidesStaysExactWhenTheCoreIsAlmostParallel) {
  // Cores within an angle of 1e-15 to 1e-3 of an edge, through and beside a box.
  const ConvexPolyhedron box = boxFrom(UprightBox{{0, 0}, 0.3, {2, 1}, 0, 1}).value();
  RandomShapes random(110);
  for (int i = 0; i < 500; ++i) {
    const Vec3 along = box.edgeAxes()[static_cast<std::size_t>(random.upTo(3))];
    const Vec3 tilt = std::pow(10, random.between(-15, -3)) * random.direction();
    const Vec3 middle = random.point(1);
    const Capsule capsule{middle - (along + tilt), middle + (along + tilt), 0};
    const Closest c = closest(capsule, box);
    // Over a gap of nanometres the witnesses' rounding turns the escape: see Closest.
    if (c.distance <= 0 || c.distance > 1e-6) expectCertified(capsule.core(), box, c);
    ASSERT_NEAR(std::max(c.distance, 0.0), test::distanceTo(capsule.core(), Solid(box)), kTight);
  }
}

}  // namespace
}  // namespace baywright
