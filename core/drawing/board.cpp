// SPDX-License-Identifier: Apache-2.0
#include "drawing/board.h"

#include <algorithm>

#include "drawing/hatch.h"
#include "drawing/mark_shapes.h"
#include "drawing/text_box.h"

namespace baywright::detail {
namespace {

// The text of a dimension as it will stand; nullopt when it has none.
std::optional<Eigen::AlignedBox2d> textBoxOf(const DimensionMark& dimension, double unitsPerMm) {
  const Linework shape = shapeOf(dimension, unitsPerMm);
  if (shape.texts.empty()) return std::nullopt;
  return boxOf(shape.texts.front(), unitsPerMm);
}

}  // namespace

void Board::add(Text text) {
  taken_.push_back(boxOf(text, unitsPerMm_));
  marks_.texts.push_back(std::move(text));
}

void Board::add(DimensionMark dimension) {
  if (const auto box = textBoxOf(dimension, unitsPerMm_)) taken_.push_back(*box);
  marks_.dimensions.push_back(std::move(dimension));
}

void Board::addHatched(Path area) {
  area.fill = Fill::Soft;
  auto hatch = hatchOf(area, mm(kHatchSpacingMm));
  add(std::move(area));
  if (hatch) add(std::move(*hatch));
}

std::optional<Text> Board::addWhereFree(std::span<const Text> candidates) {
  for (const Text& text : candidates) {
    if (!isFree(boxOf(text, unitsPerMm_))) continue;
    add(text);
    return text;
  }
  return std::nullopt;
}

void Board::addWhereFree(std::span<const DimensionMark> candidates) {
  if (candidates.empty()) return;
  const auto free = std::find_if(candidates.begin(), candidates.end(), [&](const DimensionMark& dimension) {
    const auto box = textBoxOf(dimension, unitsPerMm_);
    return !box || isFree(*box);
  });
  add(free == candidates.end() ? candidates.front() : *free);
}

bool Board::isFree(const Eigen::AlignedBox2d& box) const {
  return std::none_of(taken_.begin(), taken_.end(),
                      [&](const Eigen::AlignedBox2d& other) { return box.intersects(other); });
}

}  // namespace baywright::detail
