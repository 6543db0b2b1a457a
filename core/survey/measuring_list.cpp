// SPDX-License-Identifier: Apache-2.0
#include "survey/measuring_list.h"

#include <algorithm>
#include <map>

#include "job/limits.h"
#include "job/room_geometry.h"
#include "survey/csv_rows.h"
#include "survey/csv_rows_text.h"
#include "survey/measuring_list_corners.h"
#include "survey/measuring_list_figures.h"
#include "survey/measuring_list_row.h"
#include "survey/measuring_list_words.h"
#include "survey/network.h"

namespace baywright {
namespace {

using detail::KindName;
using detail::kInstruments;
using detail::kKinds;
using detail::ListRow;
using detail::lower;
using detail::namesOf;
using detail::RowKind;

/// Where a window's sill is drawn until somebody reads it, metres.
constexpr double kWindowSill = 0.9;

/// Fields up to the last that holds something, as spreadsheets part empty ones too; but all of them where a
/// comma that parts fields may have been meant as a decimal one.
std::size_t usedFields(const CsvRow& row) {
  if (row.separator == ',') return row.fields.size();
  const auto last = std::find_if(row.fields.rbegin(), row.fields.rend(),
                                 [](const std::string& field) { return !field.empty(); });
  return static_cast<std::size_t>(row.fields.rend() - last);
}

class Reader {
 public:
  explicit Reader(std::optional<UnitSystem> asked) : figures_(std::move(asked)) {}

  /// `remarked` is what the remarks say of the order of letters; a row wins over it.
  Result<MeasuringList> read(const std::vector<CsvRow>& rows, LetterOrder remarked) {
    if (rows.empty())
      return fail("The list is empty.", {},
                  "Its first line names the columns: kind,from,to,at,x,y,value,how.");
    if (const auto ok = readHeader(rows.front()); !ok) return tl::unexpected(ok.error());
    // Whoever parts fields by semicolons keeps the comma for decimals.
    if (rows.front().separator == ';') figures_.believeCommas();
    for (std::size_t i = 1; i < rows.size(); ++i)
      if (const auto ok = readUnit(ListRow(rows[i], columns_)); !ok) return tl::unexpected(ok.error());
    noteCommas(rows);
    for (std::size_t i = 1; i < rows.size(); ++i) {
      if (const std::size_t used = usedFields(rows[i]); used > rows.front().fields.size())
        return fail("The row has " + std::to_string(used) + " fields, but the header names " +
                        std::to_string(rows.front().fields.size()) + " columns.",
                    ListRow(rows[i], columns_).where(), "A comma inside a figure needs quotes: \"3,45 m\".");
      if (const auto ok = readRow(ListRow(rows[i], columns_)); !ok) return tl::unexpected(ok.error());
    }
    if (list_.order == LetterOrder::NotSaid) list_.order = remarked;
    return finished();
  }

 private:
  Result<void> readHeader(const CsvRow& header) {
    for (std::size_t i = 0; i < header.fields.size(); ++i) {
      const std::string where = "line " + std::to_string(header.line) + ", field " + std::to_string(i + 1);
      if (header.fields[i].empty()) continue;
      const auto column = detail::columnNamed(header.fields[i]);
      if (!column) return fail(column.error().what, where, column.error().next);
      if (!columns_.emplace(column->name, i).second)
        return fail("The column '" + column->name + "' is named twice.", where, "Take one out.");
      if (column->unit.empty()) continue;
      if (const auto ok = figures_.stateUnit(column->unit, where); !ok) return ok;
    }
    for (const char* needed : {"kind", "value"})
      if (!columns_.contains(needed))
        return fail(std::string("The column '") + needed + "' is missing.",
                    "line " + std::to_string(header.line), "The first line names the columns.");
    return {};
  }

  Result<void> readUnit(const ListRow& row) {
    if (lower(row.field("kind")) != "unit") return {};
    return figures_.stateUnit(row.field("value"), row.where("value"));
  }

  void noteCommas(const std::vector<CsvRow>& rows) {
    for (std::size_t i = 1; i < rows.size(); ++i)
      for (const char* column : {"x", "y", "value", "height"})
        figures_.noteComma(ListRow(rows[i], columns_).field(column));
  }

