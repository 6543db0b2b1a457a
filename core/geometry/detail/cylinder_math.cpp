// SPDX-License-Identifier: Apache-2.0
#include "geometry/detail/cylinder_math.h"

#include <algorithm>
#include <cmath>

#include "geometry/detail/sign_change.h"

namespace baywright::detail {

CylinderFrame::CylinderFrame(const Cylinder& cylinder)
    : middle(0.5 * (cylinder.a + cylinder.b)),
      axis((cylinder.b - cylinder.a).normalized()),
      halfLength(0.5 * (cylinder.b - cylinder.a).norm()),
      radius(cylinder.radius) {}

double sizeOf(const CylinderFrame& c) {
  return c.middle.cwiseAbs().maxCoeff() + c.halfLength + c.radius;
}

namespace {

/// From the nearest point of the solid to p; zero inside.
Vec3 excess(const CylinderFrame& c, const Vec3& p) {
  const Vec3 r = p - c.middle;
  const double height = r.dot(c.axis);
  const Vec3 radial = r - height * c.axis;
  const double distance = radial.norm();
  const double beyond = height - std::clamp(height, -c.halfLength, c.halfLength);
  const double outside = distance > c.radius ? 1 - c.radius / distance : 0;
  return outside * radial + beyond * c.axis;
}

}  // namespace

Vec3 nearestIn(const CylinderFrame& c, const Vec3& p) {
  return p - excess(c, p);
}

double reachAlong(const CylinderFrame& c, const Vec3& direction) {
  const double along = direction.dot(c.axis);
  const double across = (direction - along * c.axis).norm();
  return direction.dot(c.middle) + c.halfLength * std::abs(along) + c.radius * across;
}

Segment3 generatorTowards(const CylinderFrame& c, const Vec3& direction) {
  const Vec3 across = perpendicularPart(direction, c.axis);
  const double size = across.norm();
  const Vec3 out = size > kParallel ? Vec3(across * (c.radius / size)) : Vec3(Vec3::Zero());
  return {c.middle + out - c.halfLength * c.axis, c.middle + out + c.halfLength * c.axis};
}

Vec3 farthestAlong(const CylinderFrame& c, const Vec3& direction) {
  const Segment3 generator = generatorTowards(c, direction);
  return direction.dot(c.axis) < 0 ? generator.a : generator.b;
}

NearestPair nearestPair(const Segment3& segment, const CylinderFrame& c) {
  const Vec3 along = segment.b - segment.a;
  // Half the derivative of the squared distance, which is convex along the segment: it never falls.
  const auto slope = [&](double t) { return excess(c, segment.a + t * along).dot(along); };
  double t = 0;
  if (slope(0) < 0) t = slope(1) <= 0 ? 1 : signChange(slope, 0, 1);
  const Vec3 p = t == 1 ? segment.b : Vec3(segment.a + t * along);
  const Vec3 off = excess(c, p);
  return {off.squaredNorm(), p, p - off};
}

namespace {

/// Quarter of the shadow's outline: half an ellipse with the semi-axes a along the cylinder's shadow axis and
/// b >= a across it. (k, y) is the line's shadow from the ellipse's centre, y >= 0. On the ellipse at (a cos
/// u, b sin u), with 0 <= u <= pi/2, the slope of the squared distance has the sign of (b^2 - a^2) + k a /
/// cos u - y b / sin u, whose shape tells where it can turn from - to +.
struct ShadowQuarter {
  double a = 0;
  double b = 0;
  double k = 0;
  double y = 0;

  double slope(double u) const {
    const double s = std::sin(u);
    const double c = std::cos(u);
    return (b * b - a * a) * s * c + k * a * s - y * b * c;
  }
};

/// The angle u of the local minimum between the ends, or -1.
double lowestBetween(const ShadowQuarter& q) {
  if (q.y == 0) return 0;
  const double ka = q.k * q.a;
  if (ka == 0) {
    const double sine = q.y * q.b / (q.b * q.b - q.a * q.a);
    return sine < 1 ? std::asin(sine) : -1;
  }
  const auto slope = [&](double u) { return q.slope(u); };
  // k > 0: rises all the way. k < 0: rises up to this angle at most, then falls.
  const double end = ka > 0 ? 0.5 * kPi : std::atan(std::cbrt(q.y * q.b / -ka));
  return slope(end) > 0 ? signChange(slope, 0, end) : -1;
}

}  // namespace

ShadowNormals::ShadowNormals(const CylinderFrame& c, const Vec3& line, const Vec3& through) {
  const double length = line.norm();
  if (!(length > 0)) return;
  const Vec3 view = line / length;
  const Vec3 shadowAxis = perpendicularPart(c.axis, view);
  const double sine = shadowAxis.norm();
  if (sine <= kParallel) return;
  const Vec3 x = shadowAxis / sine;
  const Vec3 y = view.cross(x);
  const Vec3 off = through - c.middle;
  const double sideX = off.dot(x) < 0 ? -1 : 1;
  const double sideY = off.dot(y) < 0 ? -1 : 1;
  for (const double sign : {sideX, -sideX}) {
    const ShadowQuarter quarter{c.radius * std::abs(view.dot(c.axis)), c.radius,
                                sign * off.dot(x) - sine * c.halfLength, std::abs(off.dot(y))};
    const double u = lowestBetween(quarter);
    if (u < 0) continue;
    const Vec3 normal = sign * quarter.b * std::cos(u) * x + sideY * quarter.a * std::sin(u) * y;
    normals_[count_++] = normal.normalized();
  }
}

}  // namespace baywright::detail
