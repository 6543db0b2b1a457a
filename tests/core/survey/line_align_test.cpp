// SPDX-License-Identifier: Apache-2.0
#include "survey/line_align.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

Vec2 worldOf(const PlanScan& scan, const Vec2& pixel) {
  const Vec3 p = scan.worldFromPixel * Vec3(pixel.x(), pixel.y(), 1);
  return p.head<2>() / p.z();
}

// 150 dpi is 5905.5 dots a metre: a bar of 5 m at 1:50 is 0.1 m or 590.55 pixels long.
TEST(LineAlign, ReadsAScaleBar) {
  const auto scale = suggestedScale({{100, 200}, {690.55, 200}}, 5, 150 / 0.0254);
  ASSERT_TRUE(scale);
  EXPECT_NEAR(scale->metresPerPixel, 5 / 590.55, 1e-9);
  EXPECT_NEAR(scale->sigma / scale->metresPerPixel, 1.414 / 590.55, 1e-6);
  EXPECT_NEAR(scale->sheetScale, 50, 0.01);
  ASSERT_TRUE(scale->usualScale);
  EXPECT_EQ(*scale->usualScale, 50);
}

TEST(LineAlign, ReadsADoorsWidth) {
  // 3 ft at a quarter of an inch to the foot is three quarters of an inch: 225 pixels at 300 dpi.
  const auto scale = suggestedScale({{0, 0}, {0, 224}}, 0.9144, 300 / 0.0254);
  ASSERT_TRUE(scale);
  EXPECT_EQ(scale->usualScale.value_or(0), 48);
  EXPECT_FALSE(suggestedScale({{0, 0}, {0, 224}}, 0.9144, 0)->usualScale);
  EXPECT_FALSE(suggestedScale({{0, 0}, {0, 500}}, 0.9144, 300 / 0.0254)->usualScale);  // about 1:21.6
}

TEST(LineAlign, RefusesWhatScalesNothing) {
  EXPECT_FALSE(suggestedScale({{0, 0}, {3, 0}}, 1, 0));
  EXPECT_FALSE(suggestedScale({{0, 0}, {300, 0}}, 0, 0));
  EXPECT_FALSE(suggestedScale({{0, 0}, {300, 0}}, -2, 0));
}

TEST(LineAlign, LaysASecondSheetOnTheFirst) {
  PlanScan scan;
  scan.worldFromPixel << 0.01, 0, -2, 0, -0.01, 7, 0, 0, 1;
  const Vec2 firstPixel(200, 300), secondPixel(700, 350);
  const PointPair first{worldOf(scan, firstPixel), {1, 2}};
  const PointPair second{worldOf(scan, secondPixel), {1.4, 7}};
  const auto aligned = alignedByTwoPoints(scan, first, second);
  ASSERT_TRUE(aligned);
  EXPECT_TRUE(worldOf(aligned->scan, firstPixel).isApprox(Vec2(1, 2), 1e-12));
  EXPECT_TRUE(worldOf(aligned->scan, secondPixel).isApprox(Vec2(1.4, 7), 1e-12));
  EXPECT_NEAR(aligned->scaleChange, std::hypot(0.4, 5) / std::hypot(5, 0.5), 1e-12);
  // The way from the first point to the second ran at atan2(-0.5, 5) and now runs at atan2(5, 0.4).
  EXPECT_NEAR(aligned->turn, std::atan2(5, 0.4) - std::atan2(-0.5, 5), 1e-12);
  // A third point keeps its place with respect to both: all is similar.
  const Vec2 third = worldOf(scan, {450, 900});
  const double before = (third - first.from).norm() / (second.from - first.from).norm();
  const double after = (worldOf(aligned->scan, {450, 900}) - first.to).norm() / (second.to - first.to).norm();
  EXPECT_NEAR(before, after, 1e-12);
}

TEST(LineAlign, RefusesOnePointTwice) {
  EXPECT_FALSE(alignedByTwoPoints({}, {{1, 1}, {0, 0}}, {{1, 1}, {5, 5}}));
  EXPECT_FALSE(alignedByTwoPoints({}, {{1, 1}, {0, 0}}, {{2, 1}, {0, 0}}));
}

}  // namespace
}  // namespace baywright
