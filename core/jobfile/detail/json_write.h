// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "job/enum_names.h"
#include "job/fields.h"

/// Fields of a job to JSON. Internal to `jobfile`.
namespace baywright::detail {

using OrderedJson = nlohmann::ordered_json;

inline OrderedJson toJson(bool value) {
  return value;
}
inline OrderedJson toJson(int value) {
  return value;
}
inline OrderedJson toJson(std::uint32_t value) {
  return value;
}
inline OrderedJson toJson(double value) {
  return value;
}
inline OrderedJson toJson(char value) {
  return std::string(1, value);
}
inline OrderedJson toJson(const std::string& value) {
  return value;
}
inline OrderedJson toJson(Id value) {
  return value.value;
}

template <class E>
requires std::is_enum_v<E> OrderedJson toJson(E value) {
  return std::string(enumName(value));
}

/// Row by row.
template <int rows, int columns>
OrderedJson toJson(const Eigen::Matrix<double, rows, columns>& matrix) {
  OrderedJson array = OrderedJson::array();
  for (Eigen::Index row = 0; row < rows; ++row)
    for (Eigen::Index column = 0; column < columns; ++column) array.push_back(matrix(row, column));
  return array;
}

// The bytes lie beside the text; it says what they are called, or that they are there.
inline OrderedJson toJson(const BlobPtr& file) {
  return file ? OrderedJson(file->fileName) : OrderedJson();
}
template <class Geometry>
OrderedJson toJson(const std::shared_ptr<const Geometry>& geometry) {
  return geometry != nullptr;
}

template <class T>
OrderedJson toJson(const std::optional<T>& value);
template <class T>
OrderedJson toJson(const std::vector<T>& list);
inline OrderedJson toJson(const FixtureShape& shape);

template <HasFields T>
OrderedJson toJson(const T& thing) {
  OrderedJson object = OrderedJson::object();
  visitFields([&](std::string_view name, const auto& field) { object[std::string(name)] = toJson(field); },
              thing);
  return object;
}

template <class T>
OrderedJson toJson(const std::optional<T>& value) {
  return value ? toJson(*value) : OrderedJson();
}

template <class T>
OrderedJson toJson(const std::vector<T>& list) {
  OrderedJson array = OrderedJson::array();
  for (const T& element : list) array.push_back(toJson(element));
  return array;
}

inline OrderedJson toJson(const FixtureShape& shape) {
  return std::visit(
      [](const auto& held) {
        OrderedJson object = {{"type", std::string(shapeName(held))}};
        object.update(toJson(held));
        return object;
      },
      shape);
}

}  // namespace baywright::detail
