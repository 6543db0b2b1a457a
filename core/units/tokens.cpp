// SPDX-License-Identifier: Apache-2.0
#include "units/tokens.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdio>

#include "units/utf8.h"

namespace baywright::detail {
namespace {

Result<std::u32string> decode(std::string_view utf8) {
  std::u32string codes;
  while (!utf8.empty()) {
    const int character = static_cast<int>(codes.size()) + 1;
    if (character > kLongestText) {
      return failAt(character, "The text is longer than " + std::to_string(kLongestText) + " characters.",
                    "Type one value only.");
    }
    const auto first = firstCodePoint(utf8);
    if (!first) return failAt(character, "The text holds a damaged character.", "Type the value anew.");
    codes += first->code;
    utf8.remove_prefix(first->bytes);
  }
  return codes;
}

bool isSpace(char32_t c) {
  return c == ' ' || (c >= '\t' && c <= '\r') || c == 0xA0 || (c >= 0x2000 && c <= 0x200A) || c == 0x202F ||
         c == 0x205F || c == 0x3000;
}
bool isDigit(char32_t c) {
  return c >= '0' && c <= '9';
}
bool isSeparator(char32_t c) {
  return c == '.' || c == ',';
}
bool isLetter(char32_t c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// The plainest way to type a mark, empty if the character is none.
std::string_view markText(char32_t c) {
  switch (c) {
    case U'\'':
    case U'`':
    case U'´':
    case U'‘':
    case U'’':
    case U'′':
      return "'";
    case U'"':
    case U'“':
    case U'”':
    case U'″':
      return "\"";
    case U'-':
    case U'‐':
    case U'‑':
    case U'‒':
    case U'–':
    case U'−':
      return "-";
    case U'/':
    case U'⁄':
      return "/";
    case U'°':
    case U'º':
      return "°";
    case U'²':
      return "2";
    case U'+':
      return "+";
    case U':':
      return ":";
    case U'%':
      return "%";
    case U'.':
      return ".";
    case U',':
      return ",";
    default:
      return {};
  }
}

struct Vulgar {
  char32_t code;
  int numerator, denominator;
};
constexpr std::array<Vulgar, 18> kVulgars = {{{U'½', 1, 2},
                                              {U'⅓', 1, 3},
                                              {U'⅔', 2, 3},
                                              {U'¼', 1, 4},
                                              {U'¾', 3, 4},
                                              {U'⅕', 1, 5},
                                              {U'⅖', 2, 5},
                                              {U'⅗', 3, 5},
                                              {U'⅘', 4, 5},
                                              {U'⅙', 1, 6},
                                              {U'⅚', 5, 6},
                                              {U'⅐', 1, 7},
                                              {U'⅛', 1, 8},
                                              {U'⅜', 3, 8},
                                              {U'⅝', 5, 8},
                                              {U'⅞', 7, 8},
                                              {U'⅑', 1, 9},
                                              {U'⅒', 1, 10}}};

std::string codePointName(char32_t code) {
  std::array<char, 16> name{};
  std::snprintf(name.data(), name.size(), "U+%04X", static_cast<unsigned>(code));
  return name.data();
}

/// The number was typed with the separator that `decimal` is not. `at` is the place of that separator in it.
tl::unexpected<Problem> refuseSeparator(const std::string& typed, std::size_t at, int character,
                                        char decimal) {
  const std::size_t after = typed.size() - at - 1;
  const bool alone = std::ranges::count_if(typed, [](char c) { return c == '.' || c == ','; }) == 1;
  std::string asDecimal = typed;
  asDecimal[at] = decimal;
  if (!alone) {
    return failAt(character, "Thousands are not set apart in “" + typed + "”.",
                  "Write the digits without a mark between thousands.");
  }
  if (after == 3 && at >= 1 && at <= 3 && typed[0] != '0') {
    std::string asThousands = typed;
    asThousands.erase(at, 1);
    return failAt(character, "“" + typed + "” can be read in two ways.",
                  "Write " + asThousands + " or " + asDecimal + ".");
  }
  return failAt(character,
                std::string("Decimals are written with a ") + (decimal == ',' ? "comma" : "point") + " here.",
                "Write " + asDecimal + ".");
}

/// `typed` holds digits and separators only, and at least one digit.
Result<Token> numberToken(const std::string& typed, int character, char decimal) {
  const auto placeOf = [&](std::size_t index) { return character + static_cast<int>(index); };
  if (typed.back() == '.' || typed.back() == ',') {
    return failAt(placeOf(typed.size() - 1), std::string("No digit follows the “") + typed.back() + "”.",
                  "Add the digits or delete the “" + std::string(1, typed.back()) + "”.");
  }
  const std::size_t other = typed.find(decimal == '.' ? ',' : '.');
  if (other != std::string::npos) return refuseSeparator(typed, other, placeOf(other), decimal);
  const std::size_t separator = typed.find(decimal);
  const std::size_t second = separator == std::string::npos ? separator : typed.find(decimal, separator + 1);
  if (second != std::string::npos) {
    return failAt(placeOf(second), "“" + typed + "” has more than one decimal separator.",
                  "Delete all but one.");
  }
  std::string plain = typed;
  std::ranges::replace(plain, ',', '.');
  Token token{Token::Kind::Number, typed, 0, separator == std::string::npos, false, character};
  std::from_chars(plain.data(), plain.data() + plain.size(), token.value);
  return token;
}

class Lexer {
 public:
  Lexer(std::u32string text, char decimal) : text_(std::move(text)), decimal_(decimal) {}

  Result<std::vector<Token>> run() {
    std::vector<Token> tokens;
    while (true) {
      const std::size_t before = at_;
      while (isSpace(peek())) ++at_;
      const bool spaced = at_ > before;
      Result<Token> token = one();
      if (!token) return tl::unexpected(token.error());
      token->spaced = spaced;
      tokens.push_back(*std::move(token));
      if (tokens.back().kind == Token::Kind::End) return tokens;
    }
  }

 private:
  /// Zero past the end; a zero inside the text is told apart by its place.
  char32_t peek(std::size_t ahead = 0) const { return at_ + ahead < text_.size() ? text_[at_ + ahead] : 0; }
  int character() const { return static_cast<int>(at_) + 1; }

  Result<Token> one() {
    if (at_ == text_.size()) return Token{Token::Kind::End, "", 0, true, false, character()};
    if (isDigit(peek()) || (isSeparator(peek()) && isDigit(peek(1)))) return number();
    if (isLetter(peek())) return word();
    const auto vulgar = std::ranges::find(kVulgars, peek(), &Vulgar::code);
    if (vulgar != kVulgars.end()) return fraction(*vulgar);
    return mark();
  }

  Result<Token> number() {
    const int start = character();
    std::string typed;
    for (; isDigit(peek()) || isSeparator(peek()); ++at_) typed += static_cast<char>(peek());
    const bool exponent = peek() == 'e' || peek() == 'E';
    if (exponent && (isDigit(peek(1)) || peek(1) == '+' || peek(1) == '-')) {
      return failAt(character(), "Powers of ten are not read here.", "Write the number out in full.");
    }
    return numberToken(typed, start, decimal_);
  }

  Token word() {
    Token token{Token::Kind::Word, "", 0, true, false, character()};
    for (; isLetter(peek()); ++at_) token.text += static_cast<char>(peek() | 0x20);
    if (peek() == '.') ++at_;
    return token;
  }

  Token fraction(const Vulgar& vulgar) {
    Token token{Token::Kind::Fraction, "", 0, true, false, character()};
    token.text = std::to_string(vulgar.numerator) + "/" + std::to_string(vulgar.denominator);
    token.value = static_cast<double>(vulgar.numerator) / vulgar.denominator;
    ++at_;
    return token;
  }

  Result<Token> mark() {
    Token token{Token::Kind::Mark, std::string(markText(peek())), 0, true, false, character()};
    if (token.text.empty()) {
      return failAt(character(), "The character " + codePointName(peek()) + " has no meaning here.",
                    "Delete it.");
    }
    ++at_;
    if (token.text == "'" && markText(peek()) == "'") {
      token.text = "\"";
      ++at_;
    }
    return token;
  }

  std::u32string text_;
  char decimal_;
  std::size_t at_ = 0;
};

}  // namespace

Result<std::vector<Token>> tokenize(std::string_view utf8, char decimal) {
  Result<std::u32string> text = decode(utf8);
  if (!text) return tl::unexpected(text.error());
  return Lexer(*std::move(text), decimal == ',' ? ',' : '.').run();
}

tl::unexpected<Problem> failAt(int character, std::string what, std::string next) {
  return fail(std::move(what), "character " + std::to_string(character), std::move(next));
}

}  // namespace baywright::detail
