// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <limits>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <variant>
#include <vector>

#include "base/problem.h"
#include "geometry/mesh.h"
#include "job/enum_names.h"
#include "job/fields.h"
#include "job/limits.h"

/// JSON to fields of a job. Internal to `jobfile`.
namespace baywright::detail {

/// Fills things from JSON. It stops at the first problem and says where it stood; fields that are absent stay
/// as they are.
class JsonReader {
 public:
  using Json = nlohmann::json;

  const std::optional<Problem>& problem() const { return problem_; }

  /// Members of the outermost object that are no fields of it; refused in deeper ones.
  const std::vector<std::string>& unknown() const { return unknown_; }

  template <HasFields T>
  void read(const Json& json, T& thing) {
    if (!json.is_object()) return refuse("must be an object");
    std::set<std::string, std::less<>> known;
    visitFields(
        [&](std::string_view name, auto& field) {
          known.emplace(name);
          const auto member = json.find(name);
          if (member != json.end()) readAt(std::string(name), *member, field);
        },
        thing);
    checkNames(json, known);
  }

  template <class T>
  void read(const Json& json, std::vector<T>& list) {
    if (!json.is_array()) return refuse("must be an array");
    elements_ += json.size();
    if (elements_ > kMostElements)
      return refuse("brings the lists of the job to more than " + std::to_string(kMostElements) +
                    " elements");
    list.clear();
    for (std::size_t i = 0; i < json.size() && !problem_; ++i) {
      list.emplace_back();
      readAt(std::to_string(i), json[i], list.back());
    }
  }

  template <class T>
  void read(const Json& json, std::optional<T>& value) {
    if (json.is_null()) return value.reset();
    read(json, value.emplace());
  }

  template <int rows, int columns>
  void read(const Json& json, Eigen::Matrix<double, rows, columns>& matrix) {
    constexpr int count = rows * columns;
    if (!json.is_array() || json.size() != static_cast<std::size_t>(count))
      return refuse("must be an array of " + std::to_string(count) + " numbers");
    for (int i = 0; i < count; ++i)
      readAt(std::to_string(i), json[static_cast<std::size_t>(i)], matrix(i / columns, i % columns));
  }

  template <class E>
  requires std::is_enum_v<E>
  void read(const Json& json, E& value) {
    const auto found = json.is_string() ? enumFromName<E>(json.get_ref<const std::string&>()) : std::nullopt;
    if (found)
      value = *found;
    else
      refuse("must be one of " + allNames<E>());
  }

  void read(const Json& json, bool& value) {
    if (json.is_boolean())
      value = json.get<bool>();
    else
      refuse("must be true or false");
  }
  void read(const Json& json, double& value) {
    if (json.is_number())
      value = json.get<double>();
    else
      refuse("must be a number");
  }
  void read(const Json& json, int& value) { readWhole(json, value); }
  void read(const Json& json, std::uint32_t& value) { readWhole(json, value); }
  void read(const Json& json, Id& id) { readWhole(json, id.value); }
  void read(const Json& json, std::string& value) {
    if (json.is_string())
      value = json.get<std::string>();
    else
      refuse("must be a text");
  }
  void read(const Json& json, char& value) {
    if (json.is_string() && json.get_ref<const std::string&>().size() == 1)
      value = json.get_ref<const std::string&>().front();
    else
      refuse("must be a text of one character");
  }

  void read(const Json& json, FixtureShape& shape) {
    const std::string type = json.is_object() && json.contains("type") && json["type"].is_string()
                                 ? json["type"].get<std::string>()
                                 : std::string();
    if (type == shapeName(BoxShape{}))
      shape = BoxShape{};
    else if (type == shapeName(PrismShape{}))
      shape = PrismShape{};
    else if (type == shapeName(CylinderShape{}))
      shape = CylinderShape{};
    else
      return refuse("must be an object whose \"type\" is \"box\", \"prism\" or \"cylinder\"");
    Json fields = json;
    fields.erase("type");
    std::visit([&](auto& held) { read(fields, held); }, shape);
  }

  // A scan gets the place for what the archive keeps beside the text.
  void read(const Json& json, BlobPtr& file) {
    if (json.is_null()) return file.reset();
    Blob blob;
    read(json, blob.fileName);
    file = std::make_shared<const Blob>(std::move(blob));
  }
  template <class Geometry>
  void read(const Json& json, std::shared_ptr<const Geometry>& geometry) {
    bool there = false;
    read(json, there);
    geometry = there ? std::make_shared<const Geometry>() : nullptr;
  }

 private:
  template <class T>
  void readAt(std::string step, const Json& json, T& field) {
    if (problem_) return;
    path_.push_back(std::move(step));
    read(json, field);
    path_.pop_back();
  }

  template <class Whole>
  void readWhole(const Json& json, Whole& value) {
    using Limits = std::numeric_limits<Whole>;
    const bool fits =
        json.is_number_integer() &&
        (json.is_number_unsigned() ? json.get<std::uint64_t>() <= static_cast<std::uint64_t>(Limits::max())
                                   : json.get<std::int64_t>() >= static_cast<std::int64_t>(Limits::min()));
    if (fits)
      value = json.get<Whole>();
    else
      refuse("must be a whole number of sensible size");
  }

  template <class E>
  static std::string allNames() {
    std::string names;
    for (const EnumName<E>& entry : enumNames(E{}))
      names += (names.empty() ? "\"" : ", \"") + std::string(entry.name) + "\"";
    return names;
  }

  void checkNames(const Json& json, const std::set<std::string, std::less<>>& known) {
    for (const auto& [name, member] : json.items()) {
      if (problem_) return;
      if (known.contains(name)) continue;
      if (path_.empty())
        unknown_.push_back(name);
      else
        refuse("has no field \"" + name + "\"");
    }
  }

  void refuse(const std::string& what) {
    if (problem_) return;
    std::string where;
    for (const std::string& step : path_) where += (where.empty() ? "" : " / ") + step;
    problem_ = Problem{"It " + what + ".", where, {}};
  }

  /// Over all lists. A few bytes of text can ask for a thing of a thousand bytes, so lists are counted before
  /// anything is made of them.
  static constexpr std::size_t kMostElements = 10 * limits::kMostThings;

  std::size_t elements_ = 0;
  std::vector<std::string> path_;
  std::vector<std::string> unknown_;
  std::optional<Problem> problem_;
};

}  // namespace baywright::detail
