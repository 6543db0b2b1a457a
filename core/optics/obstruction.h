// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "base/problem.h"
#include "geometry/polygon.h"
#include "geometry/solid.h"
#include "optics/picture.h"

namespace baywright {

/// What one thing in the beam takes from the picture. Shares are of the panel area whose light falls on the
/// screen (picture.litOnPanel): light that misses the screen anyway is no loss.
struct Obstruction {
  std::size_t obstacle = 0;           ///< its index in what was asked
  double share = 0;                   ///< 0..1
  std::vector<Vec2> outlineOnScreen;  ///< its shadow, (s, t), counter-clockwise convex
};

/// What several things take together: the area of their union, so that overlapping shadows count once.
struct Obstructions {
  double share = 0;
  std::vector<Obstruction> parts;  ///< only those that take something, in the order asked
};

/// Solids and capsules in the bay frame. A thing shades where it lies between lens and screen: what is beyond
/// the screen's plane or behind the lens is cut off first. Convex flat-sided bodies are exact (their
/// silhouette is the hull of their projected corners). Round ones are replaced by what just encloses them,
/// never too little: a circle becomes a polygon of kRoundCorners sides, at most 0.6 % larger than its area; a
/// capsule ends where its axis is one radius beyond the screen. A body that holds the lens takes all. Cost:
/// about 0.1 us for a thing out of the beam, a few us for one in it.
Obstructions obstructionBy(const Picture& picture, std::span<const Solid> solids);
Obstructions obstructionBy(const Picture& picture, std::span<const Capsule> capsules);

inline constexpr int kRoundCorners = 24;

/// The beam as a body in the bay frame: the pyramid from the lens to the part of the picture on the screen.
/// For drawing and for distances to it. Refused when the picture misses the screen.
Result<ConvexPolyhedron> beamBody(const Picture& picture);

}  // namespace baywright
