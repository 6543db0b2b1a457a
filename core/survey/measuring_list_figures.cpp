// SPDX-License-Identifier: Apache-2.0
#include "survey/measuring_list_figures.h"

#include <cctype>

#include "survey/measuring_list.h"
#include "survey/measuring_list_words.h"
#include "units/angle_text.h"
#include "units/length_text.h"

namespace baywright::detail {
namespace {

/// True for a comma that could part thousands: exactly three digits to its right, and no other comma.
bool isAmbiguousComma(std::string_view text) {
  const auto comma = text.find(',');
  if (comma == std::string_view::npos || text.find(',', comma + 1) != std::string_view::npos) return false;
  std::size_t digits = 0;
  while (comma + 1 + digits < text.size() &&
         std::isdigit(static_cast<unsigned char>(text[comma + 1 + digits])))
    ++digits;
  return digits == 3;
}

bool hasUnit(std::string_view text) {
  return text.find_first_not_of("0123456789.,+-/ ") != std::string_view::npos;
}

/// "7,200 m" or "7,200m", but no mm or cm.
bool isMetres(std::string_view text) {
  if (!text.ends_with('m')) return false;
  text.remove_suffix(1);
  const auto last = text.find_last_not_of(' ');
  return last != std::string_view::npos && std::isdigit(static_cast<unsigned char>(text[last]));
}

Problem placed(Problem problem, const ListRow& row, const char* column) {
  problem.where = row.where(column) + (problem.where.empty() ? "" : ", " + problem.where);
  return problem;
}

}  // namespace

Result<void> ListFigures::stateUnit(const std::string& word, const std::string& where) {
  const auto unit = unitNamed(word);
  if (!unit)
    return fail("There is no unit '" + word.substr(0, 40) + "'.", where, "Write m, cm, mm, ft, ft-in or in.");
  if (stated_ && *stated_ != *unit)
    return fail("The list names two units.", where, "Keep one, and write other units in figures.");
  if (asked_ && asked_->length != *unit)
    return fail("The list says that its figures are in " + lower(unitName(*unit)) + ", not in " +
                    lower(unitName(asked_->length)) + ".",
                where, "Take one of the two back.");
  stated_ = *unit;
  return {};
}

void ListFigures::noteComma(std::string_view figure) {
  hasDecimalCommas_ |= figure.find(',') != std::string_view::npos && !isAmbiguousComma(figure);
}

Result<double> ListFigures::length(const ListRow& row, const char* column) const {
  const std::string text = row.field(column);
  if (text.empty())
    return fail("The figure is missing.", row.where(column), "Write it, or take the row out.");
  auto units = unitsFor(row, column);
  if (!units) return tl::unexpected(units.error());
  if (!hasUnit(text) && !stated_ && !asked_)
    return fail("'" + text.substr(0, 40) + "' has no unit, and the list says none.", row.where(column),
                "Add a row 'unit' with m, cm, mm, ft, ft-in or in as its value, or give the unit beside the "
                "list.");
  const auto value = parseLength(text, *units);
  if (!value) return tl::unexpected(placed(value.error(), row, column));
  return *value;
}

Result<double> ListFigures::angle(const ListRow& row) const {
  const auto units = unitsFor(row, "value");
  if (!units) return tl::unexpected(units.error());
  const auto value = parseAngle(row.field("value"), *units);
  if (!value) return tl::unexpected(placed(value.error(), row, "value"));
  if (!(*value > 0) || *value >= 2 * kPi)
    return fail("An angle must lie between 0 and 360 degrees.", row.where("value"), "Read it again.");
  return *value;
}

Result<UnitSystem> ListFigures::unitsFor(const ListRow& row, const char* column) const {
  UnitSystem units = inUnit();
  const std::string text = row.field(column);
  const bool hasComma = text.find(',') != std::string::npos;
  // No room has a wall of thousands of metres.
  const bool isInMetres = hasUnit(text) ? isMetres(text) : units.length == LengthUnit::Metres;
  if (hasComma && isAmbiguousComma(text) && !hasDecimalCommas_ && !isInMetres)
    return fail("'" + text.substr(0, 40) + "' could be meant in two ways.", row.where(column),
                "Write it with a decimal point, and thousands without a mark.");
  units.decimal = hasComma ? ',' : '.';
  return units;
}

UnitSystem ListFigures::inUnit() const {
  UnitSystem units = asked_.value_or(UnitSystem{});
  if (stated_) units.length = *stated_;
  return units;
}

UnitSystem ListFigures::units() const {
  UnitSystem units = inUnit();
  units.decimal = hasDecimalCommas_ ? ',' : '.';
  return units;
}

}  // namespace baywright::detail
