// SPDX-License-Identifier: Apache-2.0
#include "drawing/page_furniture.h"

#include <array>

#include "drawing/marks.h"
#include "drawing/sheet_blocks.h"
#include "drawing/text_width.h"
#include "drawing/verdict_look.h"

namespace baywright::detail {
namespace {

constexpr double kInch = 25.4;

Text small(const Vec2& at, std::string text, TextAnchor anchor = TextAnchor::Left) {
  Text mark = textAt(Layer::Labels, at, std::move(text), anchor);
  mark.heightMm = kBodyText;
  return mark;
}

// Ticks of a ruler along x from 0, hanging down from y = 0: millimetres by tens, inches below them.
std::vector<std::vector<Vec2>> rulerPieces() {
  constexpr double kMillimetreLine = -2.5;
  constexpr double kInchLine = -5.5;
  std::vector<std::vector<Vec2>> pieces;
  pieces.push_back({{0, kMillimetreLine}, {100, kMillimetreLine}});
  for (int i = 0; i <= 10; ++i) {
    const double tick = i % 10 == 0 ? 0.0 : i % 5 == 0 ? kMillimetreLine + 1.8 : kMillimetreLine + 1.2;
    pieces.push_back({{10.0 * i, kMillimetreLine}, {10.0 * i, tick}});
  }
  pieces.push_back({{0, kInchLine}, {4 * kInch, kInchLine}});
  for (int i = 0; i <= 8; ++i) {
    const double tick = i % 8 == 0 ? kInchLine + 2.5 : i % 2 == 0 ? kInchLine + 1.8 : kInchLine + 1.2;
    pieces.push_back({{kInch / 2 * i, kInchLine}, {kInch / 2 * i, tick}});
  }
  return pieces;
}

// The same ruler down the left border: (x, y) to (-y, -x).
std::vector<std::vector<Vec2>> turnedDown(std::vector<std::vector<Vec2>> pieces) {
  for (auto& piece : pieces) {
    for (Vec2& p : piece) p = Vec2(-p.y(), -p.x());
  }
  return pieces;
}

std::string countsText(const Assessment& assessment) {
  std::string text;
  for (const Verdict verdict : {Verdict::Blocked, Verdict::Tight, Verdict::Unknown, Verdict::Clear}) {
    const int count = assessment.count(verdict);
    if (count == 0) continue;
    text += (text.empty() ? "" : ", ") + std::to_string(count) + " " + std::string(wordOf(verdict));
  }
  return text.empty() ? "none" : text;
}

// A line to write on, with its name under it.
void appendField(Linework& marks, const Vec2& from, double width, std::string name) {
  marks.paths.push_back(polyline(Layer::Labels, {from, from + Vec2(width, 0)}));
  marks.texts.push_back(small(from - Vec2(0, kBodyText + 1), std::move(name)));
}

}  // namespace

Linework borderMarks(const PageBox& frame) {
  Linework marks;
  marks.paths.push_back(rectangle(Layer::Labels, frame));
  marks.paths.back().weight = LineWeight::Thick;
  return marks;
}

Linework rulerMarks(const PageBox& box) {
  constexpr double kTextAt = 4 * kInch + 3;
  Linework ruler;
  ruler.paths = {strokes(Layer::Labels, rulerPieces()), strokes(Layer::Labels, turnedDown(rulerPieces()))};
  ruler.texts = {small({11.2, -2.2}, "mm"), small({13.9, -5.2}, "in")};
  double baseline = -kBodyText - 1;
  const std::string advice =
      "Must measure 100 mm and 4 in, across and down; else print again at actual size (100 %) before you "
      "take a length "
      "from this sheet.";
  for (std::string& line : wrapText(advice, kBodyText, box.sizes().x() - kTextAt - 2, FontFace::Regular)) {
    ruler.texts.push_back(small({kTextAt, baseline}, std::move(line)));
    baseline -= kLineStep;
  }
  return placed(ruler, {1, {box.min().x(), box.max().y()}});
}

Linework signOffMarks(const Job& job, const Assessment& assessment, const PageBox& box) {
  constexpr double kPad = 2;
  Linework marks;
  Path outline = rectangle(Layer::Labels, box);
  outline.weight = LineWeight::Thick;
  marks.paths.push_back(std::move(outline));

  const double left = box.min().x() + kPad;
  const double width = box.sizes().x() - 2 * kPad;
  const std::string agreed = "We have seen this plan and its findings (" + countsText(assessment) +
                             ") and agree to \"" + job.option().name + "\" with everything placed as drawn.";
  double baseline = box.max().y() - kPad - kLabelText;
  Text heading = textAt(Layer::Labels, {left, baseline}, "Sign-off");
  heading.bold = true;
  marks.texts.push_back(std::move(heading));
  for (std::string& line : wrapText(agreed, kBodyText, width, FontFace::Regular)) {
    baseline -= kLineStep;
    marks.texts.push_back(small({left, baseline}, std::move(line)));
  }
  const std::array<std::pair<const char*, double>, 3> fields = {
      {{"name", 0.38}, {"signature", 0.38}, {"date", 0.24}}};
  double lineY = box.min().y() + kPad + kBodyText + 1;
  for (const char* who : {"Fitter", "Customer"}) {
    double x = left;
    for (const auto& [name, share] : fields) {
      appendField(marks, {x, lineY}, share * width - kPad, std::string(who) + ", " + name);
      x += share * width;
    }
    lineY += 9;
  }
  return marks;
}

}  // namespace baywright::detail
