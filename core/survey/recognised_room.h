// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/id.h"
#include "job/measurement.h"
#include "job/room.h"
#include "job/scan.h"

namespace baywright {

/// How far one figure lies from what the model makes of it.
struct FigureResidual {
  std::string what;     ///< "wall A", "diagonal A-C", "ceiling at 1.20, 3.00", "wall B against the scan"
  double residual = 0;  ///< adjusted minus read, metres (radians for angles); root mean square for a scan's
  double standardised = 0;  ///< residual over its own standard deviation; 0 where that is not known
};

/// What was made of a file that somebody brought: a measuring list, a drawing or a scan. All of it is a
/// proposal until the fitter takes it.
struct RecognisedRoom {
  Room room;
  std::vector<RoomScan> scans;  ///< the scan itself, so that whatever was not recognised still counts
  std::vector<Original> originals;  ///< the drawing or list itself, where it is no scan
  std::vector<Measurement> measurements;  ///< the readings that the walls' ids in `room` belong to
  std::vector<FigureResidual> residuals;
  std::vector<std::string> skipped;  ///< one sentence each: what was left out, how many, why
  std::vector<std::string> notes;  ///< one sentence each: what was assumed, what to measure, what to look at
  std::vector<std::string> suspicious;  ///< one sentence each: readings that do not fit the others
};

}  // namespace baywright
