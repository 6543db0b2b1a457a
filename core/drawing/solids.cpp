// SPDX-License-Identifier: Apache-2.0
#include "drawing/solids.h"

#include <algorithm>
#include <iterator>

#include "drawing/scene_parts.h"
#include "drawing/scene_scans.h"
#include "geometry/frames.h"

namespace baywright {
namespace detail {

void addSolid(std::vector<SceneSolid>& solids, MeshBuilder mesh, const SceneLook& look) {
  if (mesh.indices.empty()) return;
  SceneSolid solid;
  solid.id = look.id;
  solid.layer = look.layer;
  solid.verdict = look.verdict;
  solid.opacity = look.opacity;
  solid.vertices = std::move(mesh.vertices);
  solid.normals = std::move(mesh.normals);
  solid.indices = std::move(mesh.indices);
  solids.push_back(std::move(solid));
}

MeshBuilder inWorld(MeshBuilder mesh, const BayPose& bay) {
  for (Eigen::Vector3f& p : mesh.vertices) p = worldFromBay(bay, p.cast<double>()).cast<float>();
  const BayPose turnOnly{Vec2::Zero(), bay.heading};
  for (Eigen::Vector3f& normal : mesh.normals)
    normal = worldFromBay(turnOnly, normal.cast<double>()).cast<float>();
  for (std::size_t i = 0; i + 2 < mesh.indices.size(); i += 3)
    std::swap(mesh.indices[i + 1], mesh.indices[i + 2]);
  return mesh;
}

}  // namespace detail

std::vector<SceneSolid> sceneSolids(const Job& job, const Assessment& assessment,
                                    const SceneOptions& options) {
  return SceneBuilder().build(job, assessment, options);
}

SceneBuilder::SceneBuilder() : leftovers_(std::make_unique<detail::ScanLeftovers>()) {}
SceneBuilder::~SceneBuilder() = default;

std::vector<SceneSolid> SceneBuilder::build(const Job& job, const Assessment& assessment,
                                            const SceneOptions& options) {
  const detail::SceneInput input{job, assessment, options};
  std::vector<SceneSolid> solids = detail::roomSolids(input);
  const auto append = [&](std::vector<SceneSolid> more) {
    std::move(more.begin(), more.end(), std::back_inserter(solids));
  };
  append(detail::scanSolids(input, *leftovers_));
  append(detail::baySolids(input));
  append(detail::peopleSolids(input));
  append(detail::findingSolids(input));
  append(detail::zoneSolids(input, surfaces_));
  std::stable_partition(solids.begin(), solids.end(),
                        [](const SceneSolid& solid) { return solid.opacity >= 1; });
  return solids;
}

}  // namespace baywright
