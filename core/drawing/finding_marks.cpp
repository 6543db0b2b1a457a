// SPDX-License-Identifier: Apache-2.0
#include "drawing/finding_marks.h"

#include <array>

#include "drawing/marks.h"
#include "drawing/text_width.h"
#include "drawing/verdict_look.h"
#include "units/length_text.h"

namespace baywright::detail {
namespace {

// Closer than this on paper, two points cannot carry a dimension between them.
constexpr double kApart_mm = 1.0;

std::string shortMargin(const Finding& finding, const UnitSystem& units) {
  if (finding.margin && finding.unit == MarginUnit::Length)
    return formatLengthSigned(finding.margin->value, units);
  return marginText(finding, units);
}

Id firstSubject(const Finding& finding) {
  return finding.subjects.empty() ? Id{} : finding.subjects.front();
}

void drawTogether(Board& board, const Finding& finding, const Vec2& at, const std::string& margin) {
  Symbol symbol;
  symbol.layer = Layer::Tightest;
  symbol.kind = symbolOf(finding.verdict);
  symbol.at = at;
  symbol.sizeMm = 4;
  symbol.verdict = finding.verdict;
  symbol.id = firstSubject(finding);
  board.add(symbol);

  Text text = textAt(Layer::Tightest, at, margin);
  text.verdict = finding.verdict;
  text.id = symbol.id;
  text.bold = true;
  text.onGround = true;
  const double aside = board.mm(3.5);
  const double down = board.mm(text.heightMm / 2);
  std::vector<Text> candidates;
  for (const double rows : {0.0, 1.0, -1.0, 2.0, -2.0}) {
    const double y = at.y() - down + rows * board.mm(2 * text.heightMm);
    text.at = {at.x() + aside, y};
    text.anchor = TextAnchor::Left;
    candidates.push_back(text);
    text.at = {at.x() - aside, y};
    text.anchor = TextAnchor::Right;
    candidates.push_back(text);
  }
  board.addWhereFree(candidates);
}

}  // namespace

std::vector<const Finding*> shownFindings(const Assessment& assessment, const ViewOptions& options) {
  std::vector<const Finding*> shown;
  if (!options.findingKey.empty()) {
    const Finding* named = assessment.find(options.findingKey);
    if (named && named->points) shown.push_back(named);
    return shown;
  }
  for (const Finding& finding : assessment.findings) {
    if (finding.verdict == Verdict::Clear || !finding.points) continue;
    shown.push_back(&finding);
    if (shown.size() == kMostShown) break;
  }
  return shown;
}

void drawTightest(Board& board, const ViewInput& input,
                  const std::function<Vec2(const Vec3&)>& viewFromWorld) {
  for (const Finding* finding : shownFindings(input.assessment, input.options)) {
    const Vec2 from = viewFromWorld(finding->points->first);
    const Vec2 to = viewFromWorld(finding->points->second);
    const std::string margin = shortMargin(*finding, input.job.units);
    if ((to - from).norm() < board.mm(kApart_mm)) {
      drawTogether(board, *finding, (from + to) / 2, margin);
      continue;
    }
    DimensionMark mark;
    mark.layer = Layer::Tightest;
    mark.from = from;
    mark.to = to;
    mark.text = margin;
    mark.arrows = true;
    mark.verdict = finding->verdict;
    mark.id = firstSubject(*finding);
    DimensionMark turned = mark;
    std::swap(turned.from, turned.to);
    board.addWhereFree(std::array{mark, turned});
  }
}

}  // namespace baywright::detail
