// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <string>
#include <variant>
#include <vector>

#include "base/problem.h"
#include "job/job.h"
#include "job/thing_lookup.h"
#include "units/quantity_text.h"

namespace baywright {

/// What can stand in a field. Lengths in metres, angles in radians.
using FieldValue = std::variant<double, int, bool, std::string, Dimension>;

enum class PropertyKind {
  Length,    ///< double, may be negative
  Size,      ///< double, > 0
  Angle,     ///< double
  Number,    ///< double without unit
  Amount,    ///< double, a QuantityKind
  Count,     ///< int
  Choice,    ///< int, an index into `choices`
  Flag,      ///< bool
  Words,     ///< std::string
  Measured,  ///< Dimension: value, and how it was found
};

/// One number or word of a thing that can be typed: how to read it from a job and what edit writing it is.
/// The form that shows it knows nothing of what it is about.
struct Field {
  QString label;
  PropertyKind kind = PropertyKind::Length;
  std::function<FieldValue(const Job&)> read;
  std::function<Result<Job>(const Job&, const FieldValue&)> write;
  QStringList choices;
  QuantityKind quantity = QuantityKind::Mass;
  QString hint;
  QString group;  ///< heading above the first field of each group
};

/// The fields of one thing in the order in which they are shown; none for an id that names nothing. A field
/// must not be read once its thing is gone.
std::vector<Field> fieldsOf(const Job& job, Id id);

// One function a family of things, each in a file of its own.
std::vector<Field> roomFields(const Job& job, const Thing& thing);
std::vector<Field> peopleFields(const Job& job, const Thing& thing);
std::vector<Field> kitFields(const Job& job, const Thing& thing);
std::vector<Field> readingFields(const Job& job, const Thing& thing);
std::vector<Field> scanFields(const Job& job, const Thing& thing);

// Of the job itself.
std::vector<Field> titleFields();
std::vector<Field> requirementFields();

}  // namespace baywright
