// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "drawing/marks.h"
#include "drawing/sheet_blocks.h"
#include "drawing/text_width.h"
#include "drawing/verdict_look.h"

namespace baywright::detail {
namespace {

const std::string kSection = "Findings, worst first";

// Columns from left to right: symbol, word, sentence, margin.
constexpr double kWordAt = 6;
constexpr double kSentenceAt = 22;
constexpr double kMarginWidth = 36;
constexpr double kGutter = 4;
constexpr double kSymbol = 2.6;

double marginAt(double widthMm) {
  return widthMm - kMarginWidth;
}

Text cell(double x, double baseline, std::string text) {
  Text mark = textAt(Layer::Labels, {x, baseline}, std::move(text));
  mark.heightMm = kBodyText;
  return mark;
}

Path rule(double y, double widthMm) {
  return polyline(Layer::Labels, {{0, y}, {widthMm, y}});
}

Block headerRow(double widthMm) {
  Block row;
  row.section = kSection;
  row.keepWithNext = true;
  row.heightMm = kBodyText + 2 * kRowPad;
  const double baseline = -kRowPad - kBodyText;
  row.marks.texts = {cell(0, baseline, "Verdict"), cell(kSentenceAt, baseline, "Finding"),
                     cell(marginAt(widthMm), baseline, "Margin, 95 %")};
  for (Text& text : row.marks.texts) text.bold = true;
  row.marks.paths.push_back(rule(-row.heightMm, widthMm));
  row.marks.paths.back().weight = LineWeight::Thick;
  return row;
}

Block findingRow(const Finding& finding, const UnitSystem& units, double widthMm) {
  const auto sentence =
      wrapText(finding.sentence, kBodyText, marginAt(widthMm) - kGutter - kSentenceAt, FontFace::Regular);
  const auto margin = wrapText(marginText(finding, units), kBodyText, kMarginWidth, FontFace::Regular);
  Block row;
  row.section = kSection;
  const double lines = static_cast<double>(std::max(sentence.size(), margin.size()));
  row.heightMm = 2 * kRowPad + kBodyText + (lines - 1) * kLineStep;

  const double first = -kRowPad - kBodyText;
  Symbol symbol;
  symbol.layer = Layer::Labels;
  symbol.kind = symbolOf(finding.verdict);
  symbol.at = {kSymbol / 2 + 0.5, first + kBodyText / 2};
  symbol.sizeMm = kSymbol;
  symbol.verdict = finding.verdict;
  row.marks.symbols.push_back(symbol);

  row.marks.texts.push_back(cell(kWordAt, first, std::string(wordOf(finding.verdict))));
  row.marks.texts.back().bold = finding.verdict != Verdict::Clear;
  for (std::size_t i = 0; i < sentence.size(); ++i) {
    row.marks.texts.push_back(cell(kSentenceAt, first - static_cast<double>(i) * kLineStep, sentence[i]));
  }
  for (std::size_t i = 0; i < margin.size(); ++i) {
    row.marks.texts.push_back(cell(marginAt(widthMm), first - static_cast<double>(i) * kLineStep, margin[i]));
  }
  row.marks.paths.push_back(rule(-row.heightMm, widthMm));
  return row;
}

}  // namespace

std::vector<Block> findingBlocks(const Job& job, const Assessment& assessment, double widthMm) {
  Block heading = headingBlock(kSection, widthMm);
  heading.section = kSection;
  std::vector<Block> blocks{std::move(heading)};
  if (assessment.findings.empty()) {
    blocks.push_back(
        paragraphBlock("Nothing has been checked yet: the job has no room or no people.", widthMm));
    return blocks;
  }
  blocks.push_back(headerRow(widthMm));
  for (const Finding& finding : assessment.findings)
    blocks.push_back(findingRow(finding, job.units, widthMm));
  blocks.push_back(spaceBlock(kSectionGap));
  return blocks;
}

}  // namespace baywright::detail
