// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "survey/scan_outline.h"

namespace baywright {

/// Weighs what a side's own samples say of its direction against what masons mostly build: walls square to
/// each other. A long wall keeps its own direction; a short one, into which the walls at its ends reach, has
/// hardly any and takes that of the long walls that it is nearly square or parallel to; one that plainly runs
/// askew is left alone. Then a wall of which little was seen takes the direction that the others agree on,
/// where they do: what stands before it turns its line more than masons do. Sides turn about the middle of
/// what was seen of them and corners move along; all stays as it was where a corner would be lost.
void squareSides(ScanOutline& outline);

/// How well masons keep walls square, radians, a quarter of a degree: tolerances for room corners allow about
/// a centimetre in 3 m (common practice, no source).
inline constexpr double kBuiltSquare = 0.004;

}  // namespace baywright
