// SPDX-License-Identifier: Apache-2.0
#include "cli/survey_json.h"

#include <nlohmann/json.hpp>

#include "drawing/fixture_outline.h"
#include "geometry/mesh.h"
#include "job/enum_names.h"
#include "job/room_geometry.h"
#include "survey/adjustment.h"
#include "survey/measuring_tasks.h"
#include "survey/survey_check.h"

namespace baywright {
namespace {

using nlohmann::ordered_json;

constexpr int kVersion = 1;

ordered_json pointJson(const Vec2& p) {
  return {p.x(), p.y()};
}

ordered_json ringJson(const std::vector<Vec2>& ring) {
  ordered_json json = ordered_json::array();
  for (const Vec2& corner : ring) json.push_back(pointJson(corner));
  return json;
}

ordered_json dimensionJson(const Dimension& dimension) {
  return {{"value_m", dimension.value},
          {"sigma_m", dimension.uncertain().sigma},
          {"how", enumName(dimension.how)},
          {"known", dimension.known}};
}

ordered_json cornerJson(const Wall& wall) {
  const ErrorEllipse ellipse = errorEllipse95(wall.startCovariance);
  return {{"name", wall.name},
          {"wall", wall.id.value},
          {"x_m", wall.start.x()},
          {"y_m", wall.start.y()},
          {"sigma_x_m", wall.startCovariance.sigmaAlong({1, 0})},
          {"sigma_y_m", wall.startCovariance.sigmaAlong({0, 1})},
          {"ellipse_95",
           {{"major_m", ellipse.major}, {"minor_m", ellipse.minor}, {"heading_rad", ellipse.heading}}}};
}

ordered_json floorJson(const Room& room) {
  ordered_json json;
  json["polygon"] = ringJson(outline(room));
  json["area_m2"] = floorArea(room);
  json["corners"] = ordered_json::array();
  for (const Wall& wall : room.walls) json["corners"].push_back(cornerJson(wall));
  return json;
}

ordered_json wallJson(const WallLine& line) {
  return {{"id", line.wall.value},
          {"name", line.name},
          {"start", pointJson(line.start)},
          {"end", pointJson(line.end)},
          {"length_m", line.length}};
}

ordered_json ceilingJson(const Room& room, const CeilingPart& part) {
  return {{"id", part.id.value},
          {"name", part.name},
          {"height", dimensionJson(part.height)},
          {"anchor", pointJson(part.anchor)},
          {"slope", pointJson(part.slope)},
          {"region", ringJson(ceilingRegion(room, part))}};
}

ordered_json openingJson(const Opening& opening) {
  return {{"id", opening.id.value},
          {"name", opening.name},
          {"wall", opening.wall.value},
          {"kind", enumName(opening.kind)},
          {"offset", dimensionJson(opening.offset)},
          {"width", dimensionJson(opening.width)},
          {"sill", dimensionJson(opening.sill)},
          {"height", dimensionJson(opening.height)}};
}

ordered_json fixtureJson(const Fixture& fixture) {
  return {{"id", fixture.id.value},
          {"name", fixture.name},
          {"kind", enumName(fixture.kind)},
          {"outline", ringJson(outlineOf(fixture.shape))},
          {"bottom", dimensionJson(fixture.bottom)},
          {"top", dimensionJson(fixture.top)}};
}

ordered_json scanJson(const RoomScan& scan) {
  return {{"id", scan.id.value},
          {"name", scan.name},
          {"sigma_m", scan.sigma},
          {"triangles", scan.mesh ? scan.mesh->triangleCount() : 0},
          {"points", scan.points ? scan.points->size() : 0}};
}

std::string_view kindName(SurveyRemarkKind kind) {
  switch (kind) {
    case SurveyRemarkKind::Wrong:
      return "wrong";
    case SurveyRemarkKind::Doubtful:
      return "doubtful";
    case SurveyRemarkKind::Missing:
      break;
  }
  return "missing";
}

template <class List, class Make>
ordered_json listJson(const List& list, Make make) {
  ordered_json json = ordered_json::array();
  for (const auto& item : list) json.push_back(make(item));
  return json;
}

}  // namespace

std::string surveyJson(const std::string& fileName, const SurveyRead& read, const Job& job) {
  const Room& room = job.room;
  const RecognisedRoom& recognised = read.recognised;
  ordered_json json;
  json["format"] = {{"name", "baywright-survey"}, {"version", kVersion}};
  json["source"] = {{"file", fileName}, {"kind", read.kind}};
  json["floor"] = floorJson(room);
  json["walls"] = listJson(wallLines(room), wallJson);
  json["ceiling"] = listJson(room.ceiling, [&](const CeilingPart& part) { return ceilingJson(room, part); });
  json["openings"] = listJson(room.openings, openingJson);
  json["fixtures"] = listJson(room.fixtures, fixtureJson);
  json["scans"] = listJson(job.roomScans, scanJson);
  json["originals"] = listJson(job.originals, [](const Original& original) {
    return ordered_json{{"file", original.file->fileName}, {"bytes", original.file->bytes.size()}};
  });
  json["residuals"] = listJson(recognised.residuals, [](const FigureResidual& r) {
    return ordered_json{{"what", r.what}, {"residual", r.residual}, {"standardised", r.standardised}};
  });
  json["suspicious"] = recognised.suspicious;
  json["skipped"] = recognised.skipped;
  json["notes"] = recognised.notes;
  json["remarks"] = listJson(checkSurvey(job), [](const SurveyRemark& remark) {
    return ordered_json{{"kind", kindName(remark.kind)}, {"key", remark.key}, {"sentence", remark.sentence}};
  });
  json["to_measure"] = listJson(measuringTasks(job), [](const MeasuringTask& task) {
    return ordered_json{{"what", task.what}, {"why", task.why}};
  });
  return json.dump(2, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace baywright
