// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "base/progress.h"
#include "survey/recognised_room.h"
#include "survey/scan_geometry.h"

namespace baywright {

/// Makes a room of a scan in metres with z roughly up (upright()): gravity and floor (scan_planes.h,
/// scan_plumb.h), walls at any angle (scan_lines.h), the floor that they enclose (scan_outline.h), the planes
/// of the ceiling (scan_ceiling.h) and boxes for what stands and hangs in it (scan_things.h).
///
/// The world frame starts in the corner where the longest wall, "A", starts, with x along it and z = 0 on the
/// floor. Ids count from 1 over walls, ceiling parts, fixtures and the scan. The scan itself is handed back
/// in world coordinates, without what is far off, so that clearances run against all of it.
///
/// Accuracy: a corner's covariance joins the walls' fits (scatter over the pieces of surface that are
/// independent) with what no fit shows, the scanner's own drift: instrumentSigma for a scan, half of its
/// variance a corner. Heights are dimensions by Instrument::Scan. Deterministic. A room is missed or wrong
/// where its walls were hardly scanned; such walls are noted.
///
/// Refused with a sentence: no floor, no walls that enclose one, a cancel.
Result<RecognisedRoom> recogniseRoom(const ScanGeometry& upright, const Progress& progress);

}  // namespace baywright
