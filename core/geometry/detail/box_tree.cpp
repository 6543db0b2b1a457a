// SPDX-License-Identifier: Apache-2.0
#include "geometry/detail/box_tree.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "geometry/detail/nearest_pair.h"

namespace baywright::detail {

namespace {

constexpr int kBits = 16;  // steps of the curve along each axis: 65536, a tenth of a millimetre in a room

/// Place along a Hilbert curve of a point on a grid of 2^kBits steps an axis: Skilling's bit exchange
/// (Programming the Hilbert curve, AIP Conference Proceedings 707, 2004), then the axes' bits in turn.
std::uint64_t hilbertPlace(std::array<std::uint32_t, 3> x) {
  for (std::uint32_t bit = 1u << (kBits - 1); bit > 1; bit >>= 1) {
    const std::uint32_t below = bit - 1;
    for (std::uint32_t& axis : x) {
      if (axis & bit) {
        x[0] ^= below;
      } else {
        const std::uint32_t swap = (x[0] ^ axis) & below;
        x[0] ^= swap;
        axis ^= swap;
      }
    }
  }
  x[1] ^= x[0];
  x[2] ^= x[1];
  std::uint32_t flip = 0;
  for (std::uint32_t bit = 1u << (kBits - 1); bit > 1; bit >>= 1) {
    if (x[2] & bit) flip ^= bit - 1;
  }
  std::uint64_t place = 0;
  for (int i = kBits - 1; i >= 0; --i) {
    for (const std::uint32_t axis : x) place = place << 1 | ((axis ^ flip) >> i & 1);
  }
  return place;
}

BoxF unionOf(std::span<const BoxF> boxes) {
  BoxF all{Eigen::Vector3f::Constant(std::numeric_limits<float>::infinity()),
           Eigen::Vector3f::Constant(-std::numeric_limits<float>::infinity())};
  for (const BoxF& box : boxes) {
    all.low = all.low.cwiseMin(box.low);
    all.high = all.high.cwiseMax(box.high);
  }
  return all;
}

struct Placed {
  std::uint64_t place = 0;
  std::uint32_t item = 0;

  bool operator<(const Placed& other) const {
    return std::pair{place, item} < std::pair{other.place, other.item};
  }
};

std::vector<Placed> placesOf(std::span<const BoxF> boxes, const BoxF& all) {
  const Eigen::Vector3f extent = (all.high - all.low).cwiseMax(std::numeric_limits<float>::min());
  const float most = static_cast<float>((1 << kBits) - 1);
  std::vector<Placed> placed(boxes.size());
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    std::array<std::uint32_t, 3> grid{};
    for (Eigen::Index axis = 0; axis < 3; ++axis) {
      const float middle = 0.5f * boxes[i].low(axis) + 0.5f * boxes[i].high(axis);
      const float share = std::clamp((middle - all.low(axis)) / extent(axis), 0.0f, 1.0f);
      grid[static_cast<std::size_t>(axis)] = static_cast<std::uint32_t>(share * most);
    }
    placed[i] = {hilbertPlace(grid), static_cast<std::uint32_t>(i)};
  }
  return placed;
}

}  // namespace

std::vector<BoxTree::Node> BoxTree::levelOver(std::span<const BoxF> boxes) {
  // Empty places are far enough to be never near, not so far as to make infinity times zero.
  constexpr float kNowhere = 1e15f;
  Node empty;
  for (Eight& axis : empty.middle) axis.setConstant(kNowhere);
  for (Eight& axis : empty.half) axis.setZero();
  std::vector<Node> level((boxes.size() + kWidth - 1) / kWidth, empty);
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    for (Eigen::Index axis = 0; axis < 3; ++axis) {
      const auto child = static_cast<Eigen::Index>(i % kWidth);
      const float low = boxes[i].low(axis);
      const float high = boxes[i].high(axis);
      level[i / kWidth].middle[static_cast<std::size_t>(axis)](child) = 0.5f * low + 0.5f * high;
      level[i / kWidth].half[static_cast<std::size_t>(axis)](child) = 0.5f * high - 0.5f * low;
    }
  }
  return level;
}

