// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "geometry/polygon.h"
#include "survey/scan_lines.h"

namespace baywright {

/// No line: an edge of the frame round everything.
inline constexpr int kFrameEdge = -1;
/// No face beyond.
inline constexpr int kNoFace = -1;

struct FaceEdge {
  int line = kFrameEdge;  ///< which of the lines it lies on
  int neighbour = kNoFace;
  int from = 0;  ///< vertices
  int to = 0;
};

/// A convex piece of the plan between lines, counter-clockwise.
struct PlanFace {
  Ring ring;
  std::vector<FaceEdge> edges;  ///< edge i from corner i to corner i + 1
  std::uint64_t sides = 0;      ///< bit l: on the positive side of line l
  double area = 0;
};

struct PlanFaces {
  std::vector<PlanFace> faces;
  std::vector<Vec2> vertices;

  double length(const FaceEdge& edge) const {
    return (vertices[static_cast<std::size_t>(edge.to)] - vertices[static_cast<std::size_t>(edge.from)])
        .norm();
  }
};

/// Cuts a frame into the faces that lines (at most kMostLines) make of it, each line whole. Pieces narrower
/// than a hundredth of a millimetre vanish.
PlanFaces facesBetween(std::span<const ScanLine> lines, const Vec2& low, const Vec2& high);

/// On which sides of the lines a point lies.
std::uint64_t sidesOf(std::span<const ScanLine> lines, const Vec2& p);

}  // namespace baywright
