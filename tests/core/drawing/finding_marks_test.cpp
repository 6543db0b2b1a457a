// SPDX-License-Identifier: Apache-2.0
#include "drawing/finding_marks.h"

#include <gtest/gtest.h>

#include "drawn_job.h"

namespace baywright::detail {
namespace {

using namespace baywright::testing;

class FindingMarks : public ::testing::Test {
 protected:
  Linework drawn() {
    Board board(options.metresPerMm);
    drawTightest(board, {job, assessment, options, outlines}, [](const Vec3& p) { return flat(p); });
    return std::move(board).take();
  }

  Job job = smallGarage();
  Assessment assessment = handMadeAssessment(job);
  ViewOptions options;
  SwingOutlines outlines;
};

TEST_F(FindingMarks, ShowTheWorstThreeThatAreNotClearAndHavePoints) {
  const auto shown = shownFindings(assessment, options);
  ASSERT_EQ(shown.size(), 3u);
  EXPECT_EQ(shown[0]->key, "a");
  EXPECT_EQ(shown[1]->key, "b");
  EXPECT_EQ(shown[2]->key, "d");  // c has no points
}

TEST_F(FindingMarks, ShowTheNamedOneAloneEvenWhenClear) {
  options.findingKey = "f";
  ASSERT_EQ(shownFindings(assessment, options).size(), 1u);
  EXPECT_EQ(shownFindings(assessment, options)[0]->key, "f");
  options.findingKey = "c";
  EXPECT_TRUE(shownFindings(assessment, options).empty());
  options.findingKey = "nothing";
  EXPECT_TRUE(shownFindings(assessment, options).empty());
}

TEST_F(FindingMarks, AreDimensionsWithArrowsAndTheMargin) {
  options.findingKey = "a";
  const Linework marks = drawn();
  ASSERT_EQ(marks.dimensions.size(), 1u);
  const DimensionMark& mark = marks.dimensions.front();
  EXPECT_TRUE(mark.arrows);
  EXPECT_EQ(mark.verdict, Verdict::Blocked);
  EXPECT_EQ(mark.text, "−0.064 m");
  EXPECT_EQ(mark.id, job.golfers.front().id);
  EXPECT_EQ(mark.layer, Layer::Tightest);
  EXPECT_NEAR((mark.to - mark.from).norm(), 0.1, 1e-12);
}

TEST_F(FindingMarks, AreASymbolWhereBothPointsFallTogether) {
  options.findingKey = "b";  // one above the other
  const Linework marks = drawn();
  EXPECT_TRUE(marks.dimensions.empty());
  ASSERT_EQ(marks.symbols.size(), 1u);
  EXPECT_EQ(marks.symbols.front().kind, SymbolKind::Tilde);
  ASSERT_EQ(marks.texts.size(), 1u);
  EXPECT_EQ(marks.texts.front().text, "+0.010 m");
}

}  // namespace
}  // namespace baywright::detail
