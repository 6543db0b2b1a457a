// SPDX-License-Identifier: Apache-2.0
#include "cli/survey_file.h"

#include <algorithm>
#include <cctype>
#include <iterator>
#include <vector>

#include "exchange/dxf_read.h"
#include "exchange/dxf_room.h"
#include "exchange/scan_import.h"
#include "jobfile/atomic_file.h"
#include "survey/csv_rows.h"
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

Result<SurveyRead> readList(const SurveyFile& file) {
  const auto bytes = readWholeFile(file.path, kLargestTable);
  if (!bytes) return tl::unexpected(bytes.error());
  std::optional<UnitSystem> asked;
  if (!file.unit.empty()) {
    const auto unit = unitNamed(file.unit);
    if (!unit) return unknownUnit(file.unit);
    asked = unitSystem(*unit);
  }
  const auto list = readMeasuringList(*bytes, asked);
  if (!list) return tl::unexpected(list.error());
  auto room = recogniseList(*list);
  if (!room) return tl::unexpected(room.error());
  return SurveyRead{"measuring list", std::move(*room), list->units};
}

Result<SurveyRead> readDrawing(const SurveyFile& file) {
  DxfChoices choices;
  if (!file.unit.empty()) {
    const auto unit = drawingUnitFrom(file.unit);
    if (!unit) return unknownUnit(file.unit);
    choices.unit = *unit;
  }
  const auto bytes = readWholeFile(file.path, DxfLimits{}.bytes);
  if (!bytes) return tl::unexpected(bytes.error());
  const auto drawing = readDxf(*bytes);
  if (!drawing) return tl::unexpected(drawing.error());
  auto room = recogniseDrawing(*drawing, choices);
  if (!room) return tl::unexpected(room.error());
  const DrawingUnit unit = choices.unit != DrawingUnit::NotStated ? choices.unit : drawing->unit;
  const bool isImperial = unit == DrawingUnit::Inches || unit == DrawingUnit::Feet;
  return SurveyRead{"drawing", std::move(*room),
                    unitSystem(isImperial ? LengthUnit::FeetInches : LengthUnit::Metres)};
}

Result<SurveyRead> readScanFile(const SurveyFile& file) {
  ScanChoices choices;
  if (!file.unit.empty()) {
    const auto unit = drawingUnitFrom(file.unit);
    if (!unit) return unknownUnit(file.unit);
    choices.unit = *unit;
  }
  if (!file.up.empty()) {
    choices.up = upAxisFrom(file.up);
    if (!choices.up)
      return fail("There is no axis '" + file.up + "'.", "--up", "Write x, y, z, -x, -y or -z.");
  }
  auto bytes = readWholeFile(file.path, kMostScanBytes);
  if (!bytes) return tl::unexpected(bytes.error());
  auto room = recogniseScan(file.path.filename().string(), std::move(*bytes), choices, {});
  if (!room) return tl::unexpected(room.error());
  return SurveyRead{"scan", std::move(*room), UnitSystem{}};
}

/// True where the first line that is no remark begins as a line of coordinates does, or their header.
bool beginsWithPoints(std::string_view text) {
  while (text.starts_with('#')) text.remove_prefix(std::min(text.find('\n'), text.size() - 1) + 1);
  return !text.empty() && std::string_view("0123456789+-.xX").find(text.front()) != std::string_view::npos;
}

/// A list, or a cloud of points with the same ending.
Result<SurveyRead> readTable(const SurveyFile& file) {
  const auto bytes = readWholeFile(file.path, kMostScanBytes);
  if (!bytes) return tl::unexpected(bytes.error());
  const bool isCloud = !looksLikeMeasuringList(*bytes) && beginsWithPoints(*bytes);
  return isCloud ? readScanFile(file) : readList(file);
}

struct Reader {
  std::vector<std::string_view> endings;
  Result<SurveyRead> (*read)(const SurveyFile& file);
};

const std::vector<Reader>& readers() {
  static const std::vector<Reader> table = {
      {{".csv"}, readTable},
      {{".tsv"}, readList},
      {{".dxf"}, readDrawing},
      {{".ply", ".obj", ".gltf", ".glb", ".pcd", ".xyz", ".txt", ".asc", ".pts"}, readScanFile},
  };
  return table;
}

std::string endings() {
  std::string list;
  for (const Reader& reader : readers())
    for (const std::string_view ending : reader.endings)
      list += (list.empty() ? "" : ", ") + std::string(ending);
  return list;
}

}  // namespace

Result<SurveyRead> readSurveyFile(const SurveyFile& file) {
  std::string ending = file.path.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  for (const Reader& reader : readers()) {
    if (std::find(reader.endings.begin(), reader.endings.end(), ending) == reader.endings.end()) continue;
    auto read = reader.read(file);
    if (!read && read.error().where.empty()) {
      Problem problem = read.error();
      problem.where = file.path.string();
      return tl::unexpected(problem);
    }
    return read;
  }
  return fail("A survey cannot be read from a file that ends in '" + ending + "'.", file.path.string(),
              "Files that can be read end in " + endings() + ".");
}

}  // namespace baywright
