// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <set>

#include "drawing/hatch.h"
#include "drawing/marks.h"
#include "drawing/sheet_blocks.h"
#include "drawing/text_width.h"
#include "drawing/verdict_look.h"

namespace baywright::detail {
namespace {

constexpr double kSample = 12;  // width of a line or a patch
constexpr double kRowHeight = 4.4;
constexpr double kTextAt = 15;
constexpr double kPatchHeight = 3.4;

struct Entry {
  Linework sample;  // in a box from (0, 0) to (kSample, -kRowHeight)
  std::string text;
};

// These explain themselves or carry their own words.
bool needsEntry(Layer layer) {
  return layer != Layer::Floor && layer != Layer::Dimensions && layer != Layer::Labels;
}

PageBox patchBox() {
  const double pad = (kRowHeight - kPatchHeight) / 2;
  return {Vec2(0, pad - kRowHeight), Vec2(kSample, -pad)};
}

// A patch for what is an area in the drawing, else a piece of line.
Entry layerEntry(const LayerStyle& style) {
  Entry entry;
  entry.text = style.meaning;
  if (style.layer == Layer::Swing || style.layer == Layer::Beam) {
    entry.sample.paths = {rectangle(style.layer, patchBox())};
    entry.sample.paths.front().fill = Fill::Soft;
  } else {
    entry.sample.paths = {polyline(style.layer, {{0, -kRowHeight / 2}, {kSample, -kRowHeight / 2}})};
  }
  return entry;
}

Entry verdictEntry(Verdict verdict) {
  Entry entry;
  entry.text = "A zone that is " + std::string(wordOf(verdict)) + ": " + std::string(hatchNameOf(verdict));
  Path patch = rectangle(Layer::Swing, patchBox());
  patch.fill = Fill::Soft;
  patch.verdict = verdict;
  entry.sample.paths.push_back(patch);
  if (auto hatch = hatchOf(patch, kHatchSpacingMm / 2)) entry.sample.paths.push_back(std::move(*hatch));
  return entry;
}

std::vector<Entry> entriesFor(const Linework& shown) {
  std::set<Layer> layers;
  std::set<Verdict> verdicts;
  for (const Path& path : shown.paths) {
    layers.insert(path.layer);
    if (path.verdict && path.fill == Fill::Soft) verdicts.insert(*path.verdict);
  }
  for (const Symbol& symbol : shown.symbols) layers.insert(symbol.layer);
  for (const DimensionMark& mark : shown.dimensions) layers.insert(mark.layer);

  std::vector<Entry> entries;
  for (const LayerStyle& style : layerStyles()) {
    if (needsEntry(style.layer) && layers.contains(style.layer)) entries.push_back(layerEntry(style));
  }
  for (const Verdict verdict : {Verdict::Clear, Verdict::Tight, Verdict::Blocked, Verdict::Unknown}) {
    if (verdicts.contains(verdict)) entries.push_back(verdictEntry(verdict));
  }
  return entries;
}

}  // namespace

std::vector<Block> legendBlocks(const Linework& shown, double widthMm) {
  const auto entries = entriesFor(shown);
  if (entries.empty()) return {};
  constexpr std::size_t kColumns = 2;
  const double columnWidth = widthMm / kColumns;
  Block block;
  const std::size_t rows = (entries.size() + kColumns - 1) / kColumns;
  block.heightMm = static_cast<double>(rows) * kRowHeight + kSectionGap;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const Vec2 corner(static_cast<double>(i / rows) * columnWidth,
                      -static_cast<double>(i % rows) * kRowHeight);
    block.marks.append(placed(entries[i].sample, {1, corner}));
    Text text = textAt(Layer::Labels, corner + Vec2(kTextAt, -(kRowHeight + kBodyText) / 2),
                       fitText(entries[i].text, kBodyText, columnWidth - kTextAt - 2, FontFace::Regular));
    text.heightMm = kBodyText;
    block.marks.texts.push_back(std::move(text));
  }
  return {headingBlock("Legend", widthMm), std::move(block)};
}

}  // namespace baywright::detail
