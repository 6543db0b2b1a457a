// SPDX-License-Identifier: Apache-2.0
#include "geometry/point_tree.h"

#include <gtest/gtest.h>

#include "random_shapes.h"

namespace baywright {
namespace {

PointCloud cloudOf(std::vector<Eigen::Vector3f> points) {
  return std::make_shared<const std::vector<Eigen::Vector3f>>(std::move(points));
}

PointTree treeOf(std::vector<Eigen::Vector3f> points) {
  return PointTree::build(cloudOf(std::move(points))).value().value();
}

TEST(PointTree, AgreesWithLookingAtEverything) {
  test::RandomShapes random(71);
  for (const int count : {1, 8, 9, 70, 5000}) {
    std::vector<Eigen::Vector3f> points;
    for (int i = 0; i < count; ++i) points.push_back(random.point(3).cast<float>());
    const PointTree tree = treeOf(points);
    for (int i = 0; i < 100; ++i) {
      const Capsule capsule = random.capsule(3);
      for (const double bound : {1e9, 0.05}) {
        const auto found = tree.nearest(capsule, bound);
        const auto truth = tree.nearest(capsule, bound, Search::Everything);
        ASSERT_EQ(found.has_value(), truth.has_value());
        if (!found) continue;
        EXPECT_EQ(found->point, truth->point);
        EXPECT_EQ(found->closest.distance, truth->closest.distance);
      }
    }
  }
}

TEST(PointTree, DistanceIsToTheCapsulesSkin) {
  const auto found = treeOf({{0, 0, 5}, {1, 0, 3}}).nearest({{0, 0, 0}, {2, 0, 0}, 0.5});
  ASSERT_TRUE(found);
  EXPECT_EQ(found->point, 1U);
  EXPECT_DOUBLE_EQ(found->closest.distance, 2.5);
  EXPECT_EQ(found->closest.onSecond, Vec3(1, 0, 3));
  EXPECT_NEAR((found->closest.onFirst - Vec3(1, 0, 0.5)).norm(), 0, 1e-15);
}

TEST(PointTree, AmongEquallyNearTheLowestIndexWins) {
  const PointTree tree = treeOf(std::vector<Eigen::Vector3f>(50, Eigen::Vector3f(1, 2, 3)));
  EXPECT_EQ(tree.nearest({{0, 0, 0}, {0, 0, 1}, 0})->point, 0U);
}

TEST(PointTree, RefusesNumbersThatAreNoneAndFindsNothingInNothing) {
  const auto bad = PointTree::build(cloudOf({{0, 0, 0}, {0, std::nanf(""), 0}}));
  ASSERT_FALSE(bad);
  EXPECT_EQ(bad.error().where, "point 2");
  EXPECT_FALSE(treeOf({}).nearest({{0, 0, 0}, {1, 0, 0}, 1}));
}

TEST(PointTree, StopsWhenAskedTo) {
  Progress progress;
  progress.cancelled = [] { return true; };
  const auto stopped = PointTree::build(cloudOf({{0, 0, 0}}), progress);
  ASSERT_TRUE(stopped);
  EXPECT_FALSE(*stopped);
}

}  // namespace
}  // namespace baywright
