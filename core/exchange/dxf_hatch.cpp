// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_hatch.h"

#include <optional>

#include "exchange/dxf_entity.h"
#include "units/unit_constants.h"

namespace baywright::detail {

namespace {

/// Walks the tags in their order, which is all that tells what they belong to.
class TagWalk {
 public:
  explicit TagWalk(DxfFields& fields) : fields_(fields), tags_(fields.record().tags) {}

  /// Goes to the next tag of this code, over what stands between; false where there is none.
  bool seek(int code) {
    while (next_ < tags_.size() && tags_[next_].code != code) ++next_;
    return next_ < tags_.size();
  }
  /// The value of the next tag if it has this code.
  std::optional<double> take(int code) {
    if (next_ >= tags_.size() || tags_[next_].code != code) return std::nullopt;
    return fields_.numberOf(tags_[next_++]);
  }
  std::optional<Vec3> takePoint(int code) {
    const auto x = take(code), y = take(code + 10);
    if (!x || !y) return std::nullopt;
    return Vec3(*x, *y, 0);
  }

 private:
  DxfFields& fields_;
  const std::vector<DxfTag>& tags_;
  std::size_t next_ = 0;
};

constexpr double kMostVertices = 100'000;

std::optional<DxfPath> polylineOutline(TagWalk& walk, const DxfMap& axes) {
  const bool hasBulges = walk.take(72).value_or(0) != 0;
  walk.take(73);
  const double count = walk.take(93).value_or(0);
  if (!(count >= 2 && count <= kMostVertices)) return std::nullopt;
  std::vector<DxfVertex> vertices;
  for (int i = 0; i < static_cast<int>(count); ++i) {
    const auto at = walk.takePoint(10);
    if (!at) return std::nullopt;
    vertices.push_back({*at, hasBulges ? walk.take(42).value_or(0) : 0});
  }
  return polylinePath(vertices, true, axes);
}

std::optional<DxfPiece> edge(TagWalk& walk) {
  const double kind = walk.take(72).value_or(0);
  if (kind == 1) {
    const auto from = walk.takePoint(10), to = walk.takePoint(11);
    if (!from || !to) return std::nullopt;
    return DxfChain{{*from, *to}};
  }
  if (kind != 2) return std::nullopt;
  const auto centre = walk.takePoint(10);
  const auto radius = walk.take(40), start = walk.take(50), end = walk.take(51), turnsLeft = walk.take(73);
  if (!centre || !radius || !start || !end || !turnsLeft || !(*radius > 0)) return std::nullopt;
  // Angles of clockwise arcs are counted clockwise.
  const double sign = *turnsLeft != 0 ? kRadiansPerDegree : -kRadiansPerDegree;
  return DxfConic{*centre, {*radius, 0, 0}, {0, *radius, 0}, sign * *start, sign * *end};
}

std::optional<DxfPath> edgesOutline(TagWalk& walk, const DxfMap& axes) {
  const double count = walk.take(93).value_or(0);
  if (!(count >= 1 && count <= kMostVertices)) return std::nullopt;
  DxfPath path;
  path.closed = true;
  for (int i = 0; i < static_cast<int>(count); ++i) {
    auto piece = edge(walk);
    if (!piece) return std::nullopt;
    path.pieces.push_back(std::move(*piece));
  }
  return mapped(path, axes);
}

}  // namespace

std::vector<DxfPath> hatchPaths(DxfFields& fields) {
  const DxfMap axes = worldFromObject(fields.extrusion());
  std::vector<DxfPath> paths;
  TagWalk walk(fields);
  if (!walk.seek(91)) return paths;
  constexpr int kPolyline = 2;
  while (walk.seek(92)) {
    const double flags = walk.take(92).value_or(0);
    const bool isPolyline = flags >= 0 && flags < 1e6 && (static_cast<int>(flags) & kPolyline) != 0;
    auto path = isPolyline ? polylineOutline(walk, axes) : edgesOutline(walk, axes);
    if (path && !fields.bad()) paths.push_back(std::move(*path));
  }
  return paths;
}

}  // namespace baywright::detail
