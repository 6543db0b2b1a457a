// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/problem.h"
#include "job/job.h"
#include "survey/network.h"

namespace baywright {

/// Which way round the letters of a list run, seen from above.
enum class LetterOrder { NotSaid, CounterClockwise, Clockwise };

/// What a fitter wrote down in a room, as a table (CSV) that any spreadsheet or editor makes. One reading a
/// row, in any order, as read. The first row names the columns; all but `kind` and `value` may be missing,
/// and their order is free. Fields are parted by commas, semicolons or tabs; lines that begin with # are
/// remarks.
///
///     kind,from,to,at,x,y,value,height,how,note
///     unit,,,,,,m,,,                          of figures without one: m cm mm ft ft-in in
///     wall,A,,,,,6.012,,laser,                wall A, from corner A to corner B
///     diagonal,A,C,,,,"23' 8 1/2""",,tape,    between two corners; a typed unit always wins
///     angle,,,D,,,90.2,,,                     at corner D inside the room; degrees
///     angle,A,C,D,,,44.5,,,                   at corner D between corners A and C
///     offset,A,E,,,,"5,50 m",,,               of corner E from the line of wall A
///     ceiling,,,,1.2,3.0,2.41,,,              floor to ceiling; x along wall A, y into the room
///     ceiling,,,C,,,2.43,,,                   the same at corner C
///     door,B,,,0.85,,0.90,2.03,,front door    in wall B, 0.85 from corner B, 0.90 wide, 2.03 high
///     window,C,,,1.10,0.95,1.20,1.10,,        the same; y is the sill's height above the floor
///     corners,,,,,,6,,,                       needed where no reading names the last corner
///     order,,,,,,clockwise,,,                 which way round the letters run, seen from above
///
/// Walls and corners have letters, A to Z and then AA, AB and so on. Corner A is where wall A starts, and it
/// ends at corner B. Lengths, angles and offsets are the same in a room and in its mirror image, so no list
/// tells by its figures which way round the letters run: a row `order` says it, or else a remark that holds
/// the word. Where neither does they count as counter-clockwise: along the walls with the wall at the right
/// hand. Further kinds are `garage door` and `passage`. `how` is tape (also where it is empty), laser,
/// drawing, scan or guess. A figure may have a decimal point or a decimal comma; a comma before exactly three
/// digits is only believed where another figure of the list has a decimal comma too.
struct MeasuringList {
  LetterOrder order = LetterOrder::NotSaid;
  std::vector<Wall> walls;  ///< lettered, all still at the origin, in the order of their letters
  /// In the order of the list. A ceiling height at a corner names the corner in `at`.
  std::vector<Measurement> readings;
  std::vector<Opening> openings;
  UnitSystem units;          ///< of figures without unit; metres where the list needed none
  std::uint32_t lastId = 0;  ///< ids of walls, readings and openings are 1 to this
};

/// `asked` is the unit that somebody named beside the list. Refused, with line and column: everything that
/// csv_rows.h refuses; columns that are missing, unknown or named twice; rows with more fields than columns;
/// kinds, corners, units and instruments that are not known; figures that are none or out of range; a figure
/// without unit when neither the list nor `asked` says one, or when they differ; fewer than three corners,
/// more than kMostSurveyCorners.
Result<MeasuringList> readMeasuringList(std::string_view text, std::optional<UnitSystem> asked = {});

/// True when the first row names a column `kind`, so that a table of points is told from a list by looking.
bool looksLikeMeasuringList(std::string_view text);

/// The list as readMeasuringList reads it back, in metres to the tenth of a millimetre and degrees to the
/// thousandth.
std::string writeMeasuringList(const MeasuringList& list);

/// The readings of a job as a list; its walls get letters in their order.
MeasuringList measuringListOf(const Job& job);

/// "m", "mm", "cm", "ft" (decimal feet), "ft-in", "in", and the words spelled out; nothing for others.
std::optional<LengthUnit> unitNamed(std::string_view name);

}  // namespace baywright
