// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "base/problem.h"
#include "job/measurement.h"
#include "job/opening.h"
#include "survey/measuring_list.h"
#include "units/unit_system.h"

namespace baywright::detail {

enum class RowKind { Unit, Corners, Order, Reading, Opening };

struct KindName {
  std::string_view name;
  RowKind row;
  MeasurementKind measurement = MeasurementKind::WallLength;
  OpeningKind opening = OpeningKind::HingedDoor;
};

inline constexpr std::array kKinds = {
    KindName{"unit", RowKind::Unit},
    KindName{"corners", RowKind::Corners},
    KindName{"order", RowKind::Order},
    KindName{"wall", RowKind::Reading, MeasurementKind::WallLength},
    KindName{"diagonal", RowKind::Reading, MeasurementKind::Diagonal},
    KindName{"angle", RowKind::Reading, MeasurementKind::Angle},
    KindName{"offset", RowKind::Reading, MeasurementKind::Offset},
    KindName{"ceiling", RowKind::Reading, MeasurementKind::CeilingHeight},
    KindName{"door", RowKind::Opening, {}, OpeningKind::HingedDoor},
    KindName{"garage door", RowKind::Opening, {}, OpeningKind::SectionalDoor},
    KindName{"window", RowKind::Opening, {}, OpeningKind::Window},
    KindName{"passage", RowKind::Opening, {}, OpeningKind::Passage},
};

inline constexpr std::array<std::string_view, 10> kColumns = {"kind", "from",  "to",     "at",  "x",
                                                              "y",    "value", "height", "how", "note"};

struct InstrumentName {
  std::string_view name;
  Instrument how;
};
inline constexpr std::array kInstruments = {
    InstrumentName{"tape", Instrument::Tape}, InstrumentName{"laser", Instrument::Laser},
    InstrumentName{"drawing", Instrument::Drawing}, InstrumentName{"scan", Instrument::Scan},
    InstrumentName{"guess", Instrument::Guess}};

/// The order of letters that a text holds the word for: clockwise, counter-clockwise, anticlockwise. NotSaid
/// where it holds none, or both.
LetterOrder orderIn(std::string_view text);
/// The same of the remarks of a table, which begin with #.
LetterOrder orderInRemarks(std::string_view table);

/// ASCII letters in lower case.
std::string lower(std::string_view text);

template <class Table>
std::string namesOf(const Table& table) {
  std::string names;
  for (const auto& entry : table) names += (names.empty() ? "" : ", ") + std::string(entry.name);
  return names;
}

/// A column's name as a header writes it, with the unit that may stand behind it: "value (mm)", "x [m]".
struct ColumnName {
  std::string name;  ///< one of kColumns
  std::string unit;  ///< as written; empty: none
};
/// Refused with a sentence: a name that is no column's, or that is a kind, so that the header is missing.
Result<ColumnName> columnNamed(std::string_view text);

}  // namespace baywright::detail