std::optional<BoxTree> BoxTree::build(std::span<const BoxF> boxes, const Progress& progress) {
  BoxTree tree;
  if (boxes.empty()) return tree;
  const BoxF all = unionOf(boxes);
  tree.size_ = std::max(all.low.cwiseAbs().maxCoeff(), all.high.cwiseAbs().maxCoeff());
  std::vector<Placed> placed = placesOf(boxes, all);
  progress.at(0.3);
  if (progress.stop()) return std::nullopt;
  std::sort(placed.begin(), placed.end());
  progress.at(0.8);
  if (progress.stop()) return std::nullopt;

  tree.order_.reserve(placed.size());
  for (const Placed& p : placed) tree.order_.push_back(p.item);
  std::vector<BoxF> sorted;
  sorted.reserve(placed.size());
  for (const Placed& p : placed) sorted.push_back(boxes[p.item]);
  for (;;) {
    tree.levels_.push_back(levelOver(sorted));
    if (sorted.size() <= kWidth) break;
    std::vector<BoxF> above;
    for (std::size_t i = 0; i < sorted.size(); i += kWidth) {
      above.push_back(unionOf(std::span<const BoxF>(sorted).subspan(i, std::min(kWidth, sorted.size() - i))));
    }
    sorted = std::move(above);
  }
  progress.at(1);
  return tree;
}

BoxTree::Query::Query(const Segment3& segment) : size(sizeOf(segment)) {
  const Vec3 m = 0.5 * (segment.a + segment.b);
  const Vec3 h = 0.5 * (segment.b - segment.a);
  for (std::size_t i = 0; i < 3; ++i) {
    const auto axis = static_cast<Eigen::Index>(i);
    middle[i] = static_cast<float>(m(axis));
    half[i] = static_cast<float>(std::abs(h(axis)));
    // A rough unit vector will do: any direction gives a true bound.
    const Vec3 normal = Vec3::Unit(axis).cross(h);
    const double length = normal.norm();
    for (std::size_t j = 0; j < 3; ++j) {
      across[i][j] = length > 0 ? static_cast<float>(normal(static_cast<Eigen::Index>(j)) / length) : 0.0f;
    }
  }
}

float BoxTree::reachOf(const Query& query, double distance) const {
  // Every term of a bound is a sum of a few products of coordinates with numbers up to 1, each rounded to
  // 2^-24.
  constexpr double kRounding = 32 * 0x1p-24;
  const double reach =
      distance + kRounding * (query.size + static_cast<double>(size_) + std::max(distance, 0.0));
  if (!(reach >= 0)) return -1;
  // Below the square of where empty places are.
  return static_cast<float>(std::min(reach * reach, 1e28));
}

BoxTree::Eight BoxTree::lowerBounds(const Query& query, const Node& node) {
  const auto& [hx, hy, hz] = node.half;
  const auto& [nx, ny, nz] = query.across;
  const Eight cx = node.middle[0] - query.middle[0];
  const Eight cy = node.middle[1] - query.middle[1];
  const Eight cz = node.middle[2] - query.middle[2];
  // Boxes of segment and node apart along the axes.
  const Eight gx = (cx.abs() - hx - query.half[0]).max(0);
  const Eight gy = (cy.abs() - hy - query.half[1]).max(0);
  const Eight gz = (cz.abs() - hz - query.half[2]).max(0);
  // Line and box apart across the line and each axis.
  const Eight ax = (nx[1] * cy + nx[2] * cz).abs() - (std::abs(nx[1]) * hy + std::abs(nx[2]) * hz);
  const Eight ay = (ny[0] * cx + ny[2] * cz).abs() - (std::abs(ny[0]) * hx + std::abs(ny[2]) * hz);
  const Eight az = (nz[0] * cx + nz[1] * cy).abs() - (std::abs(nz[0]) * hx + std::abs(nz[1]) * hy);
  return (gx * gx + gy * gy + gz * gz).max(ax.max(ay).max(az).max(0).square());
}

}  // namespace baywright::detail
