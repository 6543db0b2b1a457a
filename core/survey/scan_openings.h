// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "job/opening.h"
#include "survey/scan_wall_grid.h"

namespace baywright {

/// An opening in a side of the outline; it has no id, wall or name yet.
struct ScanOpening {
  std::size_t side = 0;
  Opening opening;
};

struct ScanOpenings {
  std::vector<ScanOpening> found;  ///< by side, then along it
  std::vector<std::string>
      notes;  ///< what was ambiguous, one sentence each; "wall %" stands for a side's name
  std::vector<std::size_t> noteSides;  ///< which side each note is about
};

/// Looks in every wall for rectangles without points: such a hole is a door, a wide door or a passage where
/// it reaches the floor, a window where it does not. Sure is one through which something was seen: a reveal,
/// a leaf that lies back, a floor or a yard beyond. One through which nothing was seen is proposed where all
/// its edges stand out and nothing in the room could have hidden it, and the notes say so. A place that a
/// thing stands before is no hole; a large one is noted, since a door behind it would not be found.
///
/// Edges are where the wall's points end (by their density, which noise does not move) or where those of a
/// reveal lie: Instrument::Scan. Where there is no wall beside an edge to tell, it is known to a few
/// centimetres, as in a scan whose walls scatter by more than 15 mm: Instrument::Guess. Doors that lie flush
/// with their wall are not found. The kind of a door and the way it opens are guesses by its width.
ScanOpenings openingsOf(const std::vector<WallGrid>& grids);

}  // namespace baywright
