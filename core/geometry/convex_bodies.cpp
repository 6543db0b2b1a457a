// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "geometry/convex_polyhedron.h"
#include "geometry/polygon.h"

namespace baywright {

Result<ConvexPolyhedron> boxFrom(const TiltedBox& box) {
  std::vector<Vec3> corners;
  for (int i = 0; i < 8; ++i) {
    const Vec3 sign(i & 1 ? 1 : -1, i & 2 ? 1 : -1, i & 4 ? 1 : -1);
    corners.emplace_back(box.centre + box.halfAxes * sign);
  }
  return ConvexPolyhedron::fromFaces(
      std::move(corners),
      {{0, 4, 6, 2}, {1, 3, 7, 5}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 2, 3, 1}, {4, 5, 7, 6}});
}

Result<ConvexPolyhedron> boxFrom(const UprightBox& box) {
  const double height = box.top - box.bottom;
  const double least = std::min({box.size.x(), box.size.y(), height});
  if (!(least >= ConvexPolyhedron::kMinimumThickness)) {
    return fail("A box needs a length, a width and a height of at least 0.001 mm.");
  }
  const Vec2 along(std::cos(box.heading), std::sin(box.heading));
  TiltedBox tilted;
  tilted.centre = raised(box.centre, box.bottom + 0.5 * height);
  tilted.halfAxes.col(0) = raised(0.5 * box.size.x() * along, 0);
  tilted.halfAxes.col(1) = raised(0.5 * box.size.y() * leftOf(along), 0);
  tilted.halfAxes.col(2) = Vec3(0, 0, 0.5 * height);
  return boxFrom(tilted);
}

namespace {

/// Lower and upper vertex over each corner of the outline; one and the same where the planes meet.
struct Columns {
  std::vector<Vec3> vertices;
  std::vector<int> lower;
  std::vector<int> upper;
};

Result<Columns> columnsOver(const Ring& outline, const SlopedPlane& bottom, const SlopedPlane& top) {
  Columns columns;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const double low = bottom.heightAt(outline[i]);
    const double high = top.heightAt(outline[i]);
    if (!std::isfinite(low) || !std::isfinite(high)) return fail("A height is not a finite number.");
    if (high - low < -ConvexPolyhedron::kFlatness) {
      return fail("The upper side lies below the lower side at a corner.", "corner " + std::to_string(i + 1),
                  "Cut the outline along the line where the two meet.");
    }
    const bool meet = high - low < ConvexPolyhedron::kFlatness;
    columns.lower.push_back(static_cast<int>(columns.vertices.size()));
    columns.vertices.push_back(raised(outline[i], meet ? 0.5 * (low + high) : low));
    columns.upper.push_back(static_cast<int>(columns.vertices.size()) - (meet ? 1 : 0));
    if (!meet) columns.vertices.push_back(raised(outline[i], high));
  }
  return columns;
}

std::vector<std::vector<int>> facesOf(const Columns& columns) {
  const std::size_t size = columns.lower.size();
  std::vector<std::vector<int>> faces{{columns.lower.rbegin(), columns.lower.rend()}, columns.upper};
  for (std::size_t i = 0; i < size; ++i) {
    const std::size_t j = (i + 1) % size;
    std::vector<int> side{columns.lower[i], columns.lower[j]};
    if (columns.upper[j] != columns.lower[j]) side.push_back(columns.upper[j]);
    if (columns.upper[i] != columns.lower[i]) side.push_back(columns.upper[i]);
    if (side.size() >= 3) faces.push_back(side);
  }
  return faces;
}

}  // namespace

Result<ConvexPolyhedron> convexPrismFrom(const Prism& prism) {
  for (const Vec2& p : prism.outline) {
    if (!p.allFinite()) return fail("A corner of the outline is not a finite number.");
  }
  Ring outline = simplified(prism.outline, ConvexPolyhedron::kFlatness);
  if (outline.size() < 3) return fail("The outline has no area.", {}, "Give it at least three corners.");
  if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
  if (!isConvex(outline)) return fail("The outline is not convex.", {}, "Cut it into convex pieces.");

  const auto columns = columnsOver(outline, prism.bottom, prism.top);
  if (!columns) return tl::unexpected(columns.error());
  return ConvexPolyhedron::fromFaces(columns->vertices, facesOf(*columns));
}

}  // namespace baywright
