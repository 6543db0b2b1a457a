// SPDX-License-Identifier: Apache-2.0
#include "clearance/obstacle.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace baywright {
namespace {

/// Below this one steps over a thing: a door sill, the edge of a mat (common practice, no source).
constexpr double kStepOver = 0.05;

/// Cosine from which on a face's normal is that of a shared side: a milliradian.
constexpr double kSameSide = 1 - 5e-7;
/// A witness this near to a side's plane lies on it, metres: some hundred times ConvexPolyhedron::kFlatness.
constexpr double kOnSide = 1e-5;

const Solid& solidToSwing(const RoomObstacle& obstacle) {
  return obstacle.backing ? obstacle.backing->solid : obstacle.solid;
}
const Aabb3& boundsToSwing(const RoomObstacle& obstacle) {
  return obstacle.backing ? obstacle.backing->bounds : obstacle.bounds;
}

const SharedSide* sharedSideAt(const RoomObstacle& obstacle, const Vec3& normal) {
  const auto found =
      std::find_if(obstacle.sharedSides.begin(), obstacle.sharedSides.end(),
                   [&](const SharedSide& side) { return side.normal.dot(normal) > kSameSide; });
  return found == obstacle.sharedSides.end() ? nullptr : &*found;
}

/// Everything with normal.dot(p) <= offset; `normal` is a unit vector.
struct HalfSpace {
  Vec3 normal;
  double offset;
};

/// Position along the core, 0 to 1, of the part within `radius` of every face but `free`; empty as first >
/// second.
std::pair<double, double> partBehind(const Capsule& capsule, const ConvexPolyhedron& body, std::size_t free) {
  double first = 0;
  double second = 1;
  for (std::size_t i = 0; i < body.faces().size(); ++i) {
    if (i == free) continue;
    const ConvexPolyhedron::Face& face = body.faces()[i];
    const double atA = face.normal.dot(capsule.a) - face.offset - capsule.radius;
    const double atB = face.normal.dot(capsule.b) - face.offset - capsule.radius;
    if (atA <= 0 && atB <= 0) continue;
    if (atA > 0 && atB > 0) return {1, 0};
    const double crossing = atA / (atA - atB);
    if (atA > 0) {
      first = std::max(first, crossing);
    } else {
      second = std::min(second, crossing);
    }
  }
  return {first, second};
}

/// The overlap resolved along one face's normal: how deep the part of the capsule inside lies behind it.
Closest outThrough(const Capsule& capsule, const ConvexPolyhedron& body, std::size_t index) {
  const ConvexPolyhedron::Face& face = body.faces()[index];
  const auto [first, second] = partBehind(capsule, body, index);
  const auto depthAt = [&](double t) {
    return face.offset + capsule.radius - face.normal.dot(capsule.a + t * (capsule.b - capsule.a));
  };
  const double t = depthAt(first) >= depthAt(second) ? first : second;
  Closest out;
  out.distance = first <= second ? -std::max(0.0, depthAt(t)) : 0;
  out.escape = face.normal;
  out.onFirst = capsule.a + t * (capsule.b - capsule.a) - capsule.radius * face.normal;
  out.onSecond = out.onFirst - out.distance * face.normal;
  return out;
}

/// Outward normal of what lies above a plane, and its offset.
HalfSpace above(const SlopedPlane& plane) {
  const Vec3 down = Vec3(plane.gradient.x(), plane.gradient.y(), -1).normalized();
  return {down, down.dot(raised(plane.at, plane.height))};
}

/// Out through a side that is open below: sideways, and down by what the part inside still reaches above.
Closest outBelow(const Capsule& capsule, const ConvexPolyhedron& body, std::size_t index,
                 const SlopedPlane& plane) {
  Closest out = outThrough(capsule, body, index);
  const auto [first, second] = partBehind(capsule, body, index);
  if (first > second) return out;
  const HalfSpace beyond = above(plane);
  const Vec3 sideways = -out.distance * out.escape;
  double deepest = 0;
  for (const double t : {first, second}) {
    const Vec3 at = capsule.a + t * (capsule.b - capsule.a) + sideways;
    deepest = std::max(deepest, beyond.offset + capsule.radius - beyond.normal.dot(at));
  }
  const Vec3 shift = sideways + deepest * beyond.normal;
  if (!(deepest > 0) || !(shift.norm() > 0)) return out;
  out.distance = -shift.norm();
  out.escape = shift.normalized();
  out.onSecond = out.onFirst + shift;
  return out;
}

/// Whether the shortest way out of the piece leads into more of the same.
bool leavesThroughSharedSide(const RoomObstacle& obstacle, const ConvexPolyhedron& body, const Closest& out) {
  return std::any_of(body.faces().begin(), body.faces().end(), [&](const ConvexPolyhedron::Face& face) {
    return face.normal.dot(out.escape) > kOnSide &&
           std::abs(face.normal.dot(out.onSecond) - face.offset) < kOnSide &&
           sharedSideAt(obstacle, face.normal);
  });
}

/// The largest of `separation(face)` over the faces that are a way out: each one alone bounds a signed
/// distance from below, overlapping or not. A shared side bounds it where there is a gap. Minus infinity for
/// what has no faces.
template <class Separation>
double largestSeparation(const RoomObstacle& obstacle, const Separation& separation) {
  double largest = -std::numeric_limits<double>::infinity();
  const auto* body = std::get_if<ConvexPolyhedron>(&solidToSwing(obstacle));
  if (!body) return largest;
  for (const ConvexPolyhedron::Face& face : body->faces()) {
    const double here = separation(face);
    if (here > largest && (here > 0 || !sharedSideAt(obstacle, face.normal))) largest = here;
  }
  return largest;
}

}  // namespace

