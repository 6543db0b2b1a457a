// SPDX-License-Identifier: Apache-2.0
#include "clearance/contour.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace baywright {
namespace {

GridField sampled(int columns, int rows, double cell, const std::function<double(const Vec2&)>& value) {
  GridField field{{0, 0}, cell, columns, rows, {}};
  for (int row = 0; row < rows; ++row) {
    for (int column = 0; column < columns; ++column) field.values.push_back(value(field.node(column, row)));
  }
  return field;
}

TEST(Contour, RunsRoundADiscCounterClockwise) {
  const auto disc = [](const Vec2& p) { return 1.0 - (p - Vec2(2, 2)).norm(); };
  const auto rings = zeroContours(sampled(81, 81, 0.05, disc));
  ASSERT_EQ(rings.size(), 1u);
  EXPECT_NEAR(signedArea(rings[0]), kPi, 0.005);
  for (const Vec2& p : rings[0]) EXPECT_NEAR((p - Vec2(2, 2)).norm(), 1.0, 0.001);
}

TEST(Contour, RunsRoundAHoleClockwise) {
  const auto annulus = [](const Vec2& p) { return 0.5 - std::abs((p - Vec2(2, 2)).norm() - 1.0); };
  const auto rings = zeroContours(sampled(81, 81, 0.05, annulus));
  ASSERT_EQ(rings.size(), 2u);
  double area = 0;
  for (const Ring& ring : rings) area += signedArea(ring);
  EXPECT_NEAR(area, kPi * (1.5 * 1.5 - 0.5 * 0.5), 0.01);
}

TEST(Contour, IsExactOnAPlane) {
  GridField field{{0, 0}, 1, 4, 4, {}};
  for (int row = 0; row < 4; ++row) {
    for (int column = 0; column < 4; ++column) {
      const bool border = row == 0 || row == 3 || column == 0 || column == 3;
      field.values.push_back(border ? -3.0 : 1.0);
    }
  }
  const auto rings = zeroContours(field);
  ASSERT_EQ(rings.size(), 1u);
  EXPECT_NEAR(signedArea(rings[0]), 1.5 * 1.5 - 4 * 0.5 * 0.25 * 0.25, 1e-12);
}

TEST(Contour, PartsOrJoinAlternatingCornersByTheirMiddle) {
  const auto saddle = [](double strong) {
    GridField field{{0, 0}, 1, 4, 4, std::vector<double>(16, -1.0)};
    field.values[5] = field.values[10] = strong;
    return zeroContours(field).size();
  };
  EXPECT_EQ(saddle(3.0), 1u);
  EXPECT_EQ(saddle(0.5), 2u);
}

TEST(Contour, IsNothingWhereAllIsNegative) {
  EXPECT_TRUE(zeroContours(sampled(5, 5, 1, [](const Vec2&) { return -1.0; })).empty());
}

}  // namespace
}  // namespace baywright
