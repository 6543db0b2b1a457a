// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_mline.h"

#include <algorithm>

namespace baywright::detail {

namespace {

/// Where one of the parallel lines passes a vertex, and where it starts, stops, starts again beyond.
using Passing = std::vector<double>;

struct Corner {
  Vec3 at = Vec3::Zero();
  Vec3 mitre = Vec3::Zero();
  std::vector<Passing> lines;

  Vec3 passed(std::size_t line) const { return at + lines[line].front() * mitre; }
};

std::vector<Corner> cornersOf(DxfFields& fields) {
  std::vector<Corner> corners;
  for (const DxfTag& tag : fields.record().tags) {
    if (tag.code == 11) corners.emplace_back();
    if (corners.empty()) continue;
    Corner& corner = corners.back();
    const int axis = tag.code / 10 - 1;
    if (axis >= 0 && axis < 3 && tag.code % 10 == 1) corner.at[axis] = fields.numberOf(tag);
    if (axis >= 0 && axis < 3 && tag.code % 10 == 3) corner.mitre[axis] = fields.numberOf(tag);
    if (tag.code == 74) corner.lines.emplace_back();
    if (tag.code == 41 && !corner.lines.empty()) corner.lines.back().push_back(fields.numberOf(tag));
  }
  return corners;
}

bool agree(const std::vector<Corner>& corners) {
  for (const Corner& corner : corners) {
    if (corner.lines.empty() || corner.lines.size() != corners.front().lines.size()) return false;
    for (const Passing& line : corner.lines)
      if (line.empty()) return false;
  }
  return corners.size() >= 2;
}

void addPieces(std::vector<DxfPath>& paths, const Vec3& from, const Vec3& to, const Passing& passing) {
  const double length = (to - from).norm();
  if (!(length > 0)) return;
  const Vec3 along = (to - from) / length;
  const auto add = [&](double start, double stop) {
    if (stop > start) paths.push_back({{DxfChain{{from + start * along, from + stop * along}}}, false});
  };
  // After the place on the mitre come starts and stops by turns; the last start runs on to the next vertex.
  if (passing.size() < 2) return add(0, length);
  for (std::size_t i = 1; i < passing.size(); i += 2)
    add(passing[i], i + 1 < passing.size() ? std::min(passing[i + 1], length) : length);
}

}  // namespace

std::vector<DxfPath> mlinePaths(DxfFields& fields) {
  const std::vector<Corner> corners = cornersOf(fields);
  const bool closed = fields.flag(71, 2);
  std::vector<DxfPath> paths;
  if (fields.bad() || !agree(corners)) return paths;
  for (std::size_t i = 0; i + (closed ? 0 : 1) < corners.size(); ++i) {
    const Corner& next = corners[(i + 1) % corners.size()];
    for (std::size_t line = 0; line < next.lines.size(); ++line)
      addPieces(paths, corners[i].passed(line), next.passed(line), corners[i].lines[line]);
  }
  return paths;
}

}  // namespace baywright::detail
