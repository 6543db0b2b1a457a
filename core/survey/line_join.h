// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/problem.h"
#include "geometry/polygon.h"

namespace baywright {

/// Lines of a drawing that may be walls, metres on the plan, and how far they may be from joining.
struct LinesToJoin {
  std::vector<Segment2> lines;
  double tolerance = 0.005;  ///< ends this near are one; > 0, at most kLargestJoinTolerance
  double widestGap = 5.5;    ///< a double garage door; gaps in walls up to it are openings; 0: none are
  std::vector<Segment2> doors = {};  ///< from hinge to where the leaf shuts, of doors that are drawn as such
};
inline constexpr double kLargestJoinTolerance = 0.2;  // metres; more joins walls with their other face

/// A region that lines enclose and that may be a room.
struct JoinedRoom {
  Ring ring;        ///< counter-clockwise, simple, no straight corners; first corner lowest, then leftmost
  double area = 0;  ///< square metres within the ring
  std::vector<Segment2> gaps;  ///< pieces of the ring where no line was, but an opening
  std::vector<Ring> inside;    ///< outlines of what stands free in it, such as columns
  bool likeFrame = false;      ///< holds a room, or touches what does: a sheet's frame, its title block
};

struct JoinedLines {
  std::vector<JoinedRoom> rooms;  ///< by area, the largest first, those like frames after all others
  double wallThickness = 0;   ///< mean of the regions that were taken for masonry; 0: walls are single lines
  std::size_t looseEnds = 0;  ///< ends that no outline needed
  std::size_t nearMisses =
      0;  ///< ends, before gaps are bridged, within kNearMiss of a line that they do not join
  std::vector<std::string> notes;
};

/// The rooms among the lines. They are cut where they cross or touch and joined within the tolerance; where
/// they overlap one is kept. Gaps between ends of walls in line with each other are bridged, narrow ones
/// first; those wider than a door not within a region that is closed without. An end also reaches straight on
/// to what it meets where the wall goes on in line behind that, as where a partition stands at a window's
/// jamb, or where a door is drawn there. Where nothing closes but for a single pair of ends of walls, the way
/// between them is an open front. A recess no deeper than a wall is an opening where its back has other
/// things behind it than its jambs: the lines of a window. Niches stay part of their room. Of walls drawn as
/// two lines the region between them is known by being thin (kThickestWall), so that rooms end at the inner
/// faces. A region that holds whole walls, like a sheet's frame or a plot's border, is no room, nor is one of
/// less than kSmallestRoom. Where a region without openings holds a single closed outline, lines alone do not
/// tell a sheet's frame from a room with a table in it: it counts as a frame when the outline is as large as
/// a room and has a gap, or fills more of it than furniture does, or when the region is larger than rooms
/// are.
///
/// Corners are exact where lines cross; curves come in chords and keep kCollinear of accuracy. Refused with a
/// sentence: no lines, numbers that are not finite, too many lines or crossings, nothing closed (with the
/// number of loose ends and the place of one).
Result<JoinedLines> joinLines(const LinesToJoin& request);

inline constexpr double kSmallestRoom = 2.0;  // square metres
inline constexpr double kNearMiss =
    0.04;  // metres: lines that end this near to each other were meant to meet
inline constexpr double kCollinear =
    0.001;  // metres: a corner this near to the line of its neighbours is none

}  // namespace baywright