  Result<void> readRow(const ListRow& row) {
    const std::string kind = lower(row.field("kind"));
    const auto found =
        std::find_if(kKinds.begin(), kKinds.end(), [&](const KindName& k) { return k.name == kind; });
    if (found == kKinds.end())
      return fail(kind.empty() ? "The row has no kind." : "There is no kind '" + kind.substr(0, 40) + "'.",
                  row.where("kind"), "The kinds are " + namesOf(kKinds) + ".");
    switch (found->row) {
      case RowKind::Unit:
        return {};
      case RowKind::Corners:
        return corners_.state(row);
      case RowKind::Order:
        return readOrder(row);
      case RowKind::Reading:
        return readReading(row, found->measurement);
      case RowKind::Opening:
        break;
    }
    return readOpening(row, found->opening);
  }

  Result<void> readOrder(const ListRow& row) {
    const LetterOrder order = detail::orderIn(row.field("value"));
    if (order == LetterOrder::NotSaid)
      return fail("'" + row.field("value").substr(0, 40) + "' is no way round a room.", row.where("value"),
                  "Write clockwise or counter-clockwise, as seen from above.");
    if (list_.order != LetterOrder::NotSaid && list_.order != order)
      return fail("The list says two ways round.", row.where("value"), "Keep the one that is right.");
    list_.order = order;
    return {};
  }

  Result<void> readReading(const ListRow& row, MeasurementKind kind) {
    Measurement reading;
    reading.kind = kind;
    reading.note = row.field("note");
    const bool isAngle = kind == MeasurementKind::Angle;
    const bool isCeiling = kind == MeasurementKind::CeilingHeight;
    const bool isDiagonal = kind == MeasurementKind::Diagonal;
    const auto from = corners_.named(row, "from", !isAngle && !isCeiling);
    if (!from) return tl::unexpected(from.error());
    const auto to = corners_.named(row, "to", isDiagonal || kind == MeasurementKind::Offset);
    if (!to) return tl::unexpected(to.error());
    const auto at = corners_.named(row, "at", isAngle);
    if (!at) return tl::unexpected(at.error());
    reading.from = *from;
    reading.to = *to;
    reading.at = *at;
    const auto how = instrument(row);
    if (!how) return tl::unexpected(how.error());
    reading.how = *how;
    const auto value = isAngle ? figures_.angle(row) : figures_.length(row, "value");
    if (!value) return tl::unexpected(value.error());
    reading.value = *value;
    if (const auto ok = checkSize(row, reading); !ok) return ok;
    if (isCeiling) {
      if (!limits::kCeilingHeight.contains(*value))
        return fail("A ceiling height of " + row.field("value") + " is not to be believed.",
                    row.where("value"),
                    "It must lie between 1 m and 30 m. Does the figure have the right unit?");
      if (const auto ok = readPlace(row, reading); !ok) return ok;
    }
    list_.readings.push_back(reading);
    lines_.push_back(row.where());
    return {};
  }

  Result<void> checkSize(const ListRow& row, const Measurement& reading) const {
    const bool isLength =
        reading.kind == MeasurementKind::WallLength || reading.kind == MeasurementKind::Diagonal;
    if (!isLength || limits::kWallLength.contains(reading.value)) return {};
    return fail("A length of " + row.field("value") + " is none that a room can have.", row.where("value"),
                "It must lie between 10 mm and 3000 m. Does the figure have the right unit?");
  }

  Result<void> readPlace(const ListRow& row, Measurement& reading) {
    const bool hasPoint = !row.field("x").empty() || !row.field("y").empty();
    if (reading.at && hasPoint)
      return fail("The ceiling height has both a corner and a point.", row.where("at"),
                  "Leave one of them out.");
    if (reading.at) return {};
    if (!hasPoint)
      return fail("The ceiling height says no place.", row.where("x"),
                  "Write x along wall A and y into the room, or a corner in column at.");
    const auto x = figures_.length(row, "x");
    if (!x) return tl::unexpected(x.error());
    const auto y = figures_.length(row, "y");
    if (!y) return tl::unexpected(y.error());
    reading.position = {*x, *y};
    return {};
  }

