// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "exchange/mesh_raw.h"
#include "survey/scan_geometry.h"

namespace baywright {

/// Takes out of a file's points what cannot be of the room, and counts it: coordinates that are no finite
/// numbers or beyond kLargestCoordinate, and points farther from the median, along any axis, than kFarOff
/// times the widest of the three spans of the middle half of the points. Half of all points may be wrong
/// before that misleads. Triangles lose their place with any of their corners.
///
/// Refused with a sentence: fewer than three points that remain; a mesh of which no triangle remains.
Result<ScanGeometry> cleaned(RawScan raw);

/// A thousand times a national grid in millimetres; what is larger is no place, and would leave single
/// precision.
inline constexpr double kLargestCoordinate = 1e13;

/// A hall scanned from one end has half of its points within a thirtieth of its length; what lies kilometres
/// away is still far beyond. Chosen by us.
inline constexpr double kFarOff = 30;

/// Up to this many triangles are looked over for edges that more than two of them share; it is only a remark.
inline constexpr std::size_t kMostTrianglesLookedOver = 1'000'000;

}  // namespace baywright
