// SPDX-License-Identifier: Apache-2.0
#include "drawing/swing_surface.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/bounds.h"

namespace baywright::detail {
namespace {

// Distances are kept up to this far outside: the surface asks for no more.
constexpr double kBand = 2 * kSurfaceCell;

using Index = std::array<int, 3>;

class Grid {
 public:
  explicit Grid(const Aabb3& bounds) : low_(bounds.low - Vec3::Constant(kBand)) {
    for (int axis = 0; axis < 3; ++axis) {
      count_[static_cast<std::size_t>(axis)] =
          static_cast<int>(std::ceil((bounds.high[axis] + kBand - low_[axis]) / kSurfaceCell)) + 1;
    }
    values_.assign(static_cast<std::size_t>(count_[0]) * static_cast<std::size_t>(count_[1]) *
                       static_cast<std::size_t>(count_[2]),
                   static_cast<float>(kBand));
  }

  const Index& count() const { return count_; }
  Vec3 at(const Index& i) const { return low_ + kSurfaceCell * Vec3(i[0], i[1], i[2]); }
  std::size_t flatIndex(const Index& i) const {
    return (static_cast<std::size_t>(i[2]) * static_cast<std::size_t>(count_[1]) +
            static_cast<std::size_t>(i[1])) *
               static_cast<std::size_t>(count_[0]) +
           static_cast<std::size_t>(i[0]);
  }
  float operator[](const Index& i) const { return values_[flatIndex(i)]; }

  void add(const Capsule& capsule) {
    const Vec3 core = capsule.b - capsule.a;
    const double length2 = std::max(core.squaredNorm(), 1e-12);
    Aabb3 box = boundsOf(capsule);
    const Index from = cell(box.low - Vec3::Constant(kBand), 0);
    const Index to = cell(box.high + Vec3::Constant(kBand), 1);
    for (int z = from[2]; z <= to[2]; ++z) {
      for (int y = from[1]; y <= to[1]; ++y) {
        for (int x = from[0]; x <= to[0]; ++x) {
          const Vec3 offset = at({x, y, z}) - capsule.a;
          const double share = std::clamp(offset.dot(core) / length2, 0.0, 1.0);
          const auto distance = static_cast<float>((offset - share * core).norm() - capsule.radius);
          float& value = values_[flatIndex({x, y, z})];
          value = std::min(value, distance);
        }
      }
    }
  }

 private:
  Index cell(const Vec3& p, int up) const {
    Index i{};
    for (int axis = 0; axis < 3; ++axis) {
      const auto k = static_cast<std::size_t>(axis);
      i[k] = std::clamp(static_cast<int>(std::floor((p[axis] - low_[axis]) / kSurfaceCell)) + up, 0,
                        count_[k] - 1);
    }
    return i;
  }

  Vec3 low_;
  Index count_{};
  std::vector<float> values_;
};

// The twelve edges of a cell, as pairs of its corners; bit k of a corner is its place along axis k.
constexpr std::array<std::pair<int, int>, 12> kEdges = {
    {{0, 1}, {2, 3}, {4, 5}, {6, 7}, {0, 2}, {1, 3}, {4, 6}, {5, 7}, {0, 4}, {1, 5}, {2, 6}, {3, 7}}};

class Nets {
 public:
  explicit Nets(const Grid& grid) : grid_(grid), vertexOf_(size(), kNone) {}

  MeshBuilder mesh() {
    forEachCell([&](const Index& i) { placeVertex(i); });
    forEachCell([&](const Index& i) { joinAround(i); });
    for (Eigen::Vector3f& normal : mesh_.normals) normal.stableNormalize();
    return std::move(mesh_);
  }

 private:
  static constexpr std::uint32_t kNone = 0xFFFFFFFF;

  std::size_t size() const {
    const Index& count = grid_.count();
    return static_cast<std::size_t>(count[0]) * static_cast<std::size_t>(count[1]) *
           static_cast<std::size_t>(count[2]);
  }

