// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/line_gradient.h"

namespace baywright::detail {

/// The edge of something dark or light: where brightness changes across a straight line.
struct EdgeLine {
  Segment2 segment;  ///< pixels; the brighter side lies where `normal` points
  Vec2 normal{0, 1};
  double support = 0;  ///< how many pixels' gradients agree with it
  double filled = 0;   ///< share of its length that has any, 0 to 1

  double length() const { return (segment.b - segment.a).norm(); }
  Vec2 along() const { return (segment.b - segment.a).normalized(); }
};

/// Edges that are at least `shortest` long once pieces in line are joined.
Result<std::vector<EdgeLine>> edgeLines(const GradientField& field, double shortest,
                                        const Progress& progress);

}  // namespace baywright::detail
