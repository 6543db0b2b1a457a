// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_text.h"

#include <gtest/gtest.h>

namespace baywright::detail {
namespace {

TEST(DxfText, ReadsCodePagesEscapesAndUtf8) {
  EXPECT_EQ(decoded("T\xFCr", {1252}), "Tür");
  EXPECT_EQ(decoded("\xD1\xF2\xE5\xED\xE0", {1251}), "Стена");
  EXPECT_EQ(decoded("T\xC3\xBCr", {1252}), "Tür");  // UTF-8 in spite of the page
  EXPECT_EQ(decoded("T\\U+00FCr", {1252}), "Tür");
  EXPECT_EQ(decoded("\\U+8F66\\U+5E93", {936}), "车库");
  EXPECT_EQ(decoded("T\xFCr", {936}), "T\uFFFDr");  // a page that is not known
}

TEST(DxfText, KeepsWhatIsNoEscape) {
  EXPECT_EQ(decoded("\\U+00G0", {1252}), "\\U+00G0");
  EXPECT_EQ(decoded("C:\\U", {1252}), "C:\\U");
  EXPECT_EQ(decoded("\\U+D800", {1252}), "\uFFFD");  // half a pair is no character
  EXPECT_EQ(decoded("a\tb", {1252}), "a b");
}

TEST(DxfText, ReadsTheHeadersPage) {
  EXPECT_EQ(codePageFrom("ANSI_1250"), 1250);
  EXPECT_EQ(codePageFrom(" ansi_1251"), 1251);
  EXPECT_EQ(codePageFrom("dos850"), 850);
  EXPECT_EQ(codePageFrom(""), 1252);
}

TEST(DxfText, TakesPercentCodes) {
  EXPECT_EQ(plainText("%%u2.5%%U %%65 %%065 %%% 50%"), "2.5 %%65 A % 50%");
  EXPECT_EQ(plainText("%%"), "%%");
}

TEST(DxfText, TakesFormattingOutOfMtext) {
  EXPECT_EQ(plainMtext("{\\C1;\\Lred\\l} \\~x\\S3^4;y"), "red  x3/4y");
  EXPECT_EQ(plainMtext("\\A1"), "");  // cut short
  EXPECT_EQ(plainMtext("end\\"), "end\\");
}

}  // namespace
}  // namespace baywright::detail
