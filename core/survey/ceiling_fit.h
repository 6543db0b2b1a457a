// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string>
#include <vector>

#include "geometry/polygon.h"
#include "job/room.h"
#include "survey/recognised_room.h"
#include "units/unit_system.h"

namespace baywright {

/// A height from the floor to the ceiling, taken at a point of the plan; world metres.
struct CeilingReading {
  Id reading;
  Vec2 position = Vec2::Zero();
  double height = 0;
  Instrument how = Instrument::Tape;
};

enum class CeilingShape { NotMeasured, Level, Sloped, Stepped, Creased };

/// Planes through heights that were read.
struct CeilingFit {
  CeilingShape shape = CeilingShape::NotMeasured;
  std::vector<CeilingPart> parts;         ///< one or more, never none; their ids are still to be given
  std::vector<FigureResidual> residuals;  ///< in the order of the readings: plane - read
  double rms = 0;                         ///< of the residuals, metres
  std::vector<std::string> notes;  ///< one sentence each: what could not be decided, what to read again
  Id suspect;  ///< the one reading that does not fit the others; none where it cannot be told
  std::vector<std::string>
      suspicious;  ///< one sentence each: readings that do not fit the others or the floor
};

/// The simplest ceiling that the readings agree with, each to its instrument's accuracy and kUneven:
///
///   Level    one height
///   Sloped   one plane; where the readings lie on one line it falls along that line only, and a note says so
///   Stepped  two levels, parted by a line along a wall. Where between the readings it runs is not known: the
///            lower part is taken to reach to the nearest higher reading
///   Creased  two planes that each fall across a line along a wall and meet over it: a ridge or a valley. Or
///   a
///            level part that meets a slope
///
/// Of those that agree (chi-square test at kCeilingLevel) the one with the least v^T P v + 2 x its unknowns
/// is taken (Akaike 1974), so that a shape that needs more unknowns must explain more; a second plane must
/// explain what chance would not. Two readings that differ cannot tell a slope from a step: the lower one is
/// taken everywhere, so that a swing is not planned under a ceiling that may not be there. Where nothing
/// agrees, the lowest reading is taken everywhere and a note says so; where all but one agree on one plane,
/// that one is named, and passed over if it lies above them. `floor` gives the walls' directions and the
/// parts' regions; it may be empty, then only one plane is tried.
CeilingFit fitCeiling(const Ring& floor, std::span<const CeilingReading> readings, const UnitSystem& units);

/// Plaster and boards are uneven by this: common practice, no source. Metres, one standard deviation.
inline constexpr double kUneven = 0.003;
inline constexpr double kCeilingLevel = 0.01;

}  // namespace baywright
