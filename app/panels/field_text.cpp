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
    case PropertyKind::Length:
    case PropertyKind::Size:
      return formatLength(std::get<double>(value), units);
    case PropertyKind::Angle:
      return formatAngle(std::get<double>(value), units);
    case PropertyKind::Number:
      return formatNumber(std::get<double>(value), kNumberDecimals, units);
    case PropertyKind::Amount:
      return formatQuantity(std::get<double>(value), field.quantity, units);
    case PropertyKind::Count:
      return std::to_string(std::get<int>(value));
    case PropertyKind::Words:
      return std::get<std::string>(value);
    case PropertyKind::Measured:
      return std::get<Dimension>(value).known ? formatLength(std::get<Dimension>(value).value, units)
                                              : std::string();
    case PropertyKind::Choice:
    case PropertyKind::Flag:
      break;
  }
  return {};
}

Result<double> number(const Field& field, const std::string& text, const UnitSystem& units) {
  switch (field.kind) {
    case PropertyKind::Size:
      return parseSize(text, units);
    case PropertyKind::Angle:
      return parseAngle(text, units);
    case PropertyKind::Amount:
      return parseQuantity(text, field.quantity, units);
    case PropertyKind::Number:
    case PropertyKind::Count:
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
  if (field.kind == PropertyKind::Words) return FieldValue(typed);
  const Result<double> value = number(field, typed, units);
  if (!value) return tl::unexpected(value.error());
  if (field.kind == PropertyKind::Count) {
    if (*value != std::round(*value)) return fail("This must be a whole number.");
    return FieldValue(static_cast<int>(*value));
  }
  if (field.kind == PropertyKind::Measured) {
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
