// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "base/progress.h"
#include "geometry/bounds.h"

namespace baywright::detail {

/// Bounds of one item, rounded to no tighter than the truth.
struct BoxF {
  Eigen::Vector3f low;
  Eigen::Vector3f high;
};

/// A tree of boxes, eight children a node, over items in the order of a Hilbert curve through their middles:
/// the children of node i are nodes (or items) 8 i to 8 i + 7 of the level below, so it has no pointers and
/// is built by one sort and one pass. Answers "which items may be nearer to a segment than so much" and is
/// never wrong to leave one out: bounds are compared in single precision with a margin for its rounding.
class BoxTree {
 public:
  /// Empty when `progress` asked to stop. Boxes must be finite.
  static std::optional<BoxTree> build(std::span<const BoxF> boxes, const Progress& progress);

  std::size_t itemCount() const { return order_.size(); }

  /// Calls measure(item) for every item whose box may come within `distance` of the segment, near ones first;
  /// measure returns the distance that matters from then on (at most as large as before).
  template <class Measure>
  void visitNear(const Segment3& segment, double distance, const Measure& measure) const;

 private:
  static constexpr std::size_t kWidth = 8;
  static constexpr std::size_t kMostOpen = 7 * 11 + 8;  ///< seven siblings a level, for 32 bits of items
  using Eight = Eigen::Array<float, kWidth, 1>;

  /// Eight boxes side by side, so that one instruction takes several.
  struct Node {
    std::array<Eight, 3> middle;
    std::array<Eight, 3> half;
  };

  /// A segment as its middle, half vector, and the directions across it and each axis.
  struct Query {
    explicit Query(const Segment3& segment);

    std::array<float, 3> middle;
    std::array<float, 3> half;  ///< absolute values
    std::array<std::array<float, 3>, 3> across;
    double size = 0;  ///< largest absolute coordinate
  };
  struct Open {
    float squared = 0;
    std::uint32_t level = 0;
    std::uint32_t index = 0;
  };

  static Eight lowerBounds(const Query& query, const Node& node);
  static std::vector<Node> levelOver(std::span<const BoxF> boxes);

  float reachOf(const Query& query, double distance) const;

  std::vector<std::uint32_t> order_;
  std::vector<std::vector<Node>> levels_;  ///< levels_[0] holds the items' boxes, the last one node
  float size_ = 0;                         ///< largest absolute coordinate
};

template <class Measure>
void BoxTree::visitNear(const Segment3& segment, double distance, const Measure& measure) const {
  if (levels_.empty()) return;
  const Query query(segment);
  float reach = reachOf(query, distance);
  std::array<Open, kMostOpen> open;
  std::size_t openCount = 0;
  open[openCount++] = {0, static_cast<std::uint32_t>(levels_.size() - 1), 0};
  while (openCount > 0) {
    const Open next = open[--openCount];
    if (next.squared > reach) continue;
    const Eight squares = lowerBounds(query, levels_[next.level][next.index]);
    std::array<Open, kWidth> children;
    std::size_t count = 0;
    for (std::size_t i = 0; i < kWidth; ++i) {
      const float squared = squares[static_cast<Eigen::Index>(i)];
      if (!(squared <= reach)) continue;
      // Insertion in falling order, so that the nearest is opened next.
      const Open child{squared, next.level, static_cast<std::uint32_t>(next.index * kWidth + i)};
      std::size_t at = count++;
      for (; at > 0 && children[at - 1].squared < child.squared; --at) children[at] = children[at - 1];
      children[at] = child;
    }
    for (std::size_t i = 0; i < count; ++i) {
      if (next.level > 0) {
        open[openCount++] = {children[i].squared, next.level - 1, children[i].index};
      } else {
        const Open& item = children[count - 1 - i];
        if (item.squared <= reach) reach = reachOf(query, measure(order_[item.index]));
      }
    }
  }
}

}  // namespace baywright::detail
