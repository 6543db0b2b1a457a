// SPDX-License-Identifier: Apache-2.0
#include "clearance/ceiling_pieces.h"

#include <random>

#include "clearance/obstacles.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

/// The deepest of a ball in any piece of the ceiling, or its smallest gap.
double depthOf(const Obstacles& ceiling, const Vec3& centre, double radius) {
  double least = 1e9;
  for (const RoomObstacle& piece : ceiling) {
    least = std::min(least, closest(Capsule{centre, centre, radius}, piece).distance);
  }
  return least;
}
double depthOf(const JobBuilder& room, const Vec3& centre, double radius) {
  return depthOf(ceilingObstacles(room.job()), centre, radius);
}

JobBuilder bare(double length, double width) {
  return garage(length, width).with([](Job& j) { j.room.ceiling.clear(); });
}

TEST(CeilingPieces, OfASteepRoofAreLeftSquareToTheSlope) {
  // 40 degrees up from 2.2 m on either side to a ridge at x = 3. A club head 0.05 m round stands with its
  // middle 0.06 m behind the slope's face, 0.1 m beside the ridge: 0.11 m frees it.
  const double rise = std::tan(40_deg);
  const JobBuilder roof = bare(6, 5)
                              .withCeilingPart({{0, 0}, {3, 0}, {3, 5}, {0, 5}}, 2.2, {rise, 0})
                              .withCeilingPart({{6, 0}, {6, 5}, {3, 5}, {3, 0}}, 2.2, {-rise, 0});
  const double underside = 2.2 + 2.9 * rise;
  EXPECT_NEAR(depthOf(roof, {2.9, 2.5, underside + 0.06 / std::cos(40_deg)}, 0.05), -0.11, 1e-6);
  EXPECT_NEAR(depthOf(roof, {3.1, 2.5, underside + 0.06 / std::cos(40_deg)}, 0.05), -0.11, 1e-6);
}

TEST(CeilingPieces, AreLeftSidewaysAtAStep) {
  // A step at x = 2 from 2.3 up to 2.8 m.
  const JobBuilder step =
      garage(6, 5).withCeiling(2.8).withCeilingPart({{0, 0}, {2, 0}, {2, 5}, {0, 5}}, 2.3);
  EXPECT_NEAR(depthOf(step, {1.96, 2.5, 2.60}, 0.05), -0.09, 1e-6);                    // 0.04 + 0.05 sideways
  EXPECT_NEAR(depthOf(step, {1.0, 2.5, 2.60}, 0.05), -0.35, 1e-6);                     // 0.3 + 0.05 down
  EXPECT_NEAR(depthOf(step, {1.96, 2.5, 2.95}, 0.05), -std::hypot(0.09, 0.20), 1e-6);  // sideways and down
}

TEST(CeilingPieces, AreCutWhereASlopeRisesPastItsNeighbour) {
  // Rises from 2.0 m at y = 0 by 0.4 a metre; level at 2.6 m beyond x = 3: they cross at y = 1.5.
  const JobBuilder room = bare(6, 5)
                              .withCeilingPart({{0, 0}, {3, 0}, {3, 5}, {0, 5}}, 2.0, {0, 0.4})
                              .withCeilingPart({{3, 0}, {6, 0}, {6, 5}, {3, 5}}, 2.6);
  EXPECT_NEAR(depthOf(room, {2.98, 0.5, 2.4}, 0.05), -0.07, 1e-6);  // the slope is the lower: 2.2 m
  EXPECT_NEAR(depthOf(room, {3.02, 4.0, 2.9}, 0.05), -0.07, 1e-6);  // the level part is
  const Job job = room.job();
  const auto pieces = ceilingPieces(job.room, job.room.ceiling[0]);
  ASSERT_EQ(pieces.size(), 2u);
  double total = 0;
  for (const CeilingPiece& piece : pieces) total += signedArea(piece.plan);
  EXPECT_NEAR(total, 15, 1e-9);
}

TEST(CeilingPieces, HaveNoWayOutIntoAWallOrWhatNobodyMeasured) {
  const Job job = bare(6, 5).withCeilingPart({{0, 0}, {3, 0}, {3, 5}, {0, 5}}, 2.4).uncheckedJob();
  for (const CeilingPiece& piece : ceilingPieces(job.room, job.room.ceiling[0])) {
    for (const auto& side : piece.openBelow) EXPECT_FALSE(side);
  }
}

/// The shortest shift that frees a ball from all pieces, of many directions.
double searchedDepth(const Obstacles& ceiling, const Vec3& centre, double radius) {
  constexpr int kDirections = 900;
  double best = 1e9;
  for (int i = 0; i < kDirections; ++i) {  // a spiral over the lower half of the sphere
    const double down = (i + 0.5) / kDirections;
    const double turn = 2.399963 * i;
    const double level = std::sqrt(1 - down * down);
    const Vec3 way(level * std::cos(turn), level * std::sin(turn), -down);
    for (double by = 0.01; by < best; by += 0.01) {
      if (depthOf(ceiling, centre + by * way, radius) >= 0) best = by;
    }
  }
  return best;
}

TEST(CeilingPieces, AreAsDeepAsASearchOfAllShiftsSays) {
  std::mt19937 random(11);
  const auto between = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  int overlaps = 0;
  while (overlaps < 60) {
    const double joint = between(2, 4);
    const Job job = bare(6, 5)
                        .withCeilingPart({{0, 0}, {joint, 0}, {joint, 5}, {0, 5}}, between(2.1, 2.6),
                                         {between(-0.1, 0.8), between(0, 0.3)})
                        .withCeilingPart({{joint, 0}, {6, 0}, {6, 5}, {joint, 5}}, between(2.3, 3.0),
                                         {between(-0.4, 0.1), between(-0.1, 0.1)})
                        .job();
    const Obstacles ceiling = ceilingObstacles(job);
    const Vec3 at(joint + between(-0.6, 0.6), between(1, 4), between(2.2, 3.4));
    const double depth = -depthOf(ceiling, at, 0.05);
    if (depth <= 0 || depth > 0.8) continue;
    ++overlaps;
    const double searched = searchedDepth(ceiling, at, 0.05);
    EXPECT_LE(depth, 1.05 * searched) << at.transpose();
    EXPECT_GE(depth, 0.7 * searched - 0.015) << at.transpose();
  }
}

}  // namespace
}  // namespace baywright
