// SPDX-License-Identifier: Apache-2.0
#include "geometry/triangle_tree.h"

#include <gtest/gtest.h>

#include "random_shapes.h"

namespace baywright {
namespace {

using test::RandomShapes;

/// Triangles strewn over a few metres about `middle`; some have no area, some come twice.
TriangleMesh strewn(RandomShapes& random, int count, const Vec3& middle) {
  std::vector<Eigen::Vector3f> vertices;
  std::vector<TriangleMesh::Corners> triangles;
  for (int i = 0; i < count; ++i) {
    const Vec3 a = middle + random.point(2);
    const auto first = static_cast<std::uint32_t>(vertices.size());
    for (int k = 0; k < 3; ++k)
      vertices.push_back((a + random.between(0, 0.5) * random.direction()).cast<float>());
    if (random.oneIn(10)) vertices[first + 1] = vertices[first];
    triangles.push_back({first, first + 1, first + 2});
    if (random.oneIn(10)) triangles.push_back({first + 2, first, first + 1});
  }
  return TriangleMesh::from(std::move(vertices), std::move(triangles)).value();
}

void expectSame(const std::optional<NearestTriangle>& tree, const std::optional<NearestTriangle>& truth) {
  ASSERT_EQ(tree.has_value(), truth.has_value());
  if (!tree) return;
  EXPECT_EQ(tree->closest.distance, truth->closest.distance);
  EXPECT_EQ(tree->triangle, truth->triangle);
  EXPECT_EQ(tree->closest.onSecond, truth->closest.onSecond);
}

TEST(TriangleTree, AgreesWithLookingAtEverything) {
  RandomShapes random(61);
  for (const int count : {1, 7, 8, 9, 64, 65, 500, 3000}) {
    const auto tree = TriangleTree::build(strewn(random, count, Vec3::Zero()));
    ASSERT_TRUE(tree);
    for (int i = 0; i < 100; ++i) {
      const Capsule capsule = random.capsule(3);
      const auto truth = tree->nearest(capsule, std::numeric_limits<double>::infinity(), Search::Everything);
      expectSame(tree->nearest(capsule), truth);
      const double bound = truth->closest.distance + random.between(-0.1, 0.1);
      expectSame(tree->nearest(capsule, bound), tree->nearest(capsule, bound, Search::Everything));
    }
  }
}

TEST(TriangleTree, StaysExactFarFromTheOrigin) {
  // Two kilometres out, single precision resolves a tenth of a millimetre only.
  RandomShapes random(62);
  const Vec3 far(1500, -1200, 40);
  const auto tree = TriangleTree::build(strewn(random, 400, far));
  for (int i = 0; i < 200; ++i) {
    Capsule capsule = random.capsule(3);
    capsule.a += far;
    capsule.b += far;
    expectSame(tree->nearest(capsule), tree->nearest(capsule, 1e9, Search::Everything));
  }
}

TEST(TriangleTree, OutliersKilometresAwayChangeNothing) {
  RandomShapes random(63);
  const TriangleMesh room = strewn(random, 300, Vec3::Zero());
  auto vertices = room.vertices();
  auto triangles = room.triangles();
  const auto first = static_cast<std::uint32_t>(vertices.size());
  for (const float x : {1e6f, 1e6f + 1, 1e6f}) vertices.emplace_back(x, -x, x);
  triangles.push_back({first, first + 1, first + 2});
  const auto with = TriangleTree::build(TriangleMesh::from(vertices, triangles).value());
  const auto without = TriangleTree::build(room);
  for (int i = 0; i < 100; ++i) {
    const Capsule capsule = random.capsule(3);
    expectSame(with->nearest(capsule), without->nearest(capsule));
  }
}

TEST(TriangleTree, AmongEquallyNearTheLowestIndexWins) {
  std::vector<Eigen::Vector3f> vertices{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}};
  std::vector<TriangleMesh::Corners> triangles(100, TriangleMesh::Corners{0, 1, 2});
  const auto tree = TriangleTree::build(TriangleMesh::from(vertices, triangles).value());
  EXPECT_EQ(tree->nearest({{0.2, 0.2, 3}, {0.2, 0.2, 4}, 0.5})->triangle, 0U);
  // All at contact: every distance is minus the radius.
  EXPECT_EQ(tree->nearest({{0.2, 0.2, -1}, {0.2, 0.2, 1}, 0.5})->triangle, 0U);
  EXPECT_EQ(tree->nearest({{0.2, 0.2, -1}, {0.2, 0.2, 1}, 0.5})->closest.distance, -0.5);
}

TEST(TriangleTree, FindsOnlyWhatIsBelowTheBound) {
  const auto tree =
      TriangleTree::build(TriangleMesh::from({{0, 0, 0}, {1, 0, 0}, {0, 1, 0}}, {{0, 1, 2}}).value());
  const Capsule capsule{{0.25, 0.25, 2}, {0.25, 0.25, 3}, 0.5};
  EXPECT_TRUE(tree->nearest(capsule, 1.5000001));
  EXPECT_FALSE(tree->nearest(capsule, 1.5));
  EXPECT_FALSE(tree->nearest(capsule, -1));
}

TEST(TriangleTree, OfNothingFindsNothing) {
  const auto tree = TriangleTree::build(TriangleMesh());
  ASSERT_TRUE(tree);
  EXPECT_FALSE(tree->nearest({{0, 0, 0}, {1, 0, 0}, 0.1}));
}

TEST(TriangleTree, FindsNothingForACapsuleThatIsNowhere) {
  const auto tree =
      TriangleTree::build(TriangleMesh::from({{0, 0, 0}, {1, 0, 0}, {0, 1, 0}}, {{0, 1, 2}}).value());
  EXPECT_FALSE(tree->nearest({{0, 0, std::nan("")}, {1, 0, 0}, 0.1}));
}

TEST(TriangleTree, StopsWhenAskedTo) {
  RandomShapes random(64);
  Progress progress;
  progress.cancelled = [] { return true; };
  EXPECT_FALSE(TriangleTree::build(strewn(random, 100, Vec3::Zero()), progress));
}

TEST(TriangleTree, TellsHowFarItIs) {
  RandomShapes random(65);
  std::vector<double> fractions;
  Progress progress;
  progress.report = [&](double fraction) { fractions.push_back(fraction); };
  ASSERT_TRUE(TriangleTree::build(strewn(random, 100, Vec3::Zero()), progress));
  EXPECT_TRUE(std::is_sorted(fractions.begin(), fractions.end()));
  EXPECT_EQ(fractions.back(), 1);
}

}  // namespace
}  // namespace baywright
