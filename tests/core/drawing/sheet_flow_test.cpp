// SPDX-License-Identifier: Apache-2.0
#include "drawing/sheet_flow.h"

#include <gtest/gtest.h>

#include "drawing/marks.h"

namespace baywright::detail {
namespace {

Block row(const std::string& text, double height) {
  Block block;
  block.heightMm = height;
  block.section = "List";
  block.marks.texts.push_back(textAt(Layer::Labels, {0, -height}, text));
  return block;
}

PageBox box(double bottom, double top) {
  return {Vec2(10, bottom), Vec2(100, top)};
}

std::vector<PageBox> laterPages(std::size_t) {
  return {box(0, 100)};
}

std::vector<std::string> textsOf(const Linework& page) {
  std::vector<std::string> texts;
  for (const Text& text : page.texts) texts.push_back(text.text);
  return texts;
}

TEST(Flow, StacksBlocksFromTheTopDown) {
  const auto pages = flow({row("a", 10), row("b", 20)}, {{0, box(0, 100)}}, laterPages);
  ASSERT_EQ(pages.size(), 1u);
  EXPECT_EQ(pages[0].texts[0].at, Vec2(10, 90));
  EXPECT_EQ(pages[0].texts[1].at, Vec2(10, 70));
}

TEST(Flow, GoesOnInTheNextBoxUnderARepeatedHeading) {
  const auto pages = flow({row("a", 10), row("b", 20)}, {{0, box(0, 15)}}, laterPages);
  ASSERT_EQ(pages.size(), 2u);
  EXPECT_EQ(textsOf(pages[0]), std::vector<std::string>{"a"});
  EXPECT_EQ(textsOf(pages[1]), (std::vector<std::string>{"List, continued", "b"}));
}

TEST(Flow, KeepsAHeadingWithWhatFollows) {
  Block heading = row("heading", 5);
  heading.keepWithNext = true;
  const auto pages = flow({row("a", 10), heading, row("b", 20)}, {{0, box(0, 30)}}, laterPages);
  EXPECT_EQ(textsOf(pages[0]), std::vector<std::string>{"a"});
  EXPECT_EQ(textsOf(pages[1]).back(), "b");
}

TEST(Flow, LosesNoBlockThatIsTooHigh) {
  const auto pages = flow({row("a", 500), row("b", 10)}, {{0, box(0, 50)}}, laterPages);
  std::size_t count = 0;
  for (const Linework& page : pages) count += page.texts.size();
  EXPECT_GE(count, 2u);
}

TEST(Flow, StartsOnThePagesItIsGivenWhereThereIsNoBox) {
  const auto pages = flow({row("a", 10)}, {}, laterPages);
  ASSERT_EQ(pages.size(), 1u);
  EXPECT_EQ(textsOf(pages[0]), std::vector<std::string>{"a"});
}

TEST(Flow, FillsTheColumnsOfAPageInTurn) {
  const auto columns = [](std::size_t) {
    return std::vector<PageBox>{box(0, 20), {Vec2(200, 0), Vec2(300, 20)}};
  };
  const auto pages = flow({row("a", 15), row("b", 10), row("c", 15)}, {}, columns);
  ASSERT_EQ(pages.size(), 2u);
  EXPECT_GT(pages[0].texts.back().at.x(), 150);
}

}  // namespace
}  // namespace baywright::detail
