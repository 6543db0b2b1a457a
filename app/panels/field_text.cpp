// SPDX-License-Identifier: Apache-2.0
#include "panels/field_text.h"

#include <cmath>

#include "units/angle_text.h"
#include "units/length_text.h"
#include "units/number_text.h"
#include "units/quantity_text.h"

namespace baywright {
namespace {

constexpr int kNumberDecimals = 3;

std::string written(const Field& field, const FieldValue& value, const UnitSystem& units) {
  switch (field.kind) {
    case FieldKind::Length:
    case FieldKind::Size:
      return formatLength(std::get<double>(value), units);
    case FieldKind::Angle:
      return formatAngle(std::get<double>(value), units);
    case FieldKind::Number:
      return formatNumber(std::get<double>(value), kNumberDecimals, units);
    case FieldKind::Amount:
      return formatQuantity(std::get<double>(value), field.quantity, units);
    case FieldKind::Count:
      return std::to_string(std::get<int>(value));
    case FieldKind::Words:
      return std::get<std::string>(value);
    case FieldKind::Measured:
      return std::get<Dimension>(value).known ? formatLength(std::get<Dimension>(value).value, units)
                                              : std::string();
    case FieldKind::Choice:
    case FieldKind::Flag:
      break;
  }
  return {};
}

Result<double> number(const Field& field, const std::string& text, const UnitSystem& units) {
  switch (field.kind) {
    case FieldKind::Size:
      return parseSize(text, units);
    case FieldKind::Angle:
      return parseAngle(text, units);
    case FieldKind::Amount:
      return parseQuantity(text, field.quantity, units);
    case FieldKind::Number:
    case FieldKind::Count:
      return parseNumber(text, units);
    default:
      return parseLength(text, units);
  }
}

}  // namespace

QString textOf(const Field& field, const FieldValue& value, const UnitSystem& units) {
  return QString::fromStdString(written(field, value, units));
}

Result<FieldValue> valueOf(const Field& field, const QString& text, const FieldValue& before,
                           const UnitSystem& units) {
  const std::string typed = text.toStdString();
  if (field.kind == FieldKind::Words) return FieldValue(typed);
  const Result<double> value = number(field, typed, units);
  if (!value) return tl::unexpected(value.error());
  if (field.kind == FieldKind::Count) {
    if (*value != std::round(*value)) return fail("This must be a whole number.");
    return FieldValue(static_cast<int>(*value));
  }
  if (field.kind == FieldKind::Measured) {
    Dimension dimension = std::get<Dimension>(before);
    // A figure that is typed into an empty field was read off something: a tape, until the fitter says
    // otherwise.
    if (!dimension.known) dimension.how = Instrument::Tape;
    dimension.value = *value;
    dimension.known = true;
    return FieldValue(dimension);
  }
  return FieldValue(*value);
}

}  // namespace baywright
