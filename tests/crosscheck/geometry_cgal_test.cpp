// SPDX-License-Identifier: Apache-2.0
// Distances judged by CGAL 5.5 (Distance_3, Convex_hull_3, AABB_tree) and by exhaustive search in double
// precision: the signed distance of capsules and solids, to a millionth of a metre, on some hundred thousand
// random pairs.
//
// CGAL has no signed distance of convex bodies. Its hull of the differences of all vertices is the Minkowski
// difference; the nearest facet plane from the origin inside it is the penetration depth, computed on another
// road than ours. Cylinders are curved: search alone judges them.
#include <CGAL/AABB_face_graph_triangle_primitive.h>
#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Exact_rational.h>
#include <CGAL/Polyhedron_3.h>
#include <CGAL/Simple_cartesian.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/convex_hull_3.h>
#include <gtest/gtest.h>

#include "brute_force.h"
#include "geometry/closest.h"
#include "geometry/triangle_tree.h"
#include "random_shapes.h"

namespace baywright {
namespace {

using test::RandomShapes;

constexpr double kMicrometre = 1e-6;

template <class Kernel>
typename Kernel::Point_3 to(const Vec3& p) {
  return {p.x(), p.y(), p.z()};
}
template <class Kernel>
typename Kernel::Segment_3 to(const Segment3& s) {
  return {to<Kernel>(s.a), to<Kernel>(s.b)};
}
template <class Kernel>
typename Kernel::Triangle_3 to(const Triangle& t) {
  return {to<Kernel>(t.a), to<Kernel>(t.b), to<Kernel>(t.c)};
}

std::vector<Triangle> trianglesOf(const ConvexPolyhedron& body) {
  std::vector<Triangle> all;
  for (const auto& face : body.faces()) {
    const auto loop = body.corners(face);
    for (std::size_t i = 1; i + 1 < loop.size(); ++i) {
      all.push_back({body.vertex(loop[0]), body.vertex(loop[i]), body.vertex(loop[i + 1])});
    }
  }
  return all;
}

/// Zero where they cross.
template <class Kernel>
double cgalDistance(const Segment3& s, const Triangle& t) {
  const auto segment = to<Kernel>(s);
  const auto triangle = to<Kernel>(t);
  auto best = std::min(CGAL::squared_distance(segment.source(), triangle),
                       CGAL::squared_distance(segment.target(), triangle));
  if (!triangle.is_degenerate() && !segment.is_degenerate() && CGAL::do_intersect(segment, triangle))
    return 0;
  for (int i = 0; i < 3; ++i) {
    const typename Kernel::Segment_3 edge(triangle.vertex(i), triangle.vertex(i + 1));
    if (segment.is_degenerate()) continue;
    best = std::min(best, CGAL::squared_distance(segment, edge));
  }
  return std::sqrt(CGAL::to_double(best));
}

template <class Kernel>
double cgalDistance(const Segment3& s, const ConvexPolyhedron& body) {
  double best = std::numeric_limits<double>::infinity();
  for (const Triangle& t : trianglesOf(body)) best = std::min(best, cgalDistance<Kernel>(s, t));
  return best;
}

std::vector<Vec3> pointsOf(const Segment3& s) {
  return {s.a, s.b};
}
std::vector<Vec3> pointsOf(const ConvexPolyhedron& body) {
  return body.vertices();
}

/// Least distance of the origin from the planes of the hull of all differences: the depth of overlapping
/// bodies.
template <class First>
double cgalDepth(const First& first, const ConvexPolyhedron& second) {
  using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
  std::vector<Kernel::Point_3> differences;
  for (const Vec3& p : pointsOf(first)) {
    for (const Vec3& q : second.vertices()) differences.push_back(to<Kernel>(Vec3(p - q)));
  }
  CGAL::Polyhedron_3<Kernel> hull;
  CGAL::convex_hull_3(differences.begin(), differences.end(), hull);
  double depth = std::numeric_limits<double>::infinity();
  for (auto facet = hull.facets_begin(); facet != hull.facets_end(); ++facet) {
    const auto h = facet->halfedge();
    const auto toVec = [](const Kernel::Point_3& p) { return Vec3(p.x(), p.y(), p.z()); };
    const Vec3 a = toVec(h->vertex()->point());
    const Vec3 b = toVec(h->next()->vertex()->point());
    const Vec3 c = toVec(h->next()->next()->vertex()->point());
    const Vec3 normal = (b - a).cross(c - a);
    // Slivers of coplanar points carry no direction; their neighbours have the same plane.
    if (normal.norm() > 1e-9) depth = std::min(depth, std::abs(normal.dot(a)) / normal.norm());
  }
  return depth;
}

/// Least value of f on [low, high], which may have several valleys with sharp bottoms: samples, and golden
/// sections about the best three.
template <class Function>
double leastOf(const Function& f, double low, double high, int samples) {
  const double step = (high - low) / samples;
  std::vector<std::pair<double, double>> seen;
  for (int i = 0; i <= samples; ++i) seen.emplace_back(f(low + i * step), low + i * step);
  std::partial_sort(seen.begin(), seen.begin() + 3, seen.end());
  double best = seen[0].first;
  for (int i = 0; i < 3; ++i) {
    const double from = std::max(low, seen[static_cast<std::size_t>(i)].second - step);
    const double to = std::min(high, seen[static_cast<std::size_t>(i)].second + step);
    best = std::min(best, test::leastConvex([&](double share) { return f(from + share * (to - from)); }));
  }
  return best;
}

/// Penetration depth in a cylinder over all directions: latitude about the axis outside, longitude inside.
template <class First>
double searchedDepth(const First& first, const Cylinder& cylinder) {
  const Vec3 axis = (cylinder.b - cylinder.a).normalized();
  const Vec3 u = axis.unitOrthogonal();
  const Vec3 v = axis.cross(u);
  return leastOf(
      [&](double latitude) {
        return leastOf(
            [&](double longitude) {
              const Vec3 across = std::cos(longitude) * u + std::sin(longitude) * v;
              return test::wayOut(first, cylinder, std::sin(latitude) * axis + std::cos(latitude) * across);
            },
            0, 2 * kPi, 40);
      },
      -0.5 * kPi, 0.5 * kPi, 36);
}

struct Count {
  int gaps = 0;
  int overlaps = 0;
};

TEST(CapsuleAgainstPolyhedron, SignedDistanceToAMicrometre) {
  using Doubles = CGAL::Simple_cartesian<double>;
  RandomShapes random(1001);
  Count count;
  for (int i = 0; i < 60000; ++i) {
    const Capsule capsule = random.capsule(0.9);
    const ConvexPolyhedron body = random.polyhedron(0.5);
    const double core = closest(capsule, body).distance + capsule.radius;
    const double searched = test::distanceTo(capsule.core(), Solid(body));
    ASSERT_NEAR(std::max(core, 0.0), searched, kMicrometre) << "pair " << i;
    if (core > 0) {
      ++count.gaps;
      ASSERT_NEAR(core, cgalDistance<Doubles>(capsule.core(), body), kMicrometre) << "pair " << i;
    } else {
      ++count.overlaps;
      ASSERT_NEAR(-core, cgalDepth(capsule.core(), body), kMicrometre) << "pair " << i;
    }
  }
  EXPECT_GT(count.gaps, 20000);
  EXPECT_GT(count.overlaps, 5000);
}

TEST(CapsuleAgainstPolyhedron, DistanceAgreesWithExactArithmetic) {
  using Exact = CGAL::Simple_cartesian<CGAL::Exact_rational>;
  RandomShapes random(1002);
  for (int i = 0; i < 150; ++i) {
    const Segment3 core = random.segment(1);
    const ConvexPolyhedron body = random.box(0.5);
    const double distance = closest(Capsule{core.a, core.b, 0}, body).distance;
    if (distance <= 0) continue;
    ASSERT_NEAR(distance, cgalDistance<Exact>(core, body), 1e-13) << "pair " << i;
  }
}

TEST(CapsuleAgainstCylinder, SignedDistanceToAMicrometre) {
  RandomShapes random(1003);
  const auto directions = test::spreadDirections(60);
  Count count;
  for (int i = 0; i < 40000; ++i) {
    const Capsule capsule = random.capsule(0.9);
    const Cylinder cylinder = random.cylinder(0.5);
    const Closest c = closest(capsule, cylinder);
    const double core = c.distance + capsule.radius;
    ASSERT_NEAR(std::max(core, 0.0), test::distanceTo(capsule.core(), Solid(cylinder)), kMicrometre)
        << "pair " << i;
    if (core > 0) {
      ++count.gaps;
      continue;
    }
    ++count.overlaps;
    ASSERT_NEAR(test::wayOut(capsule.core(), cylinder, c.escape), -core, kMicrometre) << "pair " << i;
    if (count.overlaps % 2 == 0) {
      ASSERT_NEAR(-core, searchedDepth(capsule.core(), cylinder), kMicrometre) << "pair " << i;
    }
    ASSERT_LE(-core, test::shortestWayOut(capsule.core(), cylinder, directions) + kMicrometre)
        << "pair " << i;
  }
  EXPECT_GT(count.gaps, 10000);
  EXPECT_GT(count.overlaps, 2000);
}

TEST(BodiesAgainstEachOther, SignedDistanceOfPolyhedra) {
  using Doubles = CGAL::Simple_cartesian<double>;
  RandomShapes random(1004);
  Count count;
  for (int i = 0; i < 3000; ++i) {
    const ConvexPolyhedron a = random.polyhedron(0.8);
    const ConvexPolyhedron b = random.polyhedron(0.8);
    const double distance = closest(a, b).distance;
    if (distance <= 0) {
      ++count.overlaps;
      ASSERT_NEAR(-distance, cgalDepth(a, b), kMicrometre) << "pair " << i;
      continue;
    }
    ++count.gaps;
    double best = std::numeric_limits<double>::infinity();
    for (const Triangle& s : trianglesOf(a)) {
      for (const Triangle& t : trianglesOf(b)) {
        best = std::min(best, CGAL::to_double(CGAL::squared_distance(to<Doubles>(s), to<Doubles>(t))));
      }
    }
    ASSERT_NEAR(distance, std::sqrt(best), kMicrometre) << "pair " << i;
  }
  EXPECT_GT(count.gaps, 500);
  EXPECT_GT(count.overlaps, 500);
}

TEST(BodiesAgainstEachOther, DepthInACylinder) {
  RandomShapes random(1007);
  int overlaps = 0;
  while (overlaps < 400) {
    const Solid body = random.solid(0.6);
    const Cylinder cylinder = random.cylinder(0.6);
    const double distance = closest(body, Solid(cylinder)).distance;
    if (distance > 0) continue;
    ++overlaps;
    ASSERT_NEAR(-distance, searchedDepth(body, cylinder), kMicrometre) << "overlap " << overlaps;
  }
}

TEST(CapsuleAgainstTriangle, DistanceToAMicrometre) {
  using Doubles = CGAL::Simple_cartesian<double>;
  RandomShapes random(1005);
  for (int i = 0; i < 50000; ++i) {
    const Capsule capsule = random.capsule(0.8);
    const Triangle triangle = random.triangle(0.5);
    ASSERT_NEAR(closest(capsule, triangle).distance + capsule.radius,
                cgalDistance<Doubles>(capsule.core(), triangle), kMicrometre)
        << "pair " << i;
  }
}

TEST(ScanAgainstAabbTree, NearestPointOfAMesh) {
  using Kernel = CGAL::Simple_cartesian<double>;
  using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
  using Primitive = CGAL::AABB_face_graph_triangle_primitive<Mesh>;
  RandomShapes random(1006);
  // A bumpy floor of 80 x 80 cells.
  constexpr std::uint32_t kCells = 80;
  std::vector<Eigen::Vector3f> vertices;
  std::vector<TriangleMesh::Corners> corners;
  for (std::uint32_t i = 0; i <= kCells; ++i) {
    for (std::uint32_t j = 0; j <= kCells; ++j) {
      vertices.push_back(Vec3(0.05 * i, 0.05 * j, random.between(0, 0.02)).cast<float>());
      if (i == kCells || j == kCells) continue;
      const std::uint32_t p = i * (kCells + 1) + j;
      corners.push_back({p, p + kCells + 1, p + 1});
      corners.push_back({p + 1, p + kCells + 1, p + kCells + 2});
    }
  }
  const TriangleMesh scan = TriangleMesh::from(vertices, corners).value();
  const TriangleTree ours = TriangleTree::build(scan).value();
  Mesh mesh;
  for (const auto& v : vertices) mesh.add_vertex(to<Kernel>(v.cast<double>()));
  for (const auto& c : corners) {
    mesh.add_face(Mesh::Vertex_index(c[0]), Mesh::Vertex_index(c[1]), Mesh::Vertex_index(c[2]));
  }
  CGAL::AABB_tree<CGAL::AABB_traits<Kernel, Primitive>> theirs(faces(mesh).begin(), faces(mesh).end(), mesh);
  for (int i = 0; i < 3000; ++i) {
    const Vec3 p = Vec3(2, 2, 0.5) + random.point(2.5);
    const double expected = std::sqrt(theirs.squared_distance(to<Kernel>(p)));
    ASSERT_NEAR(ours.nearest({p, p, 0})->closest.distance, expected, kMicrometre) << "point " << i;
  }
}

}  // namespace
}  // namespace baywright
