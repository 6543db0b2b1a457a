// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "clearance/finding.h"
#include "drawing/linework.h"

namespace baywright {

/// Parallel lines cut to the inside of polygons with holes (even-odd). `spacing` between lines and `angle`
/// (radians) are measured in the drawing; lines pass through the drawing's origin, so a hatch stays where it
/// is while its polygon moves over it. An answer of 0 lines is right for polygons that fall between two
/// lines.
std::vector<std::vector<Vec2>> hatchLines(const std::vector<std::vector<Vec2>>& rings, double spacing,
                                          double angle);

/// The hatch by which a verdict is known without its colour, `spacing` in drawing units: dots for tight,
/// diagonal lines for blocked, crossed lines for unknown, nothing for clear. Takes layer, verdict and id from
/// `area`.
std::optional<Path> hatchOf(const Path& area, double spacing);

/// Distance between hatch lines on paper, millimetres.
inline constexpr double kHatchSpacingMm = 3.5;

}  // namespace baywright
