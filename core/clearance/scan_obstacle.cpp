// SPDX-License-Identifier: Apache-2.0
#include "clearance/scan_obstacle.h"

#include <algorithm>

#include "geometry/mesh.h"

namespace baywright {
namespace {

std::optional<TriangleTree> treeAboveFloor(const TriangleMesh& mesh) {
  std::vector<TriangleMesh::Corners> kept;
  const auto isAbove = [&](std::uint32_t corner) { return mesh.vertices()[corner].z() > kScanFloorBand; };
  std::copy_if(mesh.triangles().begin(), mesh.triangles().end(), std::back_inserter(kept),
               [&](const TriangleMesh::Corners& corners) {
                 return std::any_of(corners.begin(), corners.end(), isAbove);
               });
  if (kept.empty()) return std::nullopt;
  const auto above = TriangleMesh::from(mesh.vertices(), std::move(kept));
  return above ? TriangleTree::build(*above) : std::nullopt;
}

std::optional<PointTree> treeAboveFloor(const std::vector<Eigen::Vector3f>& points) {
  auto kept = std::make_shared<std::vector<Eigen::Vector3f>>();
  std::copy_if(points.begin(), points.end(), std::back_inserter(*kept),
               [](const Eigen::Vector3f& point) { return point.z() > kScanFloorBand; });
  if (kept->empty()) return std::nullopt;
  auto tree = PointTree::build(std::move(kept));
  return tree ? *tree : std::nullopt;
}

}  // namespace

std::optional<ScanObstacle> scanObstacle(const RoomScan& scan) {
  if (!scan.isObstacle) return std::nullopt;
  ScanObstacle obstacle{scan.id, scan.name, scan.sigma, std::nullopt, std::nullopt};
  if (scan.mesh) obstacle.triangles = treeAboveFloor(*scan.mesh);
  if (scan.points) obstacle.points = treeAboveFloor(*scan.points);
  if (!obstacle.triangles && !obstacle.points) return std::nullopt;
  return obstacle;
}

}  // namespace baywright
