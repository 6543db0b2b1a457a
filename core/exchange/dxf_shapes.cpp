// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_shapes.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace baywright::detail {

namespace {

template <class... Fs>
struct Overloaded : Fs... {
  using Fs::operator()...;
};
template <class... Fs>
Overloaded(Fs...) -> Overloaded<Fs...>;

// Below this a bulge turns the line by less than a millionth of a radian.
constexpr double kStraightBulge = 1e-7;
// Above this the arc is a full circle to within a millionth of a radian, and its centre is lost in rounding.
constexpr double kLargestBulge = 1e6;

// Between two knots of a spline.
constexpr int kFewestChords = 8;
constexpr int kMostChords = 128;

void append(std::vector<Vec2>& points, const Vec2& point) {
  if (points.empty() || points.back() != point) points.push_back(point);
}

void appendConic(std::vector<Vec2>& points, const DxfConic& conic) {
  const double sweep = conic.end - conic.start;
  const double step = 2 * std::acos(1 - kChordShare);
  const int chords = std::max(2, static_cast<int>(std::ceil(std::abs(sweep) / step)));
  for (int i = 0; i <= chords; ++i) {
    const double t = i == chords ? conic.end : conic.start + sweep * i / chords;
    append(points, flat(conic.centre + std::cos(t) * conic.u + std::sin(t) * conic.v));
  }
}

// De Boor's algorithm in homogeneous coordinates; The NURBS Book, 2nd ed., section 4.2 and algorithm A4.1.
Vec2 splinePoint(const DxfSpline& spline, std::size_t span, double t) {
  const auto degree = static_cast<std::size_t>(spline.degree);
  std::vector<Eigen::Vector3d> work(degree + 1);
  for (std::size_t i = 0; i <= degree; ++i) {
    const std::size_t index = span - degree + i;
    const double weight = spline.weights.empty() ? 1 : spline.weights[index];
    work[i] << weight * flat(spline.controls[index]), weight;
  }
  for (std::size_t level = 1; level <= degree; ++level)
    for (std::size_t i = degree; i >= level; --i) {
      const double low = spline.knots[span - degree + i];
      const double high = spline.knots[span + 1 + i - level];
      const double share = high > low ? (t - low) / (high - low) : 0;
      work[i] = (1 - share) * work[i - 1] + share * work[i];
    }
  return work[degree].head<2>() / work[degree].z();
}

double polygonLength(const DxfSpline& spline) {
  double length = 0;
  for (std::size_t i = 1; i < spline.controls.size(); ++i)
    length += (flat(spline.controls[i]) - flat(spline.controls[i - 1])).norm();
  return length;
}

/// As many chords as keep within `within` of the curve between two knots: what chords of a few lie off it
/// falls with the square of their number.
int chordsBetween(const DxfSpline& spline, std::size_t span, double low, double high, double within) {
  double off = 0;
  Vec2 last = splinePoint(spline, span, low);
  for (int i = 0; i < kFewestChords; ++i) {
    const double from = low + (high - low) * i / kFewestChords;
    const double to = low + (high - low) * (i + 1) / kFewestChords;
    const Vec2 next = splinePoint(spline, span, to);
    off = std::max(off, (splinePoint(spline, span, (from + to) / 2) - (last + next) / 2).norm());
    last = next;
  }
  const double wanted = kFewestChords * std::sqrt(off / std::max(within, std::numeric_limits<double>::min()));
  return static_cast<int>(std::ceil(std::clamp<double>(wanted, kFewestChords, kMostChords)));
}

void appendSpline(std::vector<Vec2>& points, const DxfSpline& spline) {
  const auto degree = static_cast<std::size_t>(spline.degree);
  const double within = kSplineShare * polygonLength(spline);
  for (std::size_t span = degree; span < spline.controls.size(); ++span) {
    const double low = spline.knots[span];
    const double high = spline.knots[span + 1];
    if (!(high > low)) continue;
    const int chords = chordsBetween(spline, span, low, high, within);
    for (int i = 0; i <= chords; ++i)
      append(points, splinePoint(spline, span, low + (high - low) * i / chords));
  }
}

}  // namespace