RoomObstacle withSolid(RoomObstacle like, Solid solid) {
  like.bounds = boundsOf(solid);
  like.solid = std::move(solid);
  return like;
}

double sigmaAlong(const RoomObstacle& obstacle, const Vec3& at, const Vec3& outward) {
  const ObstacleUncertainty& u = obstacle.uncertainty;
  const Vec2 run = u.run.b - u.run.a;
  const double length2 = run.squaredNorm();
  const double t = length2 > 0 ? std::clamp((flat(at) - u.run.a).dot(run) / length2, 0.0, 1.0) : 0.0;
  const Vec2 level = flat(outward);
  const double from = (1 - t) * u.atFrom.sigmaAlong(level);
  const double to = t * u.atTo.sigmaAlong(level);
  const double plan = length2 > 0 ? std::hypot(from, to) : u.atFrom.sigmaAlong(level);
  const double height = outward.z() * (outward.z() < 0 ? u.bottom : u.top);
  return std::sqrt(plan * plan + height * height + u.surface * u.surface);
}

double largestSigma(const RoomObstacle& obstacle) {
  const ObstacleUncertainty& u = obstacle.uncertainty;
  const double plan = std::max(u.atFrom.xx + u.atFrom.yy, u.atTo.xx + u.atTo.yy);
  const double height = std::max(u.bottom, u.top);
  return std::sqrt(plan + height * height + u.surface * u.surface);
}

Closest closest(const Capsule& capsule, const RoomObstacle& obstacle) {
  const Closest nearest = closest(capsule, solidToSwing(obstacle));
  if (nearest.distance >= 0 || obstacle.sharedSides.empty()) return nearest;
  const auto& body = std::get<ConvexPolyhedron>(obstacle.solid);
  if (!leavesThroughSharedSide(obstacle, body, nearest)) return nearest;
  std::optional<Closest> best;
  for (std::size_t i = 0; i < body.faces().size(); ++i) {
    const SharedSide* side = sharedSideAt(obstacle, body.faces()[i].normal);
    if (side && !side->openBelow) continue;
    const Closest out = side ? outBelow(capsule, body, i, *side->openBelow) : outThrough(capsule, body, i);
    if (!best || out.distance > best->distance) best = out;
  }
  return best && best->distance < nearest.distance ? *best : nearest;
}

double lowerBound(const Capsule& capsule, const RoomObstacle& obstacle) {
  const double byFaces = largestSeparation(obstacle, [&](const ConvexPolyhedron::Face& face) {
    return std::min(face.normal.dot(capsule.a), face.normal.dot(capsule.b)) - face.offset - capsule.radius;
  });
  const double byBox = lowerBound(capsule, boundsToSwing(obstacle));
  return byBox > 0 ? std::max(byBox, byFaces) : byFaces;
}

double lowerBound(const Aabb3& box, const RoomObstacle& obstacle) {
  const Vec3 middle = box.centre();
  const Vec3 half = 0.5 * box.size();
  const double byFaces = largestSeparation(obstacle, [&](const ConvexPolyhedron::Face& face) {
    return face.normal.dot(middle) - face.normal.cwiseAbs().dot(half) - face.offset;
  });
  const Aabb3& bounds = boundsToSwing(obstacle);
  const Vec3 gap = (box.low - bounds.high).cwiseMax(bounds.low - box.high).cwiseMax(0.0);
  const double byBox = gap.norm();
  return byBox > 0 ? std::max(byBox, byFaces) : byFaces;
}

bool standsInTheWay(const RoomObstacle& obstacle, double height) {
  return obstacle.bounds.low.z() < height && obstacle.bounds.high.z() > kStepOver;
}

}  // namespace baywright
