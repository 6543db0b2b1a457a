// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/problem.h"

namespace baywright {

/// One option that a command takes: "--out DIR", or a switch when `value` is empty.
struct OptionSpec {
  std::string_view name;   ///< with its dashes
  std::string_view value;  ///< what stands for its value in the help: "DIR"
  std::string_view help;
  bool required = false;
};

/// What was typed after the command's name.
class Arguments {
 public:
  /// Refused with a sentence: an option that is not in the list or is given twice, a value that is missing, a
  /// required option that is missing, more or fewer plain words than `words` names.
  static Result<Arguments> parse(std::span<const std::string> typed, std::span<const OptionSpec> options,
                                 std::span<const std::string_view> words);

  const std::string& word(std::size_t index) const { return words_[index]; }
  bool has(std::string_view option) const { return options_.contains(std::string(option)); }
  std::optional<std::string> value(std::string_view option) const;

 private:
  std::vector<std::string> words_;
  std::map<std::string, std::string> options_;
};

}  // namespace baywright
