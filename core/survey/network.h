// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <Eigen/Core>
#include <span>
#include <string>
#include <vector>

#include "base/problem.h"
#include "geometry/polygon.h"
#include "job/measurement.h"
#include "job/room.h"

namespace baywright {

/// What one observation of a floor's corners measures.
enum class ObservationKind {
  Distance,  ///< between two corners
  Angle,     ///< at `at`, counter-clockwise from the direction to `from` to the direction to `to`, 0..2 pi
  Offset,    ///< of `to` from the line through `from` and `at`; positive left of from -> at
};

/// One observation between corners, which are named by their places in the ring.
struct Observation {
  ObservationKind kind = ObservationKind::Distance;
  int from = 0;
  int to = 0;
  int at = 0;
  double value = 0;            ///< metres or radians
  double sigma = 0;            ///< standard deviation, > 0
  Id reading;                  ///< the measurement it comes from; none for what is assumed
  std::string what;            ///< "wall A", "diagonal A-C", "angle at B", "corner C from wall A"
  bool unsignedValue = false;  ///< an offset or angle whose sense follows from the start

  bool isAssumed() const { return !reading; }
};

/// The corners of a floor and what was observed between them. Corner i is where wall i starts; the ring runs
/// counter-clockwise, the room to the left.
struct SurveyNetwork {
  std::vector<Id> corners;         ///< the walls' ids
  std::vector<std::string> names;  ///< the walls' names
  /// Walls are named by the letters at both their ends, as their own would say another thing to whoever
  /// lettered the corners clockwise.
  bool namesBothEnds = false;
  std::vector<Observation> observations;

  int size() const { return static_cast<int>(corners.size()); }
  int next(int corner) const { return (corner + 1) % size(); }
  int before(int corner) const { return (corner + size() - 1) % size(); }
};

/// The plan readings of a list, in any order; ceiling heights and readings that are set aside (`used` false)
/// are passed over. A wall length may name its far corner or not. An inner angle between both neighbours of a
/// corner counts on the room's side (0..360 degrees) whichever neighbour comes first; between other corners
/// it counts from 0 to 180. An offset's sense follows from the corners' start unless it is typed negative,
/// which means behind the wall's line. Walls are named by both ends where that is asked for, or where their
/// letters run backwards (lettersRunClockwise).
///
/// Refused: fewer than three walls, a reading that names a corner that is not there or one corner twice,
/// values that are no length (limits::kWallLength) or no angle between 0 and 360 degrees.
Result<SurveyNetwork> networkOf(std::span<const Wall> walls, std::span<const Measurement> readings,
                                bool namesBothEnds = false);

/// What the observation measures between these corners.
double observed(const Observation& observation, const Ring& corners);

/// observation.value - observed(), angles taken round the shorter way.
double misclosure(const Observation& observation, const Ring& corners);

/// d observed / d corners: x of corner 0, y of corner 0, x of corner 1, ... Zero where it is not defined (two
/// corners in one place).
Eigen::RowVectorXd derivative(const Observation& observation, const Ring& corners);

/// The observations with the sense of unsigned ones settled by where the corners are.
std::vector<Observation> settled(std::vector<Observation> observations, const Ring& corners);

/// Whether a reading that is used gives this wall's length.
bool isWallRead(std::span<const Wall> walls, std::size_t wall, std::span<const Measurement> readings);

/// True for walls named A, D, C, B: somebody lettered the corners clockwise.
bool lettersRunClockwise(std::span<const Wall> walls);

/// "wall A" for neighbours, "wall A-B" where walls are named by both ends; "diagonal A-C" for others.
std::string lengthName(const SurveyNetwork& network, int from, int to);
bool areNeighbours(const SurveyNetwork& network, int a, int b);

}  // namespace baywright
