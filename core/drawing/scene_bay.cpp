// SPDX-License-Identifier: Apache-2.0
#include "clearance/kit_bodies.h"
#include "drawing/scene_parts.h"
#include "geometry/rigid_map.h"
#include "optics/projector_body.h"

namespace baywright::detail {
namespace {

// A box between two corners in the bay frame, carried to the world.
void addBox(MeshBuilder& mesh, const BayPose& bay, const Vec3& low, const Vec3& high) {
  const auto body = boxFrom(TiltedBox{(low + high) / 2, Mat3(((high - low) / 2).asDiagonal())});
  if (body) mesh.addBody(transformed(*body, worldFromBay(bay)));
}

MeshBuilder frameTubes(const Frame& frame, const BayPose& bay) {
  MeshBuilder mesh;
  const double front = frame.behindScreen - frame.depth;
  const double back = frame.behindScreen;
  const double half = frame.width / 2;
  const double tube = frame.tube;
  for (const double d : {front, back - tube}) {
    for (const double r : {-half, half - tube})
      addBox(mesh, bay, {d, r, 0}, {d + tube, r + tube, frame.height});
    addBox(mesh, bay, {d, -half + tube, frame.height - tube}, {d + tube, half - tube, frame.height});
  }
  for (const double r : {-half, half - tube}) {
    for (const double u : {0.0, frame.height - tube})
      addBox(mesh, bay, {front + tube, r, u}, {back - tube, r + tube, u + tube});
  }
  return mesh;
}

// Side walls and roof as cloth.
MeshBuilder frameFabric(const Frame& frame, const BayPose& bay) {
  constexpr double kCloth = 0.005;
  MeshBuilder mesh;
  const double front = frame.behindScreen - frame.depth;
  const double half = frame.width / 2;
  for (const double r : {-half, half - kCloth})
    addBox(mesh, bay, {front, r, 0}, {frame.behindScreen, r + kCloth, frame.height});
  addBox(mesh, bay, {front, -half, frame.height - kCloth}, {frame.behindScreen, half, frame.height});
  return mesh;
}

}  // namespace

std::vector<SceneSolid> baySolids(const SceneInput& input) {
  const Option& option = input.job.option();
  const Kit& kit = option.kit;
  const Placement& placement = option.placement;
  const BayPose& bay = placement.bay;
  std::vector<SceneSolid> solids;
  addSolid(solids, frameTubes(kit.frame, bay), {kit.frame.id, Layer::Bay, 1, {}});
  addSolid(solids, frameFabric(kit.frame, bay), {kit.frame.id, Layer::Bay, 0.2, {}});

  MeshBuilder screen;
  constexpr double kCloth = 0.01;
  addBox(screen, bay, {0, -kit.screen.width / 2, kit.screen.bottom},
         {kCloth, kit.screen.width / 2, kit.screen.bottom + kit.screen.height});
  addSolid(solids, std::move(screen), {kit.screen.id, Layer::Bay, 1, {}});

  MeshBuilder mat;
  const Vec2 half(kit.mat.length / 2, kit.mat.width / 2);
  addBox(mat, bay, raised(placement.matCentre - half, 0),
         raised(placement.matCentre + half, kit.mat.thickness));
  addSolid(solids, std::move(mat), {kit.mat.id, Layer::Bay, 1, {}});

  if (kit.hasMonitor) {
    MeshBuilder monitor;
    if (const auto body = monitorBody(kit.monitor, placement.monitor))
      monitor.addBody(transformed(*body, worldFromBay(bay)));
    addSolid(solids, std::move(monitor), {kit.monitor.id, Layer::Bay, 1, {}});
  }
  if (kit.hasProjector) {
    MeshBuilder projector;
    if (const auto body = projectorBody(kit.projector, placement.projector)) {
      projector.addBody(transformed(*body, worldFromBay(bay)));
    }
    if (input.assessment.obstacles) {
      for (const RoomObstacle& obstacle : *input.assessment.obstacles) {
        if (obstacle.kind == ObstacleKind::ProjectorMount) projector.addSolid(obstacle.solid);
      }
    }
    addSolid(solids, std::move(projector), {kit.projector.id, Layer::Bay, 1, {}});
  }
  return solids;
}

}  // namespace baywright::detail
