// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <Eigen/Geometry>
#include <variant>
#include <vector>

#include "geometry/vec.h"

namespace baywright::detail {

using DxfMap = Eigen::Transform<double, 3, Eigen::AffineCompact>;

/// Straight from point to point.
struct DxfChain {
  std::vector<Vec3> points;
};

/// centre + u cos t + v sin t for t from `start` to `end` (radians; `end` may be the smaller). Any affine map
/// of an arc of a circle is one, so a circle in a block that is stretched, mirrored or tilted stays exact.
struct DxfConic {
  Vec3 centre = Vec3::Zero();
  Vec3 u{1, 0, 0};
  Vec3 v{0, 1, 0};
  double start = 0;
  double end = 2 * kPi;
};

/// Rational B-spline as a SPLINE entity states it. Weights may be empty: all are one. Held by splineFault().
struct DxfSpline {
  int degree = 3;
  std::vector<double> knots;
  std::vector<double> weights;
  std::vector<Vec3> controls;
};

using DxfPiece = std::variant<DxfChain, DxfConic, DxfSpline>;

/// Pieces that follow one another, in drawing units.
struct DxfPath {
  std::vector<DxfPiece> pieces;
  bool closed = false;
  double width = 0;  ///< of a polyline that is drawn as a band along its middle line; 0: a mere line
};

/// A chord of an arc lies at most this share of the radius inside it: half a millimetre at a radius of one
/// metre. The unit of a drawing is not known while it is read, so the share cannot be a length.
inline constexpr double kChordShare = 5e-4;
/// Chords of a spline lie at most this share of its control polygon's length off it (up to 128 chords a
/// span).
inline constexpr double kSplineShare = 1e-4;
/// Chords from each point to the next of a spline that states only points that it runs through.
inline constexpr int kChordsPerSpan = 16;

/// Object coordinates to world coordinates for an extrusion direction: the arbitrary axis algorithm of the
/// published DXF reference. The identity where the direction has no length.
DxfMap worldFromObject(const Vec3& extrusion);

/// The piece of an LWPOLYLINE from p to q with a bulge: the tangent of a quarter of the angle that the arc
/// turns through, positive when it runs counter-clockwise. Straight when the bulge is nearly zero.
DxfPiece bulgedPiece(const Vec3& p, const Vec3& q, double bulge);

/// What is wrong with a spline's numbers; null when nothing is.
const char* splineFault(const DxfSpline& spline);

DxfPath mapped(const DxfPath& path, const DxfMap& map);

/// The conic's arc seen from above, where that is an arc of a circle to within a millionth of its radius.
struct FlatArc {
  Vec2 centre = Vec2::Zero();
  double radius = 0;
  double start = 0;  ///< radians from x
  double sweep = 0;  ///< radians, positive counter-clockwise
};
bool isFlatCircle(const DxfConic& conic);
FlatArc flatArc(const DxfConic& conic);

/// Corners of the path seen from above. A point that repeats the one before is left out.
std::vector<Vec2> flattened(const DxfPath& path);

}  // namespace baywright::detail
