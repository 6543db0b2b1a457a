// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/problem.h"
#include "units/tokens.h"

namespace baywright::detail {

/// A number with or without a fraction: 6, 6.5, 1/2, 6 1/2, 6½, 6-1/2. Never negative.
struct Amount {
  double value = 0;
  bool whole = true;      ///< no decimals and no fraction
  bool fraction = false;  ///< a fraction stands alone or after a whole number
  int character = 1;      ///< place of its first character
  int hyphen = 0;         ///< place of the hyphen in "6-1/2", else 0
};

/// Walks over the tokens of one value from left to right. Internal to `units`.
class TokenReader {
 public:
  /// `advice` is the `next` of the problems found here: how such a value is written.
  TokenReader(std::vector<Token> tokens, std::string advice)
      : tokens_(std::move(tokens)), advice_(std::move(advice)) {}

  /// The token that many places ahead; End forever after the end.
  const Token& peek(std::size_t ahead = 0) const;
  Token take();
  bool takeMark(std::string_view mark);

  /// -1 after a minus sign, else 1.
  double takeSign();
  Result<Amount> takeAmount();

  /// `value`, unless some text is left over.
  Result<double> endWith(double value) const;

  tl::unexpected<Problem> refuse(const Token& token, std::string what) const {
    return failAt(token.character, std::move(what), advice_);
  }

 private:
  bool fractionStartsAt(std::size_t ahead) const;
  Result<Amount> takeFraction();

  std::vector<Token> tokens_;
  std::string advice_;
  std::size_t at_ = 0;
};

}  // namespace baywright::detail
