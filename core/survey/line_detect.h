// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "base/problem.h"
#include "base/progress.h"
#include "geometry/shapes.h"

namespace baywright {

/// Brightness by rows from the top, 0 black to 255 white; `pixels` has width * height values.
struct GrayImage {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> pixels;
};

/// More than an A3 sheet at 300 dpi has; a larger picture is to be scaled down first.
inline constexpr std::size_t kMostDetectPixels = 25'000'000;

struct LineDetectOptions {
  std::size_t most = 400;   ///< the strongest so many are kept
  double shortest = 25;     ///< pixels
  double widestStroke = 8;  ///< pixels: a pen line up to this wide is one line along its middle
};

/// A straight line in a picture, in pixels: x to the right, y down, (0, 0) the top left corner of the top
/// left pixel, as PlanScan counts them.
struct DetectedLine {
  Segment2 segment;
  double strength = 0;  ///< length times the share of it that is really there, pixels
  double stroke = 0;    ///< width of the pen line whose middle it is, pixels; 0: the edge of a filled surface

  double length() const { return (segment.b - segment.a).norm(); }
};

/// Straight lines of a scanned or photographed plan, strongest first. Pixels with like gradients are gathered
/// into regions that count as lines where chance would not make them, after the manner of Grompone von Gioi,
/// Jakubowicz, Morel and Randall, "LSD: a Line Segment Detector", Image Processing On Line 2 (2012); the
/// tail of the binomial is replaced by its Chernoff bound. Pieces in line are then joined, each line is
/// fitted anew to all gradients along it, and the two edges of a pen line give one line along its middle.
/// Straight runs of curves may be among the lines. Deterministic.
///
/// Where lines are sharp and noise has a standard deviation of up to 20 grey levels, the ends lie within half
/// a pixel across the line and directions within 0.2 degrees for lines of 100 pixels and more. Refused: sizes
/// that do not fit, more than kMostDetectPixels; a search that was cancelled.
Result<std::vector<DetectedLine>> detectLines(const GrayImage& image, const LineDetectOptions& options = {},
                                              const Progress& progress = {});

/// A direction that many lines share.
struct DominantDirection {
  double angle = 0;  ///< radians from x toward y, in [0, pi)
  double share = 0;  ///< of the length of all lines
};

/// Directions within a degree or two of which at least a tenth of all length runs, the strongest first. In
/// most plans the first two are square to each other; then turning the sheet by the first makes it upright.
std::vector<DominantDirection> dominantDirections(std::span<const DetectedLine> lines);

}  // namespace baywright
