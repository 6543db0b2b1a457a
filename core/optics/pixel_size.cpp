// SPDX-License-Identifier: Apache-2.0
#include "optics/pixel_size.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace baywright {
namespace {

/// Along an edge of the part, from 0 to 1: one pixel step moves the image by numerator / w^2, where the
/// numerator (a 2-vector) and w are both linear in the way along the edge.
struct StepAlongEdge {
  Vec2 start, change;
  double wStart, wChange;

  double at(double t) const {
    const double w = wStart + t * wChange;
    return (start + t * change).norm() / (w * w);
  }
};

/// Derivative of the image along a panel axis (0: x, 1: y), times w^2.
Vec2 numerator(const Mat3& m, int axis, const Vec2& p) {
  const Vec3 h{p.x(), p.y(), 1};
  const double w = m.row(2) * h;
  const Vec2 image = m.topRows<2>() * h;
  return m.block<2, 1>(0, axis) * w - image * m(2, axis);
}

void take(PixelSize& size, double step) {
  size.smallest = std::min(size.smallest, step);
  size.largest = std::max(size.largest, step);
}

/// d/dt of |n|^2 / w^4 vanishes where a t^2 + 2 b t + c = 0.
void takeExtremes(PixelSize& size, const StepAlongEdge& edge) {
  take(size, edge.at(0));
  take(size, edge.at(1));
  const double nn = edge.start.squaredNorm(), nm = edge.start.dot(edge.change);
  const double mm = edge.change.squaredNorm();
  const double a = -mm * edge.wChange;
  const double b = 0.5 * (mm * edge.wStart - 3 * nm * edge.wChange);
  const double c = nm * edge.wStart - 2 * nn * edge.wChange;
  const double discriminant = b * b - a * c;
  if (!(discriminant >= 0)) return;
  const double q = -(b + std::copysign(std::sqrt(discriminant), b));
  for (const double t : {q / a, c / q})
    if (t > 0 && t < 1) take(size, edge.at(t));
}

}  // namespace

// A step along x has the same numerator all along a row and w changes linearly there, so its extremes lie at
// the row's ends: on the part's boundary. Likewise for y and columns. Hence only edges are searched.
PixelSize pixelSize(const Picture& picture, std::span<const Vec2> part) {
  PixelSize size{std::numeric_limits<double>::infinity(), 0};
  const Mat3& m = picture.screenFromPanel.matrix;
  const auto depth = [&](const Vec2& p) { return m(2, 0) * p.x() + m(2, 1) * p.y() + m(2, 2); };
  for (std::size_t i = 0; i < part.size(); ++i) {
    const Vec2& a = part[i];
    const Vec2& b = part[i + 1 < part.size() ? i + 1 : 0];
    for (const int axis : {0, 1}) {
      const Vec2 start = numerator(m, axis, a);
      takeExtremes(size, {start, numerator(m, axis, b) - start, depth(a), depth(b) - depth(a)});
    }
  }
  if (part.empty()) size.smallest = 0;
  return size;
}

Acuity acuityAt(const ScreenFace& face, const PixelSize& pixel, const Vec3& eye) {
  const Vec2 beside = screenFromBay(face, eye);
  const Vec2 nearest = beside.cwiseMax(0).cwiseMin(face.size);
  Acuity acuity;
  acuity.distance = (eye - bayFromScreen(face, nearest)).norm();
  acuity.pixelAngle = 2 * std::atan2(0.5 * pixel.largest, acuity.distance);
  acuity.finestDistance = 0.5 * pixel.largest / std::tan(0.5 * kAcuity);
  return acuity;
}

}  // namespace baywright
