// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <utility>

#include "panels/field.h"

namespace baywright {

/// Collects the fields of one kind of thing. `find` gives the thing in a job, `set` is the edit that replaces
/// it; each field then needs only its label and how to get at its value.
template <class Thing>
class FieldList {
 public:
  using Find = std::function<const Thing*(const Job&)>;
  using Set = std::function<Result<Job>(Job, const Thing&)>;

  FieldList(Find find, Set set) : find_(std::move(find)), set_(std::move(set)) {}

  FieldList& group(const QString& title) {
    group_ = title;
    return *this;
  }
  /// `at` answers a reference to the value inside a thing: [](Frame& frame) -> auto& { return frame.width; }.
  /// It must capture nothing.
  template <class At>
  FieldList& add(PropertyKind kind, const QString& label, At at, const QString& hint = {}) {
    using Value = std::decay_t<decltype(at(std::declval<Thing&>()))>;
    return addAt<Value>(kind, label, at, hint);
  }
  template <class At>
  FieldList& choice(const QString& label, const QStringList& choices, At at, const QString& hint = {}) {
    add(PropertyKind::Choice, label, at, hint);
    fields_.back().choices = choices;
    return *this;
  }
  template <class At>
  FieldList& amount(QuantityKind quantity, const QString& label, At at, const QString& hint = {}) {
    add(PropertyKind::Amount, label, at, hint);
    fields_.back().quantity = quantity;
    return *this;
  }
  std::vector<Field> take() { return std::move(fields_); }

 private:
  /// One instantiation a type of value and not one a field: there are over a hundred fields.
  template <class Value>
  FieldList& addAt(PropertyKind kind, const QString& label, Value& (*at)(Thing&), const QString& hint) {
    Field field;
    field.kind = kind;
    field.label = label;
    field.hint = hint;
    field.group = std::exchange(group_, QString());
    field.read = [find = find_, at](const Job& job) -> FieldValue {
      const Thing* thing = find(job);
      if (!thing) return FieldValue(StoredAs<Value>{});
      Thing copy = *thing;
      return static_cast<StoredAs<Value>>(at(copy));
    };
    field.write = [find = find_, set = set_, at](const Job& job, const FieldValue& value) -> Result<Job> {
      const Thing* thing = find(job);
      if (!thing) return fail("What this field belongs to is gone.");
      Thing changed = *thing;
      at(changed) = static_cast<Value>(std::get<StoredAs<Value>>(value));
      return set(job, changed);
    };
    fields_.push_back(std::move(field));
    return *this;
  }

  /// Enumerations travel as int, everything else as itself.
  template <class Value>
  using StoredAs = std::conditional_t<std::is_enum_v<Value>, int, Value>;

  Find find_;
  Set set_;
  QString group_;
  std::vector<Field> fields_;
};

}  // namespace baywright
