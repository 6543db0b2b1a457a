// SPDX-License-Identifier: Apache-2.0
#include "geometry/homography.h"

#include <gtest/gtest.h>

#include <array>
#include <vector>

#include "random_shapes.h"

namespace baywright {
namespace {

const std::array<Vec2, 4> kSquare{Vec2(0, 0), Vec2(1, 0), Vec2(1, 1), Vec2(0, 1)};
const std::array<Vec2, 4> kQuad{Vec2(0, 0), Vec2(4, 0), Vec2(3, 2), Vec2(1, 2)};

std::vector<PointPair> paired(const std::array<Vec2, 4>& from, const std::array<Vec2, 4>& to) {
  std::vector<PointPair> pairs;
  for (std::size_t i = 0; i < 4; ++i) pairs.push_back({from[i], to[i]});
  return pairs;
}

Mat3 scaledByLast(const Homography& map) {
  return map.matrix / map.matrix(2, 2);
}

// Square to quadrilateral, Heckbert, Fundamentals of Texture Mapping and Image Warping (1989), section 2.2.3,
// applied to a trapezium by hand: H = [4 2 0; 0 4 0; 0 1 1]. The middle goes to the crossing of the
// diagonals, (2, 4/3).
TEST(Homography, OfTheUnitSquareIsHeckbertsForm) {
  Mat3 expected;
  expected << 4, 2, 0, 0, 4, 0, 0, 1, 1;
  const auto closed = homographyFromUnitSquare(kQuad);
  ASSERT_TRUE(closed);
  EXPECT_NEAR((scaledByLast(*closed) - expected).norm(), 0, 1e-12);
  const auto fit = homographyFrom(paired(kSquare, kQuad));
  ASSERT_TRUE(fit);
  EXPECT_NEAR((scaledByLast(fit->map) - expected).norm(), 0, 1e-12);
  EXPECT_NEAR((*mapped(fit->map, {0.5, 0.5}) - Vec2(2, 4.0 / 3)).norm(), 0, 1e-13);
  EXPECT_LT(fit->rms, 1e-13);
}

TEST(Homography, DirectFormAndLeastSquaresAgreeOnAnyConvexQuad) {
  test::RandomShapes random(51);
  for (int i = 0; i < 500; ++i) {
    std::array<Vec2, 4> quad = kSquare;
    for (Vec2& p : quad) p = 1000 * (p + random.point2(0.2)) + Vec2(5000, 2000);
    const auto closed = homographyFromUnitSquare(quad);
    const auto fit = homographyFrom(paired(kSquare, quad));
    ASSERT_TRUE(closed && fit);
    EXPECT_NEAR((closed->matrix - fit->map.matrix).norm(), 0, 1e-9);
    for (std::size_t k = 0; k < 4; ++k) EXPECT_NEAR((*mapped(*closed, kSquare[k]) - quad[k]).norm(), 0, 1e-8);
  }
}

TEST(Homography, RecoversAMapFromManyNoisyPoints) {
  test::RandomShapes random(52);
  const Homography truth = homographyFromUnitSquare(kQuad).value();
  std::vector<PointPair> pairs;
  for (int i = 0; i < 200; ++i) {
    const Vec2 p = random.point2(0.5) + Vec2(0.5, 0.5);
    pairs.push_back({p, *mapped(truth, p) + random.point2(1e-3)});
  }
  const auto fit = homographyFrom(pairs);
  ASSERT_TRUE(fit);
  // Uniform noise of half-width h in x and y: root mean square distance h * sqrt(2/3), less a little for the
  // fit.
  EXPECT_NEAR(fit->rms, 1e-3 * std::sqrt(2.0 / 3), 1e-4);
  for (const Vec2& p : kSquare) EXPECT_NEAR((*mapped(fit->map, p) - *mapped(truth, p)).norm(), 0, 1e-3);
}

TEST(Homography, ConditionTellsAThinQuadFromAGoodOne) {
  const auto good = homographyFrom(paired(kSquare, kQuad));
  EXPECT_LT(good->condition, 20);
  const auto thin = homographyFrom(paired(kSquare, {Vec2(0, 0), Vec2(1, 0), Vec2(0.5001, 0.5), Vec2(0, 1)}));
  ASSERT_TRUE(thin);
  EXPECT_GT(thin->condition, kPoorConditioning);
}

TEST(Homography, InverseAndCompositionUndoEachOther) {
  const Homography map = homographyFromUnitSquare(kQuad).value();
  const auto back = inverse(map);
  ASSERT_TRUE(back);
  const Homography same = composed(*back, map);
  EXPECT_NEAR((scaledByLast(same) - Mat3::Identity()).norm(), 0, 1e-14);
  const Vec2 p(0.3, 0.8);
  EXPECT_NEAR((*mapped(*back, *mapped(map, p)) - p).norm(), 0, 1e-15);
  EXPECT_FALSE(inverse({Vec3(1, 1, 0).asDiagonal()}));
}

TEST(Homography, JacobianIsTheSlopeOfTheMap) {
  const Homography map = homographyFromUnitSquare(kQuad).value();
  const Vec2 p(0.4, 0.7);
  const double h = 1e-6;
  Mat2 slope;
  slope.col(0) = (*mapped(map, p + Vec2(h, 0)) - *mapped(map, p - Vec2(h, 0))) / (2 * h);
  slope.col(1) = (*mapped(map, p + Vec2(0, h)) - *mapped(map, p - Vec2(0, h))) / (2 * h);
  EXPECT_NEAR((*jacobianAt(map, p) - slope).norm(), 0, 1e-8);
}

TEST(Homography, HasNoImageOnTheHorizon) {
  const Homography map = homographyFromUnitSquare(kQuad).value();  // third component 1 + y
  EXPECT_FALSE(mapped(map, {0.3, -1}));
  EXPECT_FALSE(jacobianAt(map, {0.3, -1}));
  EXPECT_GT(depthRatio(map, {0, -0.5}, {0, 0}), 0);
  EXPECT_LT(depthRatio(map, {0, -1.5}, {0, 0}), 0);
}

struct BadPairs {
  const char* sentence;
  std::array<Vec2, 4> to;
};

TEST(Homography, SaysWhyItRefusesFourPoints) {
  const std::vector<BadPairs> cases{
      {"points 2 3 4: Three of the four points lie on a line",
       {Vec2(0, 0), Vec2(2, 0), Vec2(1, 1), Vec2(0, 2)}},
      {"points 1 3: Two points are in the same place", {Vec2(0, 0), Vec2(1, 0), Vec2(0, 0), Vec2(0, 1)}},
      {"not a finite number", {Vec2(0, 0), Vec2(1, 0), Vec2(1, std::nan("")), Vec2(0, 1)}},
      {"different order", {Vec2(0, 0), Vec2(1, 1), Vec2(1, 0), Vec2(0, 1)}},
  };
  for (const BadPairs& bad : cases) {
    for (const auto& result :
         {homographyFrom(paired(kSquare, bad.to)).map([](const auto& f) { return f.map; }),
          homographyFromUnitSquare(bad.to)}) {
      ASSERT_FALSE(result) << bad.sentence;
      EXPECT_NE(result.error().sentence().find(bad.sentence), std::string::npos) << result.error().sentence();
    }
    EXPECT_FALSE(homographyFrom(paired(bad.to, kSquare)));
  }
  EXPECT_FALSE(homographyFrom({}));
  const auto pairs = paired(kSquare, kQuad);
  EXPECT_FALSE(homographyFrom(std::span(pairs).first(3)));
}

TEST(Homography, SaysWhenAllPointsButOneAreInLine) {
  std::vector<PointPair> pairs = paired(kSquare, kQuad);
  pairs.clear();
  for (int i = 0; i < 6; ++i) pairs.push_back({{1.0 * i, 2.0 * i}, {1.0 * i, 0}});
  pairs.push_back({{0, 5}, {0, 5}});
  const auto fit = homographyFrom(pairs);
  ASSERT_FALSE(fit);
  EXPECT_NE(fit.error().what.find("All points but one"), std::string::npos);
}

}  // namespace
}  // namespace baywright
