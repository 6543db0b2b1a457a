// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "drawing/linework.h"

namespace baywright::detail {

/// Linework in the making. It knows where texts already stand, so that the next one finds a free place.
/// Internal to `drawing`.
class Board {
 public:
  /// Drawing units for a millimetre of paper or screen.
  explicit Board(double unitsPerMm) : unitsPerMm_(unitsPerMm) {}

  double mm(double millimetres) const { return millimetres * unitsPerMm_; }

  void add(Path path) { marks_.paths.push_back(std::move(path)); }
  void add(Symbol symbol) { marks_.symbols.push_back(symbol); }
  /// Where it is, whatever stands there.
  void add(Text text);
  void add(DimensionMark dimension);

  /// A soft area, with the hatch of its verdict if it has one.
  void addHatched(Path area);

  /// The first of these whose place is free, as it was put down; when all are taken the text is left out.
  std::optional<Text> addWhereFree(std::span<const Text> candidates);
  /// The first whose text covers no other; when there is none, the first: a dimension is never left out.
  void addWhereFree(std::span<const DimensionMark> candidates);

  const Linework& marks() const { return marks_; }
  Linework take() && { return std::move(marks_); }

 private:
  bool isFree(const Eigen::AlignedBox2d& box) const;

  double unitsPerMm_;
  Linework marks_;
  std::vector<Eigen::AlignedBox2d> taken_;
};

}  // namespace baywright::detail
