// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>

#include "base/problem.h"
#include "geometry/vec.h"

namespace baywright {

/// Projective map from one plane to another: q ~ matrix * (x, y, 1), then divided by the third component. It
/// takes straight lines to straight lines: a photographed plan to a straight one, a projector's panel to the
/// screen. Units are those of the two planes and need not be the same. Only the ratio of the entries matters;
/// ours are scaled so that the largest is 1 in size.
struct Homography {
  Mat3 matrix = Mat3::Identity();
};

/// `from` in the first plane belongs to `to` in the second.
struct PointPair {
  Vec2 from = Vec2::Zero();
  Vec2 to = Vec2::Zero();
};

struct HomographyFit {
  Homography map;
  /// Root mean square distance between map(from) and to, in units of the second plane; zero for four pairs.
  double rms = 0;
  /// How far the points are from not fixing a map, in normalised coordinates: the larger of two ratios of
  /// largest to smallest singular value, that of the equations and that of the map itself. About 2 to 20 for
  /// the four corners of a picture; it grows as one over the distance of three points from a line, in either
  /// plane.
  double condition = 1;
};

/// A fit above this is still exact for exact points but multiplies a clicking error by hundreds: warn.
inline constexpr double kPoorConditioning = 1e3;

/// The map through four pairs, or the best for more: direct linear transform in normalised coordinates
/// (Hartley and Zisserman, Multiple View Geometry, 2nd ed., algorithm 4.2). Its third component is positive
/// at all given points. Refused with a sentence: fewer than four pairs, coincident points, three of four on a
/// line in either plane (for more pairs: all but one), corners that go round in a different order in the two
/// planes (no picture of a plane does that), numbers that are not finite.
Result<HomographyFit> homographyFrom(std::span<const PointPair> pairs);

/// The map from the unit square (0,0) (1,0) (1,1) (0,1) to four corners in that order; closed form (Heckbert,
/// Fundamentals of Texture Mapping and Image Warping, 1989, section 2.2.3). Same refusals.
Result<Homography> homographyFromUnitSquare(std::span<const Vec2, 4> corners);

/// Image of p. Fails when p lies on the line that goes to infinity.
Result<Vec2> mapped(const Homography& map, const Vec2& p);
/// Third component of matrix * (x, y, 1), scaled to 1 at `reference`. Positive: p lies on the same side of
/// the line that goes to infinity as `reference`, so the image is not turned inside out between them.
double depthRatio(const Homography& map, const Vec2& p, const Vec2& reference);
/// d(mapped)/d(p): columns are the images of small steps in x and y; its determinant is the local area scale.
/// Fails where mapped does.
Result<Mat2> jacobianAt(const Homography& map, const Vec2& p);

Result<Homography> inverse(const Homography& map);
/// First `inner`, then `outer`.
Homography composed(const Homography& outer, const Homography& inner);

}  // namespace baywright
