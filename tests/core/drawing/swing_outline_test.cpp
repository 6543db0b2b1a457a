// SPDX-License-Identifier: Apache-2.0
#include "drawing/swing_outline.h"

#include <gtest/gtest.h>

#include "drawn_job.h"

namespace baywright {
namespace {

using namespace baywright::testing;

Vec2 seen(const Vec3& p, SwingSight sight) {
  if (sight == SwingSight::FromAbove) return {p.x(), p.y()};
  return sight == SwingSight::DownRange ? Vec2(p.y(), p.z()) : Vec2(p.x(), p.z());
}

bool holds(const std::vector<Ring>& rings, const Vec2& p) {
  int inside = 0;
  for (const Ring& ring : rings) inside += locate(ring, p) != Location::Outside;
  return inside % 2 == 1;
}

double areaOf(const std::vector<Ring>& rings) {
  double area = 0;
  for (const Ring& ring : rings) area += signedArea(ring);
  return area;
}

constexpr SwingSight kSights[] = {SwingSight::FromAbove, SwingSight::DownRange, SwingSight::FromTheSide};

TEST(SwingOutline, OfOneLevelBarIsAStadium) {
  Swing swing = *barSwing(Hand::Right);
  swing.expected.capsules = {{{{-1, 0, 2}, {1, 0, 2}, 0.2}, 0, BodyPart::Shaft}};
  const double stadium = 2 * 0.4 + kPi * 0.04;
  EXPECT_NEAR(areaOf(outlineOf(swing, SwingSight::FromAbove, 0.1).expected), stadium, 0.01 * stadium);
  EXPECT_NEAR(areaOf(outlineOf(swing, SwingSight::DownRange, 0.1).expected), kPi * 0.04, 0.02 * kPi * 0.04);
  const double grown = 2 * 0.6 + kPi * 0.09;
  EXPECT_NEAR(areaOf(outlineOf(swing, SwingSight::FromAbove, 0.1).clearance), grown, 0.01 * grown);
}

// A real swing: every capsule of the envelope lies within its outline from each side.
TEST(SwingOutline, HoldsEveryCapsule) {
  const Job job = smallGarage();
  const auto swing = swingOf(job.golfers.front(), job.golfers.front().clubs.front());
  ASSERT_TRUE(swing);
  for (const SwingSight sight : kSights) {
    const SwingOutline outline = outlineOf(*swing, sight, 0.15);
    for (const SwingCapsule& each : swing->expected.capsules) {
      for (const double share : {0.0, 0.5, 1.0}) {
        const Vec3 p = each.capsule.a + share * (each.capsule.b - each.capsule.a);
        if (p.z() <= 0) continue;
        EXPECT_TRUE(holds(outline.expected, seen(p, sight))) << p.transpose();
        EXPECT_TRUE(holds(outline.clearance, seen(p, sight))) << p.transpose();
      }
    }
    EXPECT_LT(areaOf(outline.expected), areaOf(outline.clearance));
    EXPECT_FALSE(outline.address.empty());
    EXPECT_FALSE(outline.fullExtension.empty());
  }
}

TEST(SwingOutline, EndsAtTheFloor) {
  Swing swing = *barSwing(Hand::Right);
  swing.expected.capsules.front().capsule.a.z() = 0;
  for (const SwingSight sight : {SwingSight::DownRange, SwingSight::FromTheSide}) {
    for (const Ring& ring : outlineOf(swing, sight, 0.15).clearance) {
      for (const Vec2& p : ring) EXPECT_GE(p.y(), -1e-6);
    }
  }
}

TEST(SwingOutline, OfTheOtherHandIsItsMirror) {
  const auto right = outlineOf(*barSwing(Hand::Right), SwingSight::FromAbove, 0.15).expected;
  for (const Ring& ring : outlineOf(*barSwing(Hand::Left), SwingSight::FromAbove, 0.15).expected) {
    const Vec2 middle = centroid(Polygon{ring, {}});
    EXPECT_TRUE(holds(right, {middle.x(), -middle.y()}));
  }
}

TEST(SwingOutlines, KeepWhatTheyHaveWorkedOut) {
  SwingOutlines outlines;
  const auto swing = barSwing(Hand::Right);
  const SwingOutline* first = &outlines.of(swing, SwingSight::FromAbove, 0.15);
  EXPECT_EQ(first, &outlines.of(swing, SwingSight::FromAbove, 0.15));
  EXPECT_NE(first, &outlines.of(swing, SwingSight::FromTheSide, 0.15));
  EXPECT_NE(first, &outlines.of(swing, SwingSight::FromAbove, 0.20));
  EXPECT_EQ(first->expected, outlineOf(*swing, SwingSight::FromAbove, 0.15).expected);
}

TEST(SwingOutlines, TellAnotherSwingFromOneThatIsGone) {
  SwingOutlines outlines;
  double small = 0;
  {
    const auto swing = barSwing(Hand::Right);
    small = areaOf(outlines.of(swing, SwingSight::FromAbove, 0.15).expected);
  }
  auto longer = std::make_shared<Swing>(*barSwing(Hand::Right));
  longer->expected = longer->fullExtension;
  EXPECT_GT(areaOf(outlines.of(longer, SwingSight::FromAbove, 0.15).expected), small + 0.01);
}

}  // namespace
}  // namespace baywright
