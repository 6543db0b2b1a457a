// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_squaring.h"

#include <gtest/gtest.h>

#include <cmath>

#include "survey/scan_blocks.h"

namespace baywright {
namespace {

/// Sides along a ring, each fitted well to samples over its whole length, the side `index` turned about its
/// middle by so much.
ScanOutline turned(const Ring& ring, std::size_t index, double radians) {
  ScanOutline outline;
  const std::size_t n = ring.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Vec2 middle = 0.5 * (ring[i] + ring[(i + 1) % n]);
    const double length = (ring[(i + 1) % n] - ring[i]).norm();
    ScanLine side;
    side.normal = leftOf((ring[(i + 1) % n] - ring[i]) / length);
    if (i == index) side.normal = Eigen::Rotation2Dd(radians) * side.normal;
    side.offset = side.normal.dot(middle);
    side.middle = side.along().dot(middle);
    side.spread = length / std::sqrt(12.0);
    side.rms = 0.01;
    side.pieces = 40 * length;
    side.area = 2.5 * length;
    outline.sides.push_back(side);
    outline.seen.push_back(1);
  }
  for (std::size_t i = 0; i < n; ++i)
    outline.corners.push_back(crossingOf(outline.sides[(i + n - 1) % n], outline.sides[i]));
  return outline;
}

/// Off the direction that the ring gives it, radians.
double offAfter(const Ring& ring, std::size_t index, double radians) {
  ScanOutline outline = turned(ring, index, radians);
  squareSides(outline);
  const Vec2 along = (ring[(index + 1) % ring.size()] - ring[index]).normalized();
  return std::asin(cross(leftOf(along), outline.sides[index].normal));
}

constexpr double kDegree = kPi / 180;
const Ring kNiche{{0, 0}, {2, 0}, {2, -0.4}, {3.1, -0.4}, {3.1, 0}, {6, 0}, {6, 4}, {0, 4}};

TEST(ScanSquaring, GivesAShortWallTheDirectionOfTheLongOnes) {
  EXPECT_NEAR(offAfter(kNiche, 2, 0.6 * kDegree), 0, 0.15 * kDegree);
  EXPECT_NEAR(offAfter(kNiche, 1, 8 * kDegree), 0, 0.01 * kDegree);
}

TEST(ScanSquaring, LeavesALongWallThatIsBuiltAskew) {
  EXPECT_NEAR(offAfter(kNiche, 6, 1 * kDegree), 1 * kDegree, 0.05 * kDegree);
}

TEST(ScanSquaring, LeavesAShortWallThatPlainlyRunsAskew) {
  const Ring cut{{0, 0}, {4, 0}, {5, 1}, {5, 4}, {0, 4}};
  EXPECT_NEAR(offAfter(cut, 1, 0), 0, 1e-9);
}

TEST(ScanBlocks, AreWhatStandsOutAsDeepAsACupboard) {
  const Ring corner{{0, 0}, {6, 0}, {6, 4}, {1.2, 4}, {1.2, 3.4}, {0, 3.4}};
  auto blocks = blocksOf(turned(corner, 0, 0));
  ASSERT_EQ(blocks.size(), 1u);
  EXPECT_EQ(blocks[0].first, 3u);
  EXPECT_EQ(blocks[0].last, 4u);
  EXPECT_NEAR(blocks[0].depth, 0.6, 1e-9);
  EXPECT_NEAR(blocks[0].width, 1.2, 1e-9);
  const Ring breast{{0, 0}, {2, 0}, {2, 0.35}, {3.4, 0.35}, {3.4, 0}, {6, 0}, {6, 4}, {0, 4}};
  blocks = blocksOf(turned(breast, 0, 0));
  ASSERT_EQ(blocks.size(), 1u);
  EXPECT_EQ(blocks[0].first, 1u);
  EXPECT_EQ(blocks[0].last, 3u);
  EXPECT_NEAR(blocks[0].width, 1.4, 1e-9);
}

TEST(ScanBlocks, AreNeitherNichesNorLegsOfARoom) {
  EXPECT_TRUE(
      blocksOf(turned({{0, 0}, {3.3, 0}, {3.3, -0.4}, {4.6, -0.4}, {4.6, 0}, {8, 0}, {8, 4}, {0, 4}}, 0, 0))
          .empty());
  EXPECT_TRUE(
      blocksOf(turned({{0, 0}, {7.2, 0}, {7.2, 3.3}, {4.5, 3.3}, {4.5, 5.4}, {0, 5.4}}, 0, 0)).empty());
}

}  // namespace
}  // namespace baywright
