// SPDX-License-Identifier: Apache-2.0
#include "drawing/sheet_blocks.h"

#include "drawing/marks.h"
#include "drawing/text_width.h"

namespace baywright::detail {
namespace {

// Between a heading and what stands under it.
constexpr double kUnderHeading = 1.5;

}  // namespace

Block headingBlock(const std::string& text, double widthMm) {
  Block block;
  block.keepWithNext = true;
  block.heightMm = kHeadingText + kUnderHeading;
  Text mark = textAt(Layer::Labels, {0, -kHeadingText}, fitText(text, kHeadingText, widthMm, FontFace::Bold));
  mark.heightMm = kHeadingText;
  mark.bold = true;
  block.marks.texts.push_back(std::move(mark));
  return block;
}

Block paragraphBlock(const std::string& text, double widthMm) {
  Block block;
  double baseline = -kRowPad - kBodyText;
  for (std::string& line : wrapText(text, kBodyText, widthMm, FontFace::Regular)) {
    Text mark = textAt(Layer::Labels, {0, baseline}, std::move(line));
    mark.heightMm = kBodyText;
    block.marks.texts.push_back(std::move(mark));
    baseline -= kLineStep;
  }
  block.heightMm = -(baseline + kLineStep) + kRowPad;
  return block;
}

Block spaceBlock(double heightMm) {
  Block block;
  block.heightMm = heightMm;
  return block;
}

}  // namespace baywright::detail
