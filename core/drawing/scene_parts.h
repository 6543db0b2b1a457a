// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <vector>

#include "drawing/mesh_builder.h"
#include "drawing/solids.h"

namespace baywright::detail {

/// What the scene is made from. Internal to `drawing`.
struct SceneInput {
  const Job& job;
  const Assessment& assessment;
  const SceneOptions& options;
};

/// How a solid looks and whose it is.
struct SceneLook {
  Id id;
  Layer layer = Layer::Fixtures;
  double opacity = 1;
  std::optional<Verdict> verdict;
};
/// Appends the mesh, unless it is empty.
void addSolid(std::vector<SceneSolid>& solids, MeshBuilder mesh, const SceneLook& look);

/// Takes a mesh of the bay frame (d, r, u) to the world; the frame is left-handed, so fronts are turned back.
MeshBuilder inWorld(MeshBuilder mesh, const BayPose& bay);

/// Each gives its own solids. Room: floor, walls, ceiling, openings, fixtures. Bay: frame, screen, mat,
/// monitor, projector. People: golfers at a moment, bystanders. Zones are see-through. Findings: the tightest
/// points.
std::vector<SceneSolid> roomSolids(const SceneInput& input);
std::vector<SceneSolid> baySolids(const SceneInput& input);
std::vector<SceneSolid> peopleSolids(const SceneInput& input);
std::vector<SceneSolid> findingSolids(const SceneInput& input);
std::vector<SceneSolid> zoneSolids(const SceneInput& input, SwingSurfaces& surfaces);

}  // namespace baywright::detail
