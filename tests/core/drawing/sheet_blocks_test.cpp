// SPDX-License-Identifier: Apache-2.0
#include "drawing/sheet_blocks.h"

#include <gtest/gtest.h>

#include "drawing/text_box.h"
#include "drawing/views.h"
#include "drawn_job.h"

namespace baywright::detail {
namespace {

using namespace baywright::testing;

constexpr double kWidth = 172;

std::vector<std::string> textsOf(const std::vector<Block>& blocks) {
  std::vector<std::string> texts;
  for (const Block& block : blocks) {
    for (const Text& text : block.marks.texts) texts.push_back(text.text);
  }
  return texts;
}

bool has(const std::vector<std::string>& texts, std::string_view wanted) {
  return std::any_of(texts.begin(), texts.end(),
                     [&](const std::string& text) { return text.find(wanted) != std::string::npos; });
}

void expectInside(const std::vector<Block>& blocks) {
  for (const Block& block : blocks) {
    const auto ink = inkExtent(block.marks, 1);
    if (!ink) continue;
    EXPECT_GE(ink->min().x(), -1e-9);
    EXPECT_LE(ink->max().x(), kWidth + 1e-9);
    EXPECT_LE(ink->max().y(), 1e-9);
    EXPECT_GE(ink->min().y(), -block.heightMm - 1e-9);
  }
}

TEST(FindingBlocks, TellEachFindingInItsOrder) {
  const Job job = smallGarage();
  const Assessment assessment = handMadeAssessment(job);
  const auto blocks = findingBlocks(job, assessment, kWidth);
  expectInside(blocks);
  const auto texts = textsOf(blocks);
  for (const Finding& finding : assessment.findings)
    EXPECT_TRUE(has(texts, finding.sentence.substr(0, 12))) << finding.sentence;
  EXPECT_TRUE(has(texts, "blocked"));
  EXPECT_TRUE(has(texts, "−0.064 m ± 0.010 m"));
  EXPECT_TRUE(has(texts, "—"));  // no margin where something is unknown
  const auto first = std::find(texts.begin(), texts.end(), "blocked");
  const auto last = std::find(texts.begin(), texts.end(), "clear");
  EXPECT_LT(first, last);
}

TEST(FindingBlocks, WrapLongSentences) {
  const Job job = smallGarage();
  Assessment assessment = handMadeAssessment(job);
  assessment.findings.resize(1);
  const double height = findingBlocks(job, assessment, kWidth)[2].heightMm;
  assessment.findings[0].sentence =
      std::string(40, 'x') + " " + std::string(60, 'y') + " " + std::string(60, 'z') + ".";
  const auto blocks = findingBlocks(job, assessment, kWidth);
  expectInside(blocks);
  EXPECT_GT(blocks[2].heightMm, height);
}

TEST(FindingBlocks, SayWhenNothingWasChecked) {
  EXPECT_TRUE(has(textsOf(findingBlocks(newJob(), Assessment{}, kWidth)), "Nothing has been checked yet"));
}

TEST(CautionBlocks, HoldEachCaution) {
  const auto blocks = cautionBlocks(slopedWorkshop(), kWidth);
  expectInside(blocks);
  EXPECT_TRUE(has(textsOf(blocks), "not a guarantee"));
}

TEST(LegendBlocks, NameOnlyWhatAppears) {
  Linework shown;
  EXPECT_TRUE(legendBlocks(shown, kWidth).empty());
  Path wall;
  wall.layer = Layer::Walls;
  shown.paths.push_back(wall);
  auto texts = textsOf(legendBlocks(shown, kWidth));
  EXPECT_TRUE(has(texts, "Walls, cut"));
  EXPECT_FALSE(has(texts, "blocked"));
  EXPECT_FALSE(has(texts, "projector"));

  const Job job = smallGarage();
  shown = viewLinework(ViewKind::Plan, job, handMadeAssessment(job), {});
  const auto blocks = legendBlocks(shown, kWidth);
  expectInside(blocks);
  texts = textsOf(blocks);
  EXPECT_TRUE(has(texts, "blocked: diagonal lines"));
  EXPECT_TRUE(has(texts, "tight: dots"));
  EXPECT_FALSE(has(texts, "crossed lines"));
  EXPECT_TRUE(has(texts, "Light from the projector"));
}

}  // namespace
}  // namespace baywright::detail
