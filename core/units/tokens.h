// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/problem.h"

namespace baywright::detail {

/// One piece of a typed value. Internal to `units`.
struct Token {
  enum class Kind { Number, Fraction, Word, Mark, End };

  Kind kind = Kind::End;
  std::string
      text;  ///< Number: as typed. Fraction: "1/2". Word: lower case. Mark: the plainest way to type it.
  double value = 0;     ///< Number and Fraction
  bool whole = true;    ///< Number: typed without a decimal separator
  bool spaced = false;  ///< white space stands before it
  int character = 1;    ///< place of its first character, counted in code points from 1

  bool isMark(std::string_view mark) const { return kind == Kind::Mark && text == mark; }
};

/// Nobody types a longer value; more is a paste gone wrong.
inline constexpr int kLongestText = 100;

/// Cuts UTF-8 text into tokens, the last of which is always End. The many ways to type one thing become one:
/// typographic quotes, primes and doubled quotes are ' or ", each dash is "-", each kind of space is a space,
/// ½ is a Fraction, "ft." is "ft". `decimal` is '.' or ','; the other of the two is refused, because "1.234"
/// means 1234 to one reader and a bit more than 1 to the next. So are exponents, grouped thousands, control
/// characters, bytes that are not UTF-8 and text beyond kLongestText.
Result<std::vector<Token>> tokenize(std::string_view utf8, char decimal);

/// A problem whose `where` is "character 4".
tl::unexpected<Problem> failAt(int character, std::string what, std::string next = {});

}  // namespace baywright::detail
