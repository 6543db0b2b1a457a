// SPDX-License-Identifier: Apache-2.0
// Regions of the plan judged by CGAL's exact Boolean set operations and Minkowski sums.
#include <CGAL/Boolean_set_operations_2.h>
#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_set_2.h>
#include <CGAL/minkowski_sum_2.h>
#include <gtest/gtest.h>

#include "geometry/polygon_sets.h"
#include "random_shapes.h"

namespace baywright {
namespace {

using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using CgalRing = CGAL::Polygon_2<Kernel>;
using CgalPolygon = CGAL::Polygon_with_holes_2<Kernel>;

CgalRing to(const Ring& ring) {
  CgalRing result;
  for (const Vec2& p : ring) result.push_back({p.x(), p.y()});
  if (result.is_clockwise_oriented()) result.reverse_orientation();
  return result;
}

double areaOf(const CgalPolygon& polygon) {
  auto sum = polygon.outer_boundary().area();
  for (const auto& hole : polygon.holes()) sum += hole.area();  // clockwise: negative
  return CGAL::to_double(sum);
}

/// Corners at even angles and random distances: simple, mostly concave.
Ring star(test::RandomShapes& random, int corners, const Vec2& middle, double size) {
  Ring ring;
  for (int i = 0; i < corners; ++i) {
    const double angle = 2 * kPi * i / corners;
    ring.emplace_back(middle + size * random.between(0.2, 1) * Vec2(std::cos(angle), std::sin(angle)));
  }
  return ring;
}

/// Three quarters of a wall around a court and all but a slit of the last: a footprint may stand in it that
/// cannot enter.
Ring courtWithSlit(test::RandomShapes& random) {
  const double slit = random.between(0.01, 0.1);
  return {{-2, -2},    {2, -2},      {2, 2},      {slit, 2}, {slit, 1.5}, {1.5, 1.5},
          {1.5, -1.5}, {-1.5, -1.5}, {-1.5, 1.5}, {0, 1.5},  {0, 2},      {-2, 2}};
}

/// A boundary rounded to the grid may be off by its diagonal along its whole length.
double roundingOf(double perimeter) {
  return 2 * kPlanGrid * perimeter;
}

TEST(RegionsAgainstCgal, MinkowskiSumsHaveTheSameAreaAndHoles) {
  test::RandomShapes random(2001);
  int withHoles = 0;
  for (int i = 0; i < 150; ++i) {
    const Ring obstacle =
        i % 3 == 0 ? courtWithSlit(random) : star(random, 4 + random.upTo(12), random.point2(1), 1.5);
    const Ring footprint = star(random, 3 + random.upTo(6), random.point2(0.2), 0.5);
    const auto ours = minkowskiSum({{obstacle, {}}}, footprint);
    ASSERT_TRUE(ours);
    const CgalPolygon theirs = CGAL::minkowski_sum_2(to(obstacle), to(footprint));
    ASSERT_EQ(ours->size(), 1U);
    EXPECT_NEAR(area(*ours), areaOf(theirs), roundingOf(50)) << "pair " << i;
    EXPECT_EQ((*ours)[0].holes.size(), theirs.number_of_holes()) << "pair " << i;
    withHoles += theirs.has_holes() ? 1 : 0;
  }
  EXPECT_GT(withHoles, 0) << "no case in which a hole must survive";
}

TEST(RegionsAgainstCgal, UnionsDifferencesAndIntersectionsHaveTheSameArea) {
  test::RandomShapes random(2002);
  for (int i = 0; i < 150; ++i) {
    const Ring a = star(random, 5 + random.upTo(20), random.point2(0.5), 1);
    const Ring b = star(random, 5 + random.upTo(20), random.point2(0.5), 1);
    CGAL::Polygon_set_2<Kernel> both(to(a));
    both.join(to(b));
    CGAL::Polygon_set_2<Kernel> onlyA(to(a));
    onlyA.difference(to(b));
    const auto areaOfSet = [](const CGAL::Polygon_set_2<Kernel>& set) {
      std::vector<CgalPolygon> parts;
      set.polygons_with_holes(std::back_inserter(parts));
      double sum = 0;
      for (const CgalPolygon& part : parts) sum += areaOf(part);
      return sum;
    };
    const PolygonSet first{{a, {}}};
    const PolygonSet second{{b, {}}};
    EXPECT_NEAR(area(*unionOf(first, second)), areaOfSet(both), roundingOf(60)) << "pair " << i;
    EXPECT_NEAR(area(*differenceOf(first, second)), areaOfSet(onlyA), roundingOf(60)) << "pair " << i;
    const double common = std::abs(signedArea(a)) - areaOfSet(onlyA);
    EXPECT_NEAR(area(*intersectionOf(first, second)), common, roundingOf(60)) << "pair " << i;
  }
}

}  // namespace
}  // namespace baywright
