// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "drawing/linework.h"

namespace baywright {

/// A thing under the pointer.
struct Hit {
  Id id;
  Layer layer = Layer::Fixtures;
  double distance =
      0;            ///< from the point to the thing's nearest line or symbol, 0 inside an area; drawing units
  double area = 0;  ///< of the smallest of its areas that holds the point; 0 for a bare line or symbol
};

/// How far from a thing the pointer may be, drawing units, and how large symbols are there.
struct HitReach {
  double reach = 0;
  double unitsPerMm = 0;
};

/// Everything at a point, each thing once, best first: solid things before zones (swings, light, shots,
/// ways), and the smaller before the larger that surrounds it, so that a mat inside a frame can be picked;
/// equal ones in the order of the drawing, the upper first. Texts and dimensions are not hit: they belong to
/// things that can be hit where they are.
std::vector<Hit> hitsAt(const Linework& linework, const Vec2& point, const HitReach& reach);

}  // namespace baywright
