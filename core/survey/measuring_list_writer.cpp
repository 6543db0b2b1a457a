// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <charconv>
#include <cmath>

#include "job/room_geometry.h"
#include "survey/csv_rows.h"
#include "survey/measuring_list.h"

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;

std::string number(double value, int decimals) {
  char text[64];
  const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::fixed, decimals).ptr;
  return {text, end};
}

std::string length(double metres) {
  return number(metres, 4);
}

std::string_view kindName(MeasurementKind kind) {
  switch (kind) {
    case MeasurementKind::WallLength:
      return "wall";
    case MeasurementKind::Diagonal:
      return "diagonal";
    case MeasurementKind::Angle:
      return "angle";
    case MeasurementKind::Offset:
      return "offset";
    case MeasurementKind::CeilingHeight:
      break;
  }
  return "ceiling";
}

std::string_view kindName(OpeningKind kind) {
  switch (kind) {
    case OpeningKind::HingedDoor:
      return "door";
    case OpeningKind::SectionalDoor:
      return "garage door";
    case OpeningKind::Window:
      return "window";
    case OpeningKind::Passage:
      break;
  }
  return "passage";
}

std::string_view howName(Instrument how) {
  switch (how) {
    case Instrument::Tape:
      return "tape";
    case Instrument::Laser:
      return "laser";
    case Instrument::Drawing:
      return "drawing";
    case Instrument::Scan:
      return "scan";
    case Instrument::Guess:
      break;
  }
  return "guess";
}

std::string onOneLine(std::string text) {
  std::replace_if(
      text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20; }, ' ');
  return text;
}

}  // namespace

std::string writeMeasuringList(const MeasuringList& list) {
  const auto letter = [&](Id wall) -> std::string {
    for (std::size_t i = 0; i < list.walls.size(); ++i)
      if (list.walls[i].id == wall) return wallLetters(i);
    return {};
  };
  std::string text = csvLine({"kind", "from", "to", "at", "x", "y", "value", "height", "how", "note"});
  text += csvLine({"unit", "", "", "", "", "", "m", "", "", ""});
  text += csvLine({"corners", "", "", "", "", "", std::to_string(list.walls.size()), "", "", ""});
  for (const Measurement& reading : list.readings) {
    const bool isAngle = reading.kind == MeasurementKind::Angle;
    const bool hasPoint = reading.kind == MeasurementKind::CeilingHeight && !reading.at;
    text += csvLine({std::string(kindName(reading.kind)), letter(reading.from), letter(reading.to),
                     letter(reading.at), hasPoint ? length(reading.position.x()) : "",
                     hasPoint ? length(reading.position.y()) : "",
                     isAngle ? number(reading.value / kDegree, 3) : length(reading.value), "",
                     std::string(howName(reading.how)), onOneLine(reading.note)});
  }
  for (const Opening& opening : list.openings)
    text += csvLine({std::string(kindName(opening.kind)), letter(opening.wall), "", "",
                     length(opening.offset.value), opening.sill.known ? length(opening.sill.value) : "",
                     length(opening.width.value), opening.height.known ? length(opening.height.value) : "",
                     std::string(howName(opening.width.how)), onOneLine(opening.name)});
  return text;
}

MeasuringList measuringListOf(const Job& job) {
  MeasuringList list;
  list.walls = job.room.walls;
  list.openings = job.room.openings;
  list.units = job.units;
  list.lastId = job.lastId;
  std::copy_if(job.measurements.begin(), job.measurements.end(), std::back_inserter(list.readings),
               [](const Measurement& reading) { return reading.used; });
  return list;
}

}  // namespace baywright
