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

/// Counts brackets outside strings, before anything is built: a parser that is handed millions of them only
/// works hard to say no.
bool deeperThan(std::string_view text, int most) {
  int depth = 0;
  bool inString = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (inString) {
      if (c == '\\') ++i;
      if (c == '"') inString = false;
    } else if (c == '"') {
      inString = true;
    } else if (c == '[' || c == '{') {
      if (++depth > most) return true;
    } else if (c == ']' || c == '}') {
      --depth;
    }
  }
  return false;
}

std::string placeOf(std::string_view text, std::size_t byte) {
  const std::string_view before = text.substr(0, std::min(byte == 0 ? 0 : byte - 1, text.size()));
  const auto line = std::count(before.begin(), before.end(), '\n') + 1;
  const std::size_t lineStart = before.rfind('\n') + 1;  // npos + 1 is 0
  return "line " + std::to_string(line) + ", column " + std::to_string(before.size() - lineStart + 1);
}

/// Watches the names of the objects that are open.
class NameWatch {
 public:
  bool operator()(int, json::parse_event_t event, const json& parsed) {
    if (event == json::parse_event_t::object_start) open_.emplace_back();
    if (event == json::parse_event_t::object_end) open_.pop_back();
    if (event == json::parse_event_t::key) {
      const auto& name = parsed.get_ref<const std::string&>();
      if (!open_.back().insert(name).second && !twice_) twice_ = name;
    }
    return true;
  }
  const std::optional<std::string>& twice() const { return twice_; }

 private:
  std::vector<std::set<std::string>> open_;
  std::optional<std::string> twice_;
};

}  // namespace

Result<json> parseJson(std::string_view text) {
  if (text.size() > kMostJsonBytes)
    return fail("The description has " + std::to_string(text.size()) + " bytes, but at most " +
                std::to_string(kMostJsonBytes) + " are read.");
  if (deeperThan(text, kDeepestJson))
    return fail("The description is nested more than " + std::to_string(kDeepestJson) + " levels deep.");
  NameWatch watch;
  try {
    json parsed = json::parse(
        text, [&](int depth, json::parse_event_t event, json& value) { return watch(depth, event, value); });
    if (watch.twice()) return fail("The name \"" + *watch.twice() + "\" is given twice in one object.");
    return parsed;
  } catch (const json::parse_error& error) {
    return fail("The description is not JSON from here on.", placeOf(text, error.byte));
  } catch (const json::exception&) {
    return fail("The description has a number that is too large to be read.");
  }
}

}  // namespace baywright::detail
