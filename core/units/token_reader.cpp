// SPDX-License-Identifier: Apache-2.0
#include "units/token_reader.h"

#include <algorithm>

namespace baywright::detail {

const Token& TokenReader::peek(std::size_t ahead) const {
  return tokens_[std::min(at_ + ahead, tokens_.size() - 1)];
}

Token TokenReader::take() {
  Token token = peek();
  if (token.kind != Token::Kind::End) ++at_;
  return token;
}

bool TokenReader::takeMark(std::string_view mark) {
  const bool found = peek().isMark(mark);
  if (found) ++at_;
  return found;
}

double TokenReader::takeSign() {
  if (takeMark("-")) return -1;
  takeMark("+");
  return 1;
}

bool TokenReader::fractionStartsAt(std::size_t ahead) const {
  const Token::Kind kind = peek(ahead).kind;
  return kind == Token::Kind::Fraction || (kind == Token::Kind::Number && peek(ahead + 1).isMark("/"));
}

Result<Amount> TokenReader::takeFraction() {
  const Token top = take();
  Amount amount{top.value, false, true, top.character};
  if (top.kind == Token::Kind::Fraction) return amount;
  take();
  const Token bottom = take();
  if (!top.whole) return refuse(top, "The upper number of a fraction must be whole.");
  if (bottom.kind != Token::Kind::Number || !bottom.whole) {
    return refuse(bottom, "A whole number must follow the “/” of a fraction.");
  }
  if (bottom.value == 0) return refuse(bottom, "The lower number of a fraction cannot be 0.");
  amount.value = top.value / bottom.value;
  return amount;
}

Result<Amount> TokenReader::takeAmount() {
  if (fractionStartsAt(0)) return takeFraction();
  const Token first = peek();
  if (first.kind == Token::Kind::End) return refuse(first, "A number is missing.");
  if (first.kind != Token::Kind::Number) return refuse(first, "“" + first.text + "” is not a number.");
  take();

  Amount amount{first.value, first.whole, false, first.character};
  const bool hyphen = peek().isMark("-") && !peek().spaced && fractionStartsAt(1) && !peek(1).spaced;
  if (!hyphen && !fractionStartsAt(0)) return amount;
  if (hyphen) amount.hyphen = take().character;
  const Token part = peek();
  Result<Amount> fraction = takeFraction();
  if (!fraction) return fraction;
  if (!first.whole) return refuse(part, "A fraction cannot follow a number with decimals.");
  if (fraction->value >= 1) return refuse(part, "A fraction after a whole number must be less than one.");
  amount.value += fraction->value;
  amount.whole = false;
  amount.fraction = true;
  return amount;
}

Result<double> TokenReader::endWith(double value) const {
  const Token& token = peek();
  switch (token.kind) {
    case Token::Kind::End:
      return value;
    case Token::Kind::Number:
    case Token::Kind::Fraction:
      return refuse(token, "“" + token.text + "” is a second number that belongs to nothing.");
    case Token::Kind::Word:
    case Token::Kind::Mark:
      break;
  }
  if (token.isMark("-")) return refuse(token, "A minus sign can only stand at the beginning.");
  return refuse(token, "“" + token.text + "” does not belong here.");
}

}  // namespace baywright::detail
