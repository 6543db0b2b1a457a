// SPDX-License-Identifier: Apache-2.0
#include "cli/survey_file.h"

#include "exchange/dxf_read.h"
#include "exchange/dxf_room.h"
#include "exchange/scan_import.h"
#include "exchange/survey_kind.h"
#include "jobfile/atomic_file.h"
#include "survey/recognise_list.h"

namespace baywright {
namespace {

tl::unexpected<Problem> unknownUnit(const std::string& unit) {
  return fail("There is no unit '" + unit + "'.", "--unit", "Write m, cm, mm, ft, ft-in or in.");
}

UnitSystem unitSystem(LengthUnit unit) {
  UnitSystem units;
  units.length = unit;
  return units;
}

Result<SurveyRead> readList(const SurveyFile& file, const std::string& bytes) {
  std::optional<UnitSystem> asked;
  if (!file.unit.empty()) {
    const auto unit = unitNamed(file.unit);
    if (!unit) return unknownUnit(file.unit);
    asked = unitSystem(*unit);
  }
  const auto list = readMeasuringList(bytes, asked);
  if (!list) return tl::unexpected(list.error());
  auto room = recogniseList(*list);
  if (!room) return tl::unexpected(room.error());
  return SurveyRead{"measuring list", std::move(*room), list->units};
}

Result<DrawingUnit> unitOf(const SurveyFile& file) {
  if (file.unit.empty()) return DrawingUnit::NotStated;
  const auto unit = drawingUnitFrom(file.unit);
  if (!unit) return unknownUnit(file.unit);
  return *unit;
}

Result<SurveyRead> readDrawing(const SurveyFile& file, const std::string& bytes) {
  const Result<DrawingUnit> asked = unitOf(file);
  if (!asked) return tl::unexpected(asked.error());
  const auto drawing = readDxf(bytes);
  if (!drawing) return tl::unexpected(drawing.error());
  DxfChoices choices;
  choices.unit = *asked;
  auto room = recogniseDrawing(*drawing, choices);
  if (!room) return tl::unexpected(room.error());
  const DrawingUnit unit = *asked != DrawingUnit::NotStated ? *asked : drawing->unit;
  const bool isImperial = unit == DrawingUnit::Inches || unit == DrawingUnit::Feet;
  return SurveyRead{"drawing", std::move(*room),
                    unitSystem(isImperial ? LengthUnit::FeetInches : LengthUnit::Metres)};
}

Result<SurveyRead> readScanFile(const SurveyFile& file, std::string bytes) {
  const Result<DrawingUnit> asked = unitOf(file);
  if (!asked) return tl::unexpected(asked.error());
  ScanChoices choices;
  choices.unit = *asked;
  if (!file.up.empty()) {
    choices.up = upAxisFrom(file.up);
    if (!choices.up)
      return fail("There is no axis '" + file.up + "'.", "--up", "Write x, y, z, -x, -y or -z.");
  }
  auto room = recogniseScan(file.path.filename().string(), std::move(bytes), choices, {});
  if (!room) return tl::unexpected(room.error());
  return SurveyRead{"scan", std::move(*room), UnitSystem{}};
}

Result<SurveyRead> readAs(SurveyKind kind, const SurveyFile& file, std::string bytes) {
  switch (kind) {
    case SurveyKind::List:
      return readList(file, bytes);
    case SurveyKind::Drawing:
      return readDrawing(file, bytes);
    case SurveyKind::Scan:
      break;
  }
  return readScanFile(file, std::move(bytes));
}

std::string endings() {
  std::string list;
  for (const std::string_view suffix : surveySuffixes())
    list += (list.empty() ? "." : ", .") + std::string(suffix);
  return list;
}

}  // namespace

Result<SurveyRead> readSurveyFile(const SurveyFile& file) {
  const std::string name = file.path.string();
  if (!hasSurveySuffix(name))
    return fail("A survey cannot be read from a file that ends in '" + file.path.extension().string() + "'.",
                name, "Files that can be read end in " + endings() + ".");
  auto bytes = readWholeFile(file.path, kMostScanBytes);
  if (!bytes) return tl::unexpected(bytes.error());
  const SurveyKind kind = surveyKindOf(name, *bytes);
  BlobPtr original;  // a scan keeps its file itself
  if (kind != SurveyKind::Scan)
    original = std::make_shared<const Blob>(Blob{file.path.filename().string(), *bytes});
  auto read = readAs(kind, file, std::move(*bytes));
  if (read && original) read->recognised.originals = {{Id{}, original->fileName, original}};
  if (!read && read.error().where.empty()) {
    Problem problem = read.error();
    problem.where = name;
    return tl::unexpected(problem);
  }
  return read;
}

}  // namespace baywright