  void forEachCell(const auto& visit) const {
    const Index& count = grid_.count();
    for (int z = 0; z + 1 < count[2]; ++z) {
      for (int y = 0; y + 1 < count[1]; ++y) {
        for (int x = 0; x + 1 < count[0]; ++x) visit(Index{x, y, z});
      }
    }
  }

  static Index corner(const Index& cell, int bits) {
    return {cell[0] + (bits & 1), cell[1] + (bits >> 1 & 1), cell[2] + (bits >> 2 & 1)};
  }

  // In the middle of where the surface crosses the cell's edges.
  void placeVertex(const Index& cell) {
    Vec3 sum = Vec3::Zero();
    int crossings = 0;
    for (const auto& [a, b] : kEdges) {
      const Index ia = corner(cell, a);
      const Index ib = corner(cell, b);
      const double va = grid_[ia];
      const double vb = grid_[ib];
      if ((va < 0) == (vb < 0)) continue;
      sum += grid_.at(ia) + va / (va - vb) * (grid_.at(ib) - grid_.at(ia));
      ++crossings;
    }
    if (crossings == 0) return;
    vertexOf_[grid_.flatIndex(cell)] = static_cast<std::uint32_t>(mesh_.vertices.size());
    mesh_.vertices.push_back((sum / crossings).cast<float>());
    mesh_.normals.emplace_back(Eigen::Vector3f::Zero());
  }

  // A square of the four cells around each edge from this cell's first corner that the surface crosses.
  void joinAround(const Index& cell) {
    for (std::size_t axis = 0; axis < 3; ++axis) {
      const std::size_t u = (axis + 1) % 3;
      const std::size_t v = (axis + 2) % 3;
      if (cell[u] == 0 || cell[v] == 0) continue;
      Index end = cell;
      ++end[axis];
      const bool inside = grid_[cell] < 0;
      if (inside == (grid_[end] < 0)) continue;
      std::array<Index, 4> around = {cell, cell, cell, cell};
      --around[1][u];
      --around[2][u];
      --around[2][v];
      --around[3][v];
      std::array<std::uint32_t, 4> corners{};
      for (std::size_t k = 0; k < 4; ++k) corners[k] = vertexOf_[grid_.flatIndex(around[k])];
      if (!inside) std::swap(corners[1], corners[3]);
      addSquare(corners);
    }
  }

  void addSquare(const std::array<std::uint32_t, 4>& corners) {
    const auto at = [&](std::size_t k) { return mesh_.vertices[corners[k]]; };
    const Eigen::Vector3f normal = (at(2) - at(0)).cross(at(3) - at(1));
    for (const std::uint32_t corner : corners) mesh_.normals[corner] += normal;
    mesh_.indices.insert(mesh_.indices.end(),
                         {corners[0], corners[1], corners[2], corners[0], corners[2], corners[3]});
  }

  const Grid& grid_;
  std::vector<std::uint32_t> vertexOf_;
  MeshBuilder mesh_;
};

}  // namespace

MeshBuilder surfaceOf(const std::vector<SwingCapsule>& capsules) {
  Aabb3 bounds;
  for (const SwingCapsule& each : capsules) bounds = joined(bounds, boundsOf(each.capsule));
  if (bounds.empty()) return {};
  Grid grid(bounds);
  for (const SwingCapsule& each : capsules) grid.add(each.capsule);
  return Nets(grid).mesh();
}

const SwingSurfaces::Surface& SwingSurfaces::of(const std::shared_ptr<const Swing>& swing) {
  std::erase_if(entries_, [](const std::unique_ptr<Entry>& entry) { return entry->swing.expired(); });
  const auto found = std::find_if(entries_.begin(), entries_.end(), [&](const std::unique_ptr<Entry>& entry) {
    return entry->swing.lock() == swing;
  });
  if (found != entries_.end()) return (*found)->surface;
  entries_.push_back(std::make_unique<Entry>(
      Entry{swing, {surfaceOf(swing->expected.capsules), surfaceOf(swing->fullExtension.capsules)}}));
  return entries_.back()->surface;
}

}  // namespace baywright::detail
