// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

#include "panels/field.h"
#include "units/unit_system.h"

namespace baywright {

/// What stands in the field's line: the value in the job's unit. For Length, Size, Angle, Number, Amount,
/// Count, Words and the value of Measured.
QString textOf(const Field& field, const FieldValue& value, const UnitSystem& units);

/// The value that was typed, or a sentence. `before` gives what the line does not say: how a Measured was
/// found.
Result<FieldValue> valueOf(const Field& field, const QString& text, const FieldValue& before,
                           const UnitSystem& units);

}  // namespace baywright
