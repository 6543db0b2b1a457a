// SPDX-License-Identifier: Apache-2.0
#include "cli/arguments.h"

#include <algorithm>

namespace baywright {
namespace {

const OptionSpec* find(std::span<const OptionSpec> options, std::string_view name) {
  const auto found =
      std::find_if(options.begin(), options.end(), [&](const OptionSpec& o) { return o.name == name; });
  return found == options.end() ? nullptr : &*found;
}

std::string listed(std::span<const OptionSpec> options) {
  std::string names;
  for (const OptionSpec& option : options) names += (names.empty() ? "" : ", ") + std::string(option.name);
  return names.empty() ? "It takes no options." : "It takes " + names + ".";
}

}  // namespace

Result<Arguments> Arguments::parse(std::span<const std::string> typed, std::span<const OptionSpec> options,
                                   std::span<const std::string_view> words) {
  Arguments result;
  for (std::size_t i = 0; i < typed.size(); ++i) {
    const bool isOption = typed[i].size() > 2 && typed[i].starts_with("--");
    if (!isOption) {
      result.words_.push_back(typed[i]);
      continue;
    }
    const std::size_t equals = typed[i].find('=');
    const std::string name = typed[i].substr(0, equals);
    const OptionSpec* option = find(options, name);
    if (!option) return fail("There is no option " + name + ".", {}, listed(options));
    std::string value;
    if (!option->value.empty()) {
      if (equals != std::string::npos) {
        value = typed[i].substr(equals + 1);
      } else if (i + 1 < typed.size()) {
        value = typed[++i];
      }
      if (value.empty())
        return fail(name + " needs a value: " + name + " " + std::string(option->value) + ".");
    } else if (equals != std::string::npos) {
      return fail(name + " takes no value.");
    }
    if (!result.options_.emplace(name, value).second) return fail(name + " is given twice.");
  }
  for (const OptionSpec& option : options) {
    if (option.required && !result.has(option.name)) {
      return fail(std::string(option.name) + " " + std::string(option.value) + " is missing.");
    }
  }
  if (result.words_.size() < words.size())
    return fail(std::string(words[result.words_.size()]) + " is missing.");
  if (result.words_.size() > words.size())
    return fail("'" + result.words_[words.size()] + "' is one word too many.");
  return result;
}

std::optional<std::string> Arguments::value(std::string_view option) const {
  const auto found = options_.find(std::string(option));
  if (found == options_.end()) return std::nullopt;
  return found->second;
}

}  // namespace baywright