DxfMap worldFromObject(const Vec3& extrusion) {
  DxfMap map = DxfMap::Identity();
  const double length = extrusion.norm();
  if (!(length > 0)) return map;
  const Vec3 z = extrusion / length;
  // The reference fixes this bound, so that every program finds the same axes.
  constexpr double kNearZ = 1.0 / 64;
  const bool near = std::abs(z.x()) < kNearZ && std::abs(z.y()) < kNearZ;
  const Vec3 x = (near ? Vec3::UnitY() : Vec3::UnitZ()).cross(z).normalized();
  map.linear().col(0) = x;
  map.linear().col(1) = z.cross(x).normalized();
  map.linear().col(2) = z;
  return map;
}

DxfPiece bulgedPiece(const Vec3& p, const Vec3& q, double bulge) {
  const Vec3 chord = q - p;
  if (std::abs(bulge) < kStraightBulge || std::abs(bulge) > kLargestBulge || chord.isZero())
    return DxfChain{{p, q}};
  const Vec3 left{-chord.y(), chord.x(), 0};
  DxfConic conic;
  conic.centre = 0.5 * (p + q) + left * ((1 - bulge * bulge) / (4 * bulge));
  const Vec3 arm = p - conic.centre;
  const double radius = std::hypot(arm.x(), arm.y());
  conic.u = {radius, 0, 0};
  conic.v = {0, radius, 0};
  conic.start = std::atan2(arm.y(), arm.x());
  conic.end = conic.start + 4 * std::atan(bulge);
  return conic;
}

const char* splineFault(const DxfSpline& spline) {
  constexpr int kHighestDegree = 25;
  if (spline.degree < 1 || spline.degree > kHighestDegree) return "its degree is out of range";
  const auto degree = static_cast<std::size_t>(spline.degree);
  if (spline.controls.size() <= degree) return "it has too few control points";
  if (spline.knots.size() != spline.controls.size() + degree + 1) return "its knots do not fit its points";
  if (!std::is_sorted(spline.knots.begin(), spline.knots.end())) return "its knots go back";
  if (!spline.weights.empty() && spline.weights.size() != spline.controls.size())
    return "its weights do not fit its points";
  for (const double weight : spline.weights)
    if (!(weight > 0)) return "a weight is not positive";
  return nullptr;
}

DxfPath mapped(const DxfPath& path, const DxfMap& map) {
  DxfPath result = path;
  for (DxfPiece& piece : result.pieces)
    std::visit(Overloaded{[&](DxfChain& chain) {
                            for (Vec3& point : chain.points) point = map * point;
                          },
                          [&](DxfConic& conic) {
                            conic.centre = map * conic.centre;
                            conic.u = map.linear() * conic.u;
                            conic.v = map.linear() * conic.v;
                          },
                          [&](DxfSpline& spline) {
                            for (Vec3& point : spline.controls) point = map * point;
                          }},
               piece);
  result.width *= std::sqrt(std::abs(map.linear().topLeftCorner<2, 2>().determinant()));
  return result;
}

bool isFlatCircle(const DxfConic& conic) {
  const Vec2 u = flat(conic.u);
  const Vec2 v = flat(conic.v);
  const double size = u.squaredNorm();
  constexpr double kRound = 1e-6;
  return size > 0 && std::abs(v.squaredNorm() - size) <= kRound * size && std::abs(u.dot(v)) <= kRound * size;
}

FlatArc flatArc(const DxfConic& conic) {
  const Vec2 u = flat(conic.u);
  const double turn = cross(u, flat(conic.v)) < 0 ? -1 : 1;
  FlatArc arc;
  arc.centre = flat(conic.centre);
  arc.radius = u.norm();
  arc.start = std::atan2(u.y(), u.x()) + turn * conic.start;
  arc.sweep = turn * (conic.end - conic.start);
  return arc;
}

std::vector<Vec2> flattened(const DxfPath& path) {
  std::vector<Vec2> points;
  for (const DxfPiece& piece : path.pieces)
    std::visit(Overloaded{[&](const DxfChain& chain) {
                            for (const Vec3& point : chain.points) append(points, flat(point));
                          },
                          [&](const DxfConic& conic) { appendConic(points, conic); },
                          [&](const DxfSpline& spline) { appendSpline(points, spline); }},
               piece);
  return points;
}

}  // namespace baywright::detail
