// SPDX-License-Identifier: Apache-2.0
#include "drawing/board.h"

#include <gtest/gtest.h>

#include <array>

#include "drawing/marks.h"

namespace baywright::detail {
namespace {

Text at(double x, double y) {
  return textAt(Layer::Labels, {x, y}, "label");
}

TEST(Board, PutsATextInTheFirstFreePlace) {
  Board board(1);
  board.add(at(0, 0));
  const auto place = board.addWhereFree(std::array{at(1, 0), at(0, 1), at(0, 20), at(0, 40)});
  ASSERT_TRUE(place);
  EXPECT_EQ(place->at, Vec2(0, 20));
  EXPECT_EQ(board.marks().texts.size(), 2u);
}

TEST(Board, LeavesATextOutThatHasNoPlace) {
  Board board(1);
  board.add(at(0, 0));
  EXPECT_FALSE(board.addWhereFree(std::array{at(1, 0)}));
  EXPECT_EQ(board.marks().texts.size(), 1u);
}

DimensionMark dimension(double offset) {
  DimensionMark mark;
  mark.to = {50, 0};
  mark.offset = offset;
  mark.text = "50.000 m";
  return mark;
}

TEST(Board, NeverLeavesADimensionOut) {
  Board board(1);
  board.add(at(22, 1));  // where the text of a dimension on the line would be
  board.addWhereFree(std::array{dimension(0), dimension(12)});
  EXPECT_EQ(board.marks().dimensions.back().offset, 12);
  board.addWhereFree(std::array{dimension(0), dimension(12)});
  EXPECT_EQ(board.marks().dimensions.back().offset, 0);
  board.addWhereFree(std::span<const DimensionMark>());
  EXPECT_EQ(board.marks().dimensions.size(), 2u);
}

TEST(Board, KeepsTextsClearOfDimensions) {
  Board board(1);
  board.add(dimension(0));
  EXPECT_FALSE(board.addWhereFree(std::array{at(22, 1)}));
}

TEST(Board, HatchesAnAreaByItsVerdict) {
  Board board(1);
  Path area = areaOf(Layer::Swing, {{{0, 0}, {50, 0}, {50, 50}, {0, 50}}}, Fill::None);
  board.addHatched(area);
  EXPECT_EQ(board.marks().paths.size(), 1u);
  area.verdict = Verdict::Blocked;
  board.addHatched(area);
  ASSERT_EQ(board.marks().paths.size(), 3u);
  EXPECT_EQ(board.marks().paths[1].fill, Fill::Soft);
  EXPECT_FALSE(board.marks().paths[2].closed);
}

TEST(Board, CountsMillimetresInTheDrawingsUnit) {
  EXPECT_DOUBLE_EQ(Board(0.05).mm(20), 1.0);
}

}  // namespace
}  // namespace baywright::detail