  Result<void> readOpening(const ListRow& row, OpeningKind kind) {
    Opening opening;
    opening.kind = kind;
    opening.isExit = kind == OpeningKind::HingedDoor || kind == OpeningKind::Passage;
    opening.name = row.field("note");
    const auto wall = corners_.named(row, "from", true);
    if (!wall) return tl::unexpected(wall.error());
    opening.wall = *wall;
    const auto how = instrument(row);
    if (!how) return tl::unexpected(how.error());
    const auto set = [&](Dimension& dimension, const char* column, bool isNeeded) -> Result<void> {
      if (!isNeeded && row.field(column).empty()) return {};
      const auto value = figures_.length(row, column);
      if (!value) return tl::unexpected(value.error());
      dimension = {*value, *how, true};
      return {};
    };
    opening.height.known = false;
    // A door stands on the floor; what nobody read of a window is not known.
    if (kind == OpeningKind::Window) opening.sill = notMeasured(kWindowSill);
    if (const auto ok = set(opening.offset, "x", true); !ok) return ok;
    if (const auto ok = set(opening.width, "value", true); !ok) return ok;
    if (const auto ok = set(opening.sill, "y", false); !ok) return ok;
    if (const auto ok = set(opening.height, "height", false); !ok) return ok;
    if (!limits::kOpeningSize.contains(opening.width.value))
      return fail("A width of " + row.field("value") + " is no opening's.", row.where("value"),
                  "It must lie between 100 mm and 30 m.");
    list_.openings.push_back(opening);
    return {};
  }

  Result<Instrument> instrument(const ListRow& row) const {
    const std::string text = lower(row.field("how"));
    if (text.empty()) return Instrument::Tape;
    for (const detail::InstrumentName& entry : kInstruments)
      if (entry.name == text) return entry.how;
    return fail("There is no way to measure called '" + text.substr(0, 40) + "'.", row.where("how"),
                "Write " + namesOf(kInstruments) + ".");
  }

  Result<MeasuringList> finished() {
    const auto corners = corners_.count(list_.readings.size());
    if (!corners) return tl::unexpected(corners.error());
    for (int i = 0; i < *corners; ++i) {
      Wall wall;
      wall.id = Id{++list_.lastId};
      wall.name = wallLetters(static_cast<std::size_t>(i));
      list_.walls.push_back(wall);
    }
    for (Measurement& reading : list_.readings) {
      reading.id = Id{++list_.lastId};
      if (reading.kind == MeasurementKind::Angle) nameSides(reading);
    }
    for (std::size_t i = 0; i < list_.readings.size(); ++i)
      if (const auto one = networkOf(list_.walls, std::span(&list_.readings[i], 1)); !one)
        return fail(one.error().what, lines_[i], one.error().next);
    for (Opening& opening : list_.openings) opening.id = Id{++list_.lastId};
    list_.units = figures_.units();
    return std::move(list_);
  }

  /// An angle that names no other corners lies between the neighbours of its own.
  void nameSides(Measurement& angle) const {
    const std::size_t count = list_.walls.size();
    const std::size_t at = angle.at.value - 1;
    if (!angle.from) angle.from = list_.walls[(at + 1) % count].id;
    if (!angle.to) angle.to = list_.walls[(at + count - 1) % count].id;
  }

  detail::ListFigures figures_;
  detail::ListCorners corners_;
  std::map<std::string, std::size_t> columns_;
  MeasuringList list_;
  std::vector<std::string> lines_;  ///< of each reading
};

}  // namespace

bool looksLikeMeasuringList(std::string_view text) {
  // The header is near the top, after remarks at most.
  constexpr std::size_t kTop = 1 << 16;
  const auto rows = csvRows(text.substr(0, kTop));
  if (!rows || rows->empty()) return false;
  const auto& header = rows->front().fields;
  return std::any_of(header.begin(), header.end(),
                     [](const std::string& name) { return detail::lower(name) == "kind"; });
}

Result<MeasuringList> readMeasuringList(std::string_view text, std::optional<UnitSystem> asked) {
  const auto rows = csvRows(text);
  if (!rows) return tl::unexpected(rows.error());
  return Reader(std::move(asked)).read(*rows, detail::orderInRemarks(detail::tableText(text)));
}

}  // namespace baywright
