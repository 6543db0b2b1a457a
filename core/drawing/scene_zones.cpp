// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>

#include "drawing/bay_plan.h"
#include "drawing/scene_parts.h"
#include "drawing/swing_zones.h"
#include "geometry/polygon_sets.h"
#include "geometry/rigid_map.h"
#include "job/room_geometry.h"
#include "optics/obstruction.h"

namespace baywright::detail {
namespace {

// Areas on the floor are lifted so that they do not fight with it, each kind a little higher.
constexpr double kLift = 0.004;

void addSwings(std::vector<SceneSolid>& solids, const SceneInput& input, SwingSurfaces& surfaces) {
  const ViewOptions& options = input.options.zones;
  for (const SwingZone& zone : input.assessment.swings) {
    if (!zone.swing || !singledOut(options, zone.golfer) || !isWorstOfGolfer(input.assessment.swings, zone))
      continue;
    const auto add = [&](const MeshBuilder& surface, const SceneLook& look) {
      MeshBuilder mesh = surface;
      for (Eigen::Vector3f& p : mesh.vertices) p += zone.strikePointInBay.cast<float>();
      addSolid(solids, inWorld(std::move(mesh), zone.bay), look);
    };
    const SwingSurfaces::Surface& surface = surfaces.of(zone.swing);
    if (options.swing) add(surface.expected, {zone.golfer, Layer::Swing, 0.3, zone.verdict});
    if (options.swingBound) add(surface.fullExtension, {zone.golfer, Layer::SwingBound, 0.08, {}});
  }
}

void addBeam(std::vector<SceneSolid>& solids, const SceneInput& input) {
  if (!input.options.zones.beam || !input.assessment.picture) return;
  const auto body = beamBody(input.assessment.picture->picture);
  if (!body) return;
  MeshBuilder mesh;
  const Option& option = input.job.option();
  mesh.addBody(transformed(*body, worldFromBay(option.placement.bay)));
  addSolid(solids, std::move(mesh), {option.kit.projector.id, Layer::Beam, 0.18, {}});
}

// A region of the plan, cut to the room, just over the floor.
MeshBuilder onFloor(const Room& room, const Ring& region, double lift) {
  MeshBuilder mesh;
  PolygonSet pieces{Polygon{region, {}}};
  if (!room.walls.empty())
    pieces = intersectionOf(pieces, {Polygon{outline(room), {}}}).value_or(PolygonSet{});
  for (const Polygon& piece : pieces) mesh.addRegion(piece, SlopedPlane::level(lift), MeshBuilder::Front::Up);
  return mesh;
}

void addBallZones(std::vector<SceneSolid>& solids, const SceneInput& input) {
  const BayPlan bay{input.job.option().placement.bay};
  for (const BallZone& zone : input.assessment.balls) {
    if (input.options.zones.rebound && zone.danger) {
      double lift = kLift;
      for (const Ring* ring : {&zone.danger->direct, &zone.danger->returning}) {
        if (ring->size() < 3) continue;
        addSolid(solids, onFloor(input.job.room, bay.ring(*ring), lift), {{}, Layer::Rebound, 0.25, {}});
        lift += kLift;
      }
    }
    if (input.options.zones.capture && zone.fan.elevation.size() >= 3) {
      // The upright fan in the plane of the mean shot, seen from both sides.
      MeshBuilder mesh;
      for (const MeshBuilder::Front front : {MeshBuilder::Front::Up, MeshBuilder::Front::Down}) {
        mesh.addRegion({zone.fan.elevation, {}}, SlopedPlane::level(0), front);
      }
      // Made flat as (d, u, 0): turned upright about the ball's r.
      for (auto* vectors : {&mesh.vertices, &mesh.normals}) {
        for (Eigen::Vector3f& p : *vectors) p = {p.x(), -p.z(), p.y()};
      }
      for (Eigen::Vector3f& p : mesh.vertices) p.y() += static_cast<float>(zone.ball.y());
      addSolid(solids, inWorld(std::move(mesh), bay.pose), {{}, Layer::Capture, 0.25, {}});
    }
  }
}

void addDoors(std::vector<SceneSolid>& solids, const SceneInput& input) {
  for (const DoorSweep& sweep : input.assessment.doors) {
    if (sweep.sector.size() < 3 || sweep.verdict == Verdict::Clear) continue;
    addSolid(solids, onFloor(input.job.room, sweep.sector, 3 * kLift),
             {sweep.opening, Layer::Openings, 0.4, sweep.verdict});
  }
}

}  // namespace

std::vector<SceneSolid> zoneSolids(const SceneInput& input, SwingSurfaces& surfaces) {
  std::vector<SceneSolid> solids;
  addBallZones(solids, input);
  addDoors(solids, input);
  addBeam(solids, input);
  addSwings(solids, input, surfaces);
  return solids;
}

}  // namespace baywright::detail
