// SPDX-License-Identifier: Apache-2.0
// Cylinders and polyhedra, feature by feature, on the grounds given in closest_cylinder.cpp. The polyhedron
// comes first inside this file.
#include <cmath>

#include "geometry/closest.h"
#include "geometry/detail/cylinder_math.h"
#include "geometry/detail/polyhedron_pair.h"

namespace baywright {

namespace {

using detail::CylinderFrame;
using detail::FaceFoot;
using detail::NearestPair;
using detail::Separation;
using Face = ConvexPolyhedron::Face;

/// Nearest points when there is a gap. Inside a face, it is the end of a generator that comes nearest.
NearestPair nearestPair(const ConvexPolyhedron& body, const CylinderFrame& c) {
  const detail::FacingFaces facing(body, [&](const Vec3& n) { return detail::reachAlong(c, n); });
  NearestPair best;
  facing.forEachFace([&](const Face& face) {
    const FaceFoot foot{body, face};
    const Segment3 generator = detail::generatorTowards(c, -face.normal);
    for (const Vec3& p : {generator.a, generator.b}) {
      if (face.normal.dot(p) >= face.offset && foot.contains(p)) best.offer(foot.of(p), p);
    }
  });
  facing.forEachEdge([&](const Vec3& from, const Vec3& to) {
    best.offer(detail::nearestPair({from, to}, c));
  });
  return best;
}

/// Whether the cylinder's section with the face's plane lies within the face, provided it touches none of its
/// edges: then any point of the section decides.
bool pierces(const ConvexPolyhedron& body, const Face& face, const CylinderFrame& c) {
  const Vec3 low = detail::farthestAlong(c, -face.normal);
  const Vec3 high = detail::farthestAlong(c, face.normal);
  const double from = face.normal.dot(low) - face.offset;
  const double to = face.normal.dot(high) - face.offset;
  if (!(from < 0 && to > 0)) return false;
  return FaceFoot{body, face}.contains(low + (high - low) * (from / (from - to)));
}

bool holds(const ConvexPolyhedron& body, const Vec3& p) {
  for (const Face& face : body.faces()) {
    if (face.normal.dot(p) > face.offset) return false;
  }
  return true;
}

/// For shapes none of whose edges touch the cylinder.
bool overlapInside(const ConvexPolyhedron& body, const CylinderFrame& c) {
  if (holds(body, c.middle)) return true;
  for (const Face& face : body.faces()) {
    if (pierces(body, face, c)) return true;
  }
  return false;
}

Separation overlapOf(const ConvexPolyhedron& body, const CylinderFrame& c, double size) {
  Separation best;
  const auto offer = [&](const Vec3& n) {
    best.offer(detail::spanOf(body, n).low - detail::reachAlong(c, n), n);
  };
  const auto offerBoth = [&](const Vec3& n) {
    offer(n);
    offer(-n);
  };
  offerBoth(c.axis);
  for (const Vec3& axis : body.faceAxes()) offerBoth(axis);
  for (const Vec3& axis : body.edgeAxes()) {
    const Vec3 across = detail::commonPerpendicular(axis, c.axis);
    if (!across.isZero()) offerBoth(across);
  }
  for (const Vec3& p : body.vertices()) {
    const Vec3 across = detail::perpendicularPart(p - c.middle, c.axis);
    const double off = across.norm();
    if (off > detail::kTouching * size) offer(across / off);
  }
  for (const ConvexPolyhedron::Edge& edge : body.edges()) {
    const Vec3& from = body.vertex(edge.from);
    const detail::ShadowNormals rims(c, body.vertex(edge.to) - from, from);
    for (const Vec3& normal : rims.all()) offer(normal);
  }
  return best;
}

}  // namespace

Closest closest(const Cylinder& first, const ConvexPolyhedron& second) {
  const CylinderFrame c(first);
  const double size = std::max(detail::sizeOf(second), detail::sizeOf(c));
  const NearestPair pair = nearestPair(second, c);
  const bool apart = pair.found() && pair.squared > std::pow(detail::kTouching * size, 2);
  if (apart && !overlapInside(second, c)) return reversed(detail::closestFrom(pair, size, c.axis));

  const Separation best = overlapOf(second, c, size);
  const double clear = c.radius + c.halfLength - best.gap;
  const ConvexPolyhedron moved = transformed(second, {Mat3::Identity(), clear * best.normal});
  const NearestPair touch = nearestPair(moved, c);
  return reversed(detail::overlapFrom(-best.gap, best.normal, touch.onSecond));
}

}  // namespace baywright
