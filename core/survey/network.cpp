// SPDX-License-Identifier: Apache-2.0
#include "survey/network.h"

#include <algorithm>
#include <cmath>

#include "job/limits.h"
#include "job/room_geometry.h"
#include "survey/reading_sigma.h"

namespace baywright {
namespace {

double turnedAngle(const Vec2& from, const Vec2& to) {
  const double angle = std::atan2(cross(from, to), from.dot(to));
  return angle < 0 ? angle + 2 * kPi : angle;
}

int placeOf(const SurveyNetwork& network, Id corner) {
  const auto found = std::find(network.corners.begin(), network.corners.end(), corner);
  return found == network.corners.end() ? -1 : static_cast<int>(found - network.corners.begin());
}

Problem missing(const std::string& what) {
  return {"The " + what + " names a corner that is not in the room.", "readings",
          "Take the reading out, or name a wall that there is."};
}

Problem twice(const std::string& what) {
  return {"The " + what + " names one corner twice.", "readings", "Name corners that differ."};
}

Result<Observation> length(const SurveyNetwork& network, const Measurement& reading) {
  const bool isWall = reading.kind == MeasurementKind::WallLength;
  Observation made;
  made.from = placeOf(network, reading.from);
  made.to = isWall && !reading.to && made.from >= 0 ? network.next(made.from) : placeOf(network, reading.to);
  if (made.from < 0 || made.to < 0) return tl::unexpected(missing(isWall ? "wall length" : "diagonal"));
  made.what = lengthName(network, made.from, made.to);
  if (made.from == made.to) return tl::unexpected(twice(isWall ? "wall length" : "diagonal"));
  if (isWall && !areNeighbours(network, made.from, made.to))
    return fail("A wall length runs between neighbours, and " + network.names[made.from] + " and " +
                    network.names[made.to] + " are none.",
                "readings", "Call it a diagonal.");
  return made;
}

Result<Observation> angle(const SurveyNetwork& network, const Measurement& reading) {
  Observation made;
  made.kind = ObservationKind::Angle;
  made.at = placeOf(network, reading.at);
  if (made.at < 0) return tl::unexpected(missing("angle"));
  made.from = reading.from ? placeOf(network, reading.from) : network.next(made.at);
  made.to = reading.to ? placeOf(network, reading.to) : network.before(made.at);
  if (made.from < 0 || made.to < 0) return tl::unexpected(missing("angle"));
  if (made.from == made.to || made.from == made.at || made.to == made.at)
    return tl::unexpected(twice("angle"));
  made.what = "angle at " + network.names[made.at];
  const int next = network.next(made.at);
  const int before = network.before(made.at);
  if (made.from == before && made.to == next) std::swap(made.from, made.to);
  if (made.from != next || made.to != before) {
    made.unsignedValue = true;
    made.what += " between " + network.names[made.from] + " and " + network.names[made.to];
  }
  return made;
}

Result<Observation> offset(const SurveyNetwork& network, const Measurement& reading) {
  Observation made;
  made.kind = ObservationKind::Offset;
  made.from = placeOf(network, reading.from);
  made.to = placeOf(network, reading.to);
  if (made.from < 0 || made.to < 0) return tl::unexpected(missing("offset"));
  made.at = network.next(made.from);
  if (made.to == made.from || made.to == made.at)
    return fail("Corner " + network.names[made.to] + " is an end of wall " + network.names[made.from] +
                    " and has no offset from it.",
                "readings", "Name another corner or another wall.");
  made.what = "corner " + network.names[made.to] + " from " + lengthName(network, made.from, made.at);
  made.unsignedValue = reading.value >= 0;
  return made;
}

Result<void> checkValue(const Observation& made, double value) {
  if (made.kind == ObservationKind::Angle) {
    if (value > 0 && value < 2 * kPi) return {};
    return fail("The " + made.what + " must lie between 0 and 360 degrees.", "readings", "Read it again.");
  }
  const double size = made.kind == ObservationKind::Offset ? std::abs(value) : value;
  const bool isShort = made.kind == ObservationKind::Offset;  // a corner may lie on a wall's line
  if (isShort ? size <= limits::kWallLength.high : limits::kWallLength.contains(size)) return {};
  return fail("The length of " + made.what + " is no length that a room can have.", "readings",
              "Type a length between 10 mm and 3000 m.");
}

Eigen::Matrix<double, 1, 6> angleDerivative(const Vec2& at, const Vec2& from, const Vec2& to) {
  // A direction turns by cross(d, move) / |d|^2 when its far end moves.
  const auto turn = [](const Vec2& d) {
    const double square = d.squaredNorm();
    return square > 0 ? Vec2(-d.y() / square, d.x() / square) : Vec2(0, 0);
  };
  const Vec2 byFrom = -turn(from - at);
  const Vec2 byTo = turn(to - at);
  const Vec2 byAt = -(byFrom + byTo);
  Eigen::Matrix<double, 1, 6> row;
  row << byFrom.x(), byFrom.y(), byTo.x(), byTo.y(), byAt.x(), byAt.y();
  return row;
}

Eigen::Matrix<double, 1, 6> offsetDerivative(const Vec2& from, const Vec2& at, const Vec2& to) {
  Eigen::Matrix<double, 1, 6> row = Eigen::Matrix<double, 1, 6>::Zero();
  const double length = (at - from).norm();
  if (!(length > 0)) return row;
  const Vec2 along = (at - from) / length;
  const Vec2 normal = leftOf(along);
  const double share = (to - from).dot(along) / length;
  const Vec2 byAt = -share * normal;
  const Vec2 byFrom = -(1 - share) * normal;
  row << byFrom.x(), byFrom.y(), normal.x(), normal.y(), byAt.x(), byAt.y();
  return row;
}

}  // namespace

bool areNeighbours(const SurveyNetwork& network, int a, int b) {
  return network.next(a) == b || network.next(b) == a;
}

bool isWallRead(std::span<const Wall> walls, std::size_t wall, std::span<const Measurement> readings) {
  const Id start = walls[wall].id;
  const Id end = walls[(wall + 1) % walls.size()].id;
  return std::any_of(readings.begin(), readings.end(), [&](const Measurement& reading) {
    const bool isWall = reading.kind == MeasurementKind::WallLength;
    if (!reading.used || !(isWall || reading.kind == MeasurementKind::Diagonal)) return false;
    if (reading.from == start) return reading.to == end || (isWall && !reading.to);
    return reading.from == end && reading.to == start;
  });
}

bool lettersRunClockwise(std::span<const Wall> walls) {
  const std::size_t count = walls.size();
  for (std::size_t i = 0; i < count; ++i)
    if (walls[i].name != wallLetters((count - i) % count)) return false;
  return count > 2;
}

std::string lengthName(const SurveyNetwork& network, int from, int to) {
  if (network.next(to) == from) std::swap(from, to);
  const bool isBackward = network.namesBothEnds && network.names[1] != wallLetters(1);
  if (network.next(from) == to) {
    if (!network.namesBothEnds) return "wall " + network.names[from];
    if (isBackward) std::swap(from, to);
    return "wall " + network.names[from] + "-" + network.names[to];
  }
  if (from > to) std::swap(from, to);
  if (isBackward && from != 0) std::swap(from, to);  // corner A comes first either way
  return "diagonal " + network.names[from] + "-" + network.names[to];
}

Result<SurveyNetwork> networkOf(std::span<const Wall> walls, std::span<const Measurement> readings,
                                bool namesBothEnds) {
  if (walls.size() < 3) return fail("A floor has at least three walls.", "room", "Name the others too.");
  SurveyNetwork network;
  for (const Wall& wall : walls) {
    network.corners.push_back(wall.id);
    network.names.push_back(wall.name);
  }
  network.namesBothEnds = namesBothEnds || lettersRunClockwise(walls);
  for (const Measurement& reading : readings) {
    if (!reading.used || reading.kind == MeasurementKind::CeilingHeight) continue;
    Result<Observation> made = reading.kind == MeasurementKind::Angle    ? angle(network, reading)
                               : reading.kind == MeasurementKind::Offset ? offset(network, reading)
                                                                         : length(network, reading);
    if (!made) return tl::unexpected(made.error());
    if (const auto ok = checkValue(*made, reading.value); !ok) return tl::unexpected(ok.error());
    made->value = reading.value;
    made->sigma = readingSigma(reading);
    made->reading = reading.id;
    network.observations.push_back(std::move(*made));
  }
  return network;
}

double observed(const Observation& o, const Ring& corners) {
  const Vec2& from = corners[o.from];
  const Vec2& to = corners[o.to];
  const Vec2& at = corners[o.at];
  switch (o.kind) {
    case ObservationKind::Distance:
      return (to - from).norm();
    case ObservationKind::Angle:
      return turnedAngle(from - at, to - at);
    case ObservationKind::Offset:
      break;
  }
  const double length = (at - from).norm();
  return length > 0 ? cross(at - from, to - from) / length : 0;
}

double misclosure(const Observation& o, const Ring& corners) {
  const double difference = o.value - observed(o, corners);
  return o.kind == ObservationKind::Angle ? std::remainder(difference, 2 * kPi) : difference;
}

Eigen::RowVectorXd derivative(const Observation& o, const Ring& corners) {
  Eigen::RowVectorXd row = Eigen::RowVectorXd::Zero(2 * static_cast<Eigen::Index>(corners.size()));
  if (o.kind == ObservationKind::Distance) {
    const Vec2 d = corners[o.to] - corners[o.from];
    const double length = d.norm();
    if (!(length > 0)) return row;
    row.segment<2>(2 * o.to) = d.transpose() / length;
    row.segment<2>(2 * o.from) = -d.transpose() / length;
    return row;
  }
  const Eigen::Matrix<double, 1, 6> parts =
      o.kind == ObservationKind::Angle ? angleDerivative(corners[o.at], corners[o.from], corners[o.to])
                                       : offsetDerivative(corners[o.from], corners[o.at], corners[o.to]);
  row.segment<2>(2 * o.from) += parts.segment<2>(0);
  row.segment<2>(2 * o.to) += parts.segment<2>(2);
  row.segment<2>(2 * o.at) += parts.segment<2>(4);
  return row;
}

std::vector<Observation> settled(std::vector<Observation> observations, const Ring& corners) {
  for (Observation& o : observations) {
    if (!o.unsignedValue) continue;
    const double now = observed(o, corners);
    if (o.kind == ObservationKind::Offset && now < 0) o.value = -o.value;
    if (o.kind == ObservationKind::Angle && now > kPi) std::swap(o.from, o.to);
    o.unsignedValue = false;
  }
  return observations;
}

}  // namespace baywright
