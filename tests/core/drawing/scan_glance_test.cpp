// SPDX-License-Identifier: Apache-2.0
#include "drawing/scan_glance.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace baywright {
namespace {

/// A room of 5 by 4, 2.5 high, with z up: floor, ceiling and walls, a point every tenth of a unit.
ScanGeometry roomCloud() {
  ScanGeometry scan;
  for (int i = 0; i <= 50; ++i) {
    for (int k = 0; k <= 40; ++k) {
      const float x = 0.1F * static_cast<float>(i), y = 0.1F * static_cast<float>(k);
      scan.points.emplace_back(x, y, 0.0F);
      scan.points.emplace_back(x, y, 2.5F);
    }
    for (int k = 1; k < 25; ++k) {
      const float x = 0.1F * static_cast<float>(i), z = 0.1F * static_cast<float>(k);
      scan.points.emplace_back(x, 0.0F, z);
      scan.points.emplace_back(x, 4.0F, z);
    }
  }
  return scan;
}

double highest(const ScanGlance& glance) {
  return std::max_element(glance.dots.begin(), glance.dots.end(),
                          [](const auto& a, const auto& b) { return a.height < b.height; })
      ->height;
}

TEST(ScanGlance, LooksIntoTheRoomWithoutItsCeiling) {
  const ScanGeometry scan = roomCloud();
  const auto samples = glanceSamples(scan);
  ASSERT_EQ(samples.size(), scan.points.size());
  const ScanGlance glance = glanceAt(samples, UpAxis::PlusZ, 1.0);
  ASSERT_FALSE(glance.dots.empty());
  EXPECT_LT(glance.dots.size(), samples.size());
  EXPECT_LT(highest(glance), 0.9);
  EXPECT_GT(highest(glance), 0.7);
}

TEST(ScanGlance, ShowsAPersonInTheUnitThatIsChosen) {
  const auto samples = glanceSamples(roomCloud());
  const auto inMetres = glanceAt(samples, UpAxis::PlusZ, 1.0).person;
  const auto inFeet = glanceAt(samples, UpAxis::PlusZ, 0.3048).person;
  ASSERT_TRUE(inMetres && inFeet);
  const double tall = (inMetres->b - inMetres->a).y();
  EXPECT_NEAR((inMetres->b - inMetres->a).x(), 0, 1e-12);
  EXPECT_GT(tall, 0);
  EXPECT_NEAR((inFeet->b - inFeet->a).y(), tall / 0.3048, 1e-9);
  EXPECT_FALSE(glanceAt(samples, UpAxis::PlusZ, std::nullopt).person);
}

TEST(ScanGlance, IsTheSameWhicheverAxisIsUp) {
  ScanGeometry lying = roomCloud();
  for (Eigen::Vector3f& p : lying.points) p = Eigen::Vector3f(p.x(), p.z(), -p.y());
  const ScanGlance standing = glanceAt(glanceSamples(roomCloud()), UpAxis::PlusZ, 1.0);
  const ScanGlance turned = glanceAt(glanceSamples(lying), UpAxis::PlusY, 1.0);
  ASSERT_EQ(turned.dots.size(), standing.dots.size());
  EXPECT_NEAR(highest(turned), highest(standing), 1e-6);
  const ScanGlance onItsHead = glanceAt(glanceSamples(lying), UpAxis::MinusY, 1.0);
  ASSERT_FALSE(onItsHead.dots.empty());
  EXPECT_NEAR((onItsHead.person->b - onItsHead.person->a).y(), (turned.person->b - turned.person->a).y(),
              1e-6);
}

TEST(ScanGlance, LeavesOutliersOut) {
  ScanGeometry scan = roomCloud();
  for (int i = 0; i < 20; ++i) scan.points.emplace_back(300.0F, 10.0F * static_cast<float>(i), 90.0F);
  for (const ScanGlance::Dot& dot : glanceAt(glanceSamples(scan), UpAxis::PlusZ, 1.0).dots)
    EXPECT_LT(dot.at.norm(), 12);
}

TEST(ScanGlance, OfALargeMeshIsNotLarge) {
  ScanGeometry scan;
  scan.points = {{0, 0, 0}, {6, 0, 0}, {6, 5, 0}, {0, 5, 0}, {0, 0, 3}};
  scan.triangles = {{0, 1, 2}, {0, 2, 3}, {0, 1, 4}};
  const auto samples = glanceSamples(scan);
  EXPECT_GT(samples.size(), 1000u) << "three triangles are seen as surfaces";
  EXPECT_LE(samples.size(), kMostGlanced);
  EXPECT_TRUE(glanceSamples({}).empty());
  EXPECT_TRUE(glanceAt({}, UpAxis::PlusX, 1.0).dots.empty());
}

}  // namespace
}  // namespace baywright
