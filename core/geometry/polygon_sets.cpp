// SPDX-License-Identifier: Apache-2.0
#include "geometry/polygon_sets.h"

#include <algorithm>
#include <clipper.hpp>
#include <cmath>

#include "geometry/detail/ring_edges.h"
#include "geometry/triangulation.h"

namespace baywright {

namespace {

using ClipperLib::Path;
using ClipperLib::Paths;
using ClipperLib::PolyNode;
using ClipperLib::PolyTree;

constexpr double kMiterLimit = 4;

Path pathOf(const Ring& ring) {
  Path path;
  for (const Vec2& p : ring)
    path.emplace_back(std::llround(p.x() / kPlanGrid), std::llround(p.y() / kPlanGrid));
  return path;
}

Ring ringOf(const Path& path) {
  Ring ring;
  for (const auto& p : path) {
    ring.emplace_back(static_cast<double>(p.X) * kPlanGrid, static_cast<double>(p.Y) * kPlanGrid);
  }
  return ring;
}

Result<void> checkRange(const Ring& ring) {
  for (const Vec2& p : ring) {
    if (!p.allFinite() || p.cwiseAbs().maxCoeff() > kPlanLimit) {
      return fail("A corner lies more than 1000 km away or is not a finite number.");
    }
  }
  return {};
}

/// Rings as integers, outer ones counter-clockwise and holes clockwise: where they overlap, windings add up
/// and stay positive, so that "not zero" means the union.
Result<Paths> pathsOf(const PolygonSet& set) {
  Paths paths;
  for (const Polygon& given : set) {
    const Polygon polygon = normalised(given);
    if (const auto ok = checkRange(polygon.outer); !ok) return tl::unexpected(ok.error());
    paths.push_back(pathOf(polygon.outer));
    for (const Ring& hole : polygon.holes) {
      if (const auto ok = checkRange(hole); !ok) return tl::unexpected(ok.error());
      paths.push_back(pathOf(hole));
    }
  }
  return paths;
}

void collect(const PolyNode& outer, PolygonSet& set) {
  Polygon polygon{ringOf(outer.Contour), {}};
  for (const PolyNode* hole : outer.Childs) polygon.holes.push_back(ringOf(hole->Contour));
  set.push_back(std::move(polygon));
  for (const PolyNode* hole : outer.Childs) {
    for (const PolyNode* island : hole->Childs) collect(*island, set);
  }
}

PolygonSet setOf(const PolyTree& tree) {
  PolygonSet set;
  for (const PolyNode* outer : tree.Childs) collect(*outer, set);
  return set;
}

PolygonSet clipped(ClipperLib::ClipType operation, const Paths& first, const Paths& second) {
  ClipperLib::Clipper clipper;
  clipper.StrictlySimple(true);
  clipper.AddPaths(first, ClipperLib::ptSubject, true);
  clipper.AddPaths(second, ClipperLib::ptClip, true);
  PolyTree tree;
  clipper.Execute(operation, tree, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
  return setOf(tree);
}

Result<PolygonSet> combined(ClipperLib::ClipType operation, const PolygonSet& first,
                            const PolygonSet& second) {
  const auto a = pathsOf(first);
  if (!a) return tl::unexpected(a.error());
  const auto b = pathsOf(second);
  if (!b) return tl::unexpected(b.error());
  return clipped(operation, *a, *b);
}

}  // namespace

Result<PolygonSet> unionOf(const PolygonSet& first, const PolygonSet& second) {
  return combined(ClipperLib::ctUnion, first, second);
}

Result<PolygonSet> differenceOf(const PolygonSet& first, const PolygonSet& second) {
  return combined(ClipperLib::ctDifference, first, second);
}

Result<PolygonSet> intersectionOf(const PolygonSet& first, const PolygonSet& second) {
  return combined(ClipperLib::ctIntersection, first, second);
}

Result<PolygonSet> offsetOf(const PolygonSet& set, double distance, OffsetCorner corner) {
  if (!(std::abs(distance) <= kPlanLimit))
    return fail("The offset is more than 1000 km or not a finite number.");
  const auto merged = unionOf(set);
  if (!merged) return merged;
  const auto paths = pathsOf(*merged);
  if (!paths) return tl::unexpected(paths.error());
  ClipperLib::ClipperOffset offset(kMiterLimit, kArcTolerance / kPlanGrid);
  const bool round = corner == OffsetCorner::Round;
  offset.AddPaths(*paths, round ? ClipperLib::jtRound : ClipperLib::jtMiter, ClipperLib::etClosedPolygon);
  PolyTree tree;
  offset.Execute(tree, distance / kPlanGrid);
  return setOf(tree);
}

namespace {

Ring shifted(Ring ring, const Vec2& by) {
  for (Vec2& p : ring) p += by;
  return ring;
}

/// The convex ring swept along the edge.
Ring swept(const Ring& convex, const Segment2& edge) {
  Ring ends = shifted(convex, edge.a);
  const Ring other = shifted(convex, edge.b);
  ends.insert(ends.end(), other.begin(), other.end());
  return convexHull(std::move(ends));
}

/// The sum with a convex piece is the region shifted to any point of the piece, and the piece swept along
/// every edge: a shifted piece that meets the region either crosses its boundary or lies in it whole.
void addSum(Paths& paths, const Polygon& region, const Ring& convex) {
  const Vec2 middle = centroid({convex, {}});
  std::vector<Ring> rings{region.outer};
  rings.insert(rings.end(), region.holes.begin(), region.holes.end());
  for (const Ring& ring : rings) {
    paths.push_back(pathOf(shifted(ring, middle)));
    for (std::size_t i = 0; i < ring.size(); ++i)
      paths.push_back(pathOf(swept(convex, detail::edgeOf(ring, i))));
  }
}

}  // namespace

Result<PolygonSet> minkowskiSum(const PolygonSet& set, const Ring& footprint) {
  if (const auto ok = checkRange(footprint); !ok) return tl::unexpected(ok.error());
  const auto merged = unionOf(set);
  if (!merged) return merged;
  const auto pieces = convexPieces({footprint, {}});
  if (!pieces) return tl::unexpected(pieces.error());
  Paths paths;
  for (const Polygon& region : *merged) {
    for (const Ring& piece : *pieces) addSum(paths, region, piece);
  }
  return clipped(ClipperLib::ctUnion, paths, {});
}

Ring mirrored(const Ring& ring) {
  Ring turned = ring;
  for (Vec2& p : turned) p = -p;
  return turned;
}

double area(const PolygonSet& set) {
  double sum = 0;
  for (const Polygon& polygon : set) sum += area(polygon);
  return sum;
}

}  // namespace baywright
