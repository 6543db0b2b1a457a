// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/scan_planes.h"
#include "survey/scan_roof.h"

namespace baywright {

/// A scan turned level, its floor at z = 0.
struct LevelScan {
  std::vector<Eigen::Vector3f> samples;
  ScanPatches flat;                     ///< turned as the samples are
  RoofMap roof;                         ///< where its ceiling hangs
  Mat3 fromUpright = Mat3::Identity();  ///< how they were turned: place = fromUpright * original + shift
  Vec3 shift = Vec3::Zero();
  double floorMiddle = 0;          ///< height of the floor at the frame's origin,
  Vec2 floorSlope = Vec2::Zero();  ///< and how it rises, where walls say that it is not level
  double floorScatter = 0;         ///< of the floor's points about z = 0, once it was settled
  double ceiling = 0;  ///< height of the highest large level surface: what counts as "up to the ceiling"

  double floorAt(const Vec2& p) const { return floorMiddle + floorSlope.dot(p); }
};

/// Turned as `level` says, after what it was turned before. `ceiling` is found anew.
LevelScan levelled(LevelScan scan, const ScanLevel& level);

/// An upright surface, seen from above: normal . p = offset. Nothing is known of where it ends but what
/// stands in `seen`.
struct ScanLine {
  Vec2 normal{1, 0};
  double offset = 0;
  double area = 0;      ///< of the patches on it, square metres
  double own = 0;       ///< of those, what lies nearer to it than to any other line
  double rms = 0;       ///< of the points about it, metres, robust
  double pieces = 0;    ///< independent pieces of surface that fixed it
  double middle = 0;    ///< mean place along it
  double spread = 0;    ///< standard deviation of the places along it
  double seenFrom = 0;  ///< place along it where `seen` begins
  /// Every kSeenStep along the line: one bit for each of kSeenBands bands of height, floor to the ceiling
  /// that hangs there, that has points.
  std::vector<std::uint32_t> seen;

  Vec2 along() const { return leftOf(normal); }
  double distance(const Vec2& p) const { return normal.dot(p) - offset; }
  /// Standard deviation of the line's place across itself, at a place along it, by its points' scatter alone.
  double fitSigma(double place) const;
};

/// Where two lines cross; not finite where they are parallel.
Vec2 crossingOf(const ScanLine& a, const ScanLine& b);

inline constexpr double kSeenStep = 0.10;
inline constexpr int kSeenBands = 10;
inline constexpr std::uint32_t kTopBands = 0b11u << (kSeenBands - 2);  ///< furniture seldom reaches there
/// The most that the search for a floor can hold apart; the largest are kept.
inline constexpr std::size_t kMostLines = 48;

/// Every upright surface large enough for a wall, at any angle, the largest first: found by votes of the
/// patches for lines on the plan, then fitted to all points near it by reweighted least squares (Tukey's
/// biweight), each piece of surface with the same say however many points it has. Wardrobes and shelves are
/// among them; scan_outline.h chooses.
std::vector<ScanLine> uprightLines(const LevelScan& scan, const Progress& progress);

}  // namespace baywright
