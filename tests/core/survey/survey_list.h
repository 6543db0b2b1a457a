// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <numbers>
#include <string>
#include <vector>

#include "survey/adjustment.h"

namespace baywright::testing {

/// Walls A, B, C, ... and what was read between them, by letters; metres and degrees.
///
///     SurveyList list(4);
///     list.wall('A', 6.0).wall('B', 4.0).diagonal('A', 'C', 7.21);
struct SurveyList {
  std::vector<Wall> walls;
  std::vector<Measurement> readings;
  Instrument how = Instrument::Laser;

  explicit SurveyList(int corners) {
    for (int i = 0; i < corners; ++i) {
      Wall wall;
      wall.id = Id{static_cast<std::uint32_t>(i + 1)};
      wall.name = std::string(1, static_cast<char>('A' + i));
      walls.push_back(wall);
    }
  }

  Id id(char corner) const { return walls[static_cast<std::size_t>(corner - 'A')].id; }

  SurveyList& add(MeasurementKind kind, Id from, Id to, Id at, double value) {
    Measurement reading;
    reading.id = Id{static_cast<std::uint32_t>(1000 + readings.size())};
    reading.kind = kind;
    reading.from = from;
    reading.to = to;
    reading.at = at;
    reading.value = value;
    reading.how = how;
    readings.push_back(reading);
    return *this;
  }
  SurveyList& wall(char from, double length) {
    return add(MeasurementKind::WallLength, id(from), {}, {}, length);
  }
  SurveyList& diagonal(char from, char to, double length) {
    return add(MeasurementKind::Diagonal, id(from), id(to), {}, length);
  }
  SurveyList& angle(char at, double degrees) {
    return add(MeasurementKind::Angle, {}, {}, id(at), degrees * std::numbers::pi / 180);
  }
  SurveyList& offset(char wall, char corner, double length) {
    return add(MeasurementKind::Offset, id(wall), id(corner), {}, length);
  }
  SurveyNetwork network() const { return *networkOf(walls, readings); }
};

/// A list with every wall of a floor as it is, and the diagonals named "AC", "BD", ...
inline SurveyList readOff(const Ring& corners, const std::vector<std::string>& diagonals = {}) {
  SurveyList list(static_cast<int>(corners.size()));
  for (std::size_t i = 0; i < corners.size(); ++i)
    list.wall(static_cast<char>('A' + i), (corners[(i + 1) % corners.size()] - corners[i]).norm());
  for (const std::string& pair : diagonals)
    list.diagonal(
        pair[0], pair[1],
        (corners[static_cast<std::size_t>(pair[1] - 'A')] - corners[static_cast<std::size_t>(pair[0] - 'A')])
            .norm());
  return list;
}

}  // namespace baywright::testing
