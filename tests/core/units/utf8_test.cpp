// SPDX-License-Identifier: Apache-2.0
#include "units/utf8.h"

#include <gtest/gtest.h>

#include <string>
#include <string_view>

namespace baywright::detail {
namespace {

using namespace std::string_view_literals;

/// The code point and its bytes, or zeros for what is refused.
std::pair<char32_t, std::size_t> first(std::string_view utf8) {
  const auto found = firstCodePoint(utf8);
  return found ? std::pair{found->code, found->bytes} : std::pair{char32_t{0xFFFFFFFF}, std::size_t{0}};
}
const auto kRefused = first("\xFF"sv);

// The first and last code point of each length: Unicode 15.0, table 3-7.
TEST(Utf8, ReadsTheBoundsOfEachLength) {
  EXPECT_EQ(first("\0"sv), std::pair(U'\0', 1ul));
  EXPECT_EQ(first("\x7Fz"sv), std::pair(U'\x7F', 1ul));
  EXPECT_EQ(first("\xC2\x80"sv), std::pair(U'\x80', 2ul));
  EXPECT_EQ(first("\xDF\xBFz"sv), std::pair(U'\x7FF', 2ul));
  EXPECT_EQ(first("\xE0\xA0\x80"sv), std::pair(U'\x800', 3ul));
  EXPECT_EQ(first("\xED\x9F\xBF"sv), std::pair(U'\xD7FF', 3ul));
  EXPECT_EQ(first("\xEE\x80\x80"sv), std::pair(U'\xE000', 3ul));
  EXPECT_EQ(first("\xEF\xBF\xBF"sv), std::pair(U'\xFFFF', 3ul));
  EXPECT_EQ(first("\xF0\x90\x80\x80"sv), std::pair(U'\x10000', 4ul));
  EXPECT_EQ(first("\xF4\x8F\xBF\xBF"sv), std::pair(U'\x10FFFF', 4ul));
}

TEST(Utf8, RefusesWhatIsNotWellFormed) {
  EXPECT_EQ(kRefused.second, 0u);
  for (std::string_view bad : {
           "\x80"sv,
           "\xBF"sv,  // a tail without a head
           "\xC0\x80"sv,
           "\xC1\xBF"sv,  // overlong
           "\xE0\x9F\xBF"sv,
           "\xF0\x8F\xBF\xBF"sv,  // overlong
           "\xED\xA0\x80"sv,
           "\xED\xBF\xBF"sv,  // surrogates
           "\xF4\x90\x80\x80"sv,
           "\xF5\x80\x80\x80"sv,  // beyond the last code point
           "\xC2"sv,
           "\xE2\x82"sv,
           "\xF0\x90\x80"sv,  // cut short
           "\xC2z"sv,
           "\xE2\x82z"sv,
           "\xF0\x90\x80z"sv,  // another head too early
           "\xFE"sv,
           "\xFF\xFF"sv,
       }) {
    EXPECT_EQ(first(bad), kRefused) << testing::PrintToString(std::string(bad));
  }
}

TEST(Utf8, WritesWhatItReads) {
  for (const char32_t code : {U'\x1', U'\x7F', U'\x80', U'\x7FF', U'\x800', U'\xD7FF', U'\xE000', U'\xFFFF',
                              U'\x10000', U'\x10FFFF'}) {
    std::string text;
    appendUtf8(text, code);
    EXPECT_EQ(first(text), std::pair(code, text.size()));
    EXPECT_TRUE(isUtf8(text + "z" + text));
    EXPECT_FALSE(isUtf8(text + "\xFF"));
  }
}

}  // namespace
}  // namespace baywright::detail
