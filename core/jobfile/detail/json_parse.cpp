// SPDX-License-Identifier: Apache-2.0
#include "jobfile/detail/json_parse.h"

#include <algorithm>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "jobfile/job_json.h"

namespace baywright::detail {
namespace {

using nlohmann::json;

std::string placeOf(std::string_view text, std::size_t byte) {
  const std::string_view before = text.substr(0, std::min(byte == 0 ? 0 : byte - 1, text.size()));
  const auto line = std::count(before.begin(), before.end(), '\n') + 1;
  const std::size_t lineStart = before.rfind('\n') + 1;  // npos + 1 is 0
  return "line " + std::to_string(line) + ", column " + std::to_string(before.size() - lineStart + 1);
}

/// Goes through a text once before anything is built of it, and stops at the first thing that is wrong. (The
/// library's own parser callback could watch too, but looks through every list again at each of its
/// elements.)
class Inspection final : public nlohmann::json_sax<json> {
 public:
  explicit Inspection(std::string_view text) : text_(text) {}

  const std::optional<Problem>& problem() const { return problem_; }

  bool null() override { return true; }
  bool boolean(bool) override { return true; }
  bool number_integer(number_integer_t) override { return true; }
  bool number_unsigned(number_unsigned_t) override { return true; }
  bool number_float(number_float_t, const string_t&) override { return true; }
  bool string(string_t&) override { return true; }
  bool binary(binary_t&) override { return true; }

  bool start_object(std::size_t) override { return enter(); }
  bool end_object() override { return leave(); }
  bool start_array(std::size_t) override { return enter(); }
  bool end_array() override { return leave(); }

  bool key(string_t& name) override {
    if (names_.back().insert(name).second) return true;
    return refuse("The name \"" + name + "\" is given twice in one object.", {});
  }

  bool parse_error(std::size_t byte, const std::string&, const nlohmann::detail::exception& error) override {
    constexpr int kNumberTooLarge = 406;  // the library's number for it
    if (error.id == kNumberTooLarge)
      return refuse("The description has a number that is too large to be read.", {});
    return refuse("The description is not JSON from here on.", placeOf(text_, byte));
  }

 private:
  bool enter() {
    names_.emplace_back();
    if (names_.size() <= static_cast<std::size_t>(kDeepestJson)) return true;
    return refuse("The description is nested more than " + std::to_string(kDeepestJson) + " levels deep.",
                  {});
  }
  bool leave() {
    names_.pop_back();
    return true;
  }
  bool refuse(std::string what, std::string where) {
    problem_ = Problem{std::move(what), std::move(where), {}};
    return false;
  }

  std::string_view text_;
  std::vector<std::set<std::string>> names_;  ///< of the objects and lists that are open
  std::optional<Problem> problem_;
};

}  // namespace

Result<json> parseJson(std::string_view text) {
  if (text.size() > kMostJsonBytes)
    return fail("The description has " + std::to_string(text.size()) + " bytes, but at most " +
                std::to_string(kMostJsonBytes) + " are read.");
  Inspection inspection(text);
  json::sax_parse(text, &inspection);
  if (inspection.problem()) return tl::unexpected(*inspection.problem());
  return json::parse(text, nullptr, false);
}

}  // namespace baywright::detail
