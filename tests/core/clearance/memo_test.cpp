// SPDX-License-Identifier: Apache-2.0
#include "clearance/memo.h"

#include <gtest/gtest.h>

#include <string>

namespace baywright {
namespace {

TEST(Memo, MakesAnAnswerOnceForEqualInputs) {
  Memo<std::string, int> memo;
  int made = 0;
  const auto ask = [&](const std::string& text) {
    return memo.get(text, [&] {
      ++made;
      return static_cast<int>(text.size());
    });
  };
  EXPECT_EQ(ask("four"), 4);
  EXPECT_EQ(ask("four"), 4);
  EXPECT_EQ(made, 1);
  EXPECT_EQ(ask("five5"), 5);
  EXPECT_EQ(ask("four"), 4);
  EXPECT_EQ(made, 3);
}

}  // namespace
}  // namespace baywright
