// SPDX-License-Identifier: Apache-2.0
#include <array>

#include "clearance/kit_bodies.h"
#include "clearance/obstacles.h"
#include "geometry/rigid_map.h"
#include "job/room_geometry.h"
#include "optics/projector_body.h"

namespace baywright {
namespace {

class KitCollector {
 public:
  explicit KitCollector(const Job& job)
      : option_(job.option()), map_(worldFromBay(job.option().placement.bay)) {}

  void add(Id id, ObstacleKind kind, const std::string& name, const Solid& inBay, double surfaceSigma) {
    RoomObstacle obstacle = withSolid({}, transformed(inBay, map_));
    obstacle.id = id;
    obstacle.kind = kind;
    obstacle.name = name;
    obstacle.uncertainty.surface = surfaceSigma;
    obstacle.inBay = true;
    obstacle.overhead = obstacle.bounds.low.z() > 1.0;
    obstacle.breakable = kind == ObstacleKind::Projector || kind == ObstacleKind::Monitor;
    obstacles.push_back(std::move(obstacle));
  }

  /// Of what was added last.
  void addBacking(const Solid& inBay) {
    const Solid solid = transformed(inBay, map_);
    obstacles.back().backing = Backing{solid, boundsOf(solid)};
  }

  const Option& option() const { return option_; }
  Obstacles obstacles;

 private:
  const Option& option_;
  RigidMap map_;
};

void addFrame(KitCollector& kit) {
  const Frame& frame = kit.option().kit.frame;
  for (const FramePanel& panel : framePanels(frame)) {
    kit.add(frame.id, ObstacleKind::Frame, panel.name, panel.body, frame.tolerance);
    kit.addBacking(panel.backed);
  }
}

void addMonitor(KitCollector& kit) {
  if (!kit.option().kit.hasMonitor) return;
  const auto body = monitorBody(kit.option().kit.monitor, kit.option().placement.monitor);
  if (body) kit.add(kit.option().kit.monitor.id, ObstacleKind::Monitor, "the launch monitor", *body, 0);
}

void addProjector(KitCollector& kit, const Job& job) {
  if (!kit.option().kit.hasProjector) return;
  const Projector& projector = kit.option().kit.projector;
  const ProjectorMount& mount = kit.option().placement.projector;
  const auto body = projectorBody(projector, mount);
  if (!body) return;
  kit.add(projector.id, ObstacleKind::Projector, "the projector", *body, 0);
  const Vec3 above = worldFromBay(job.option().placement.bay, body->middle());
  const auto ceiling = ceilingAt(job.room, flat(above));
  const double ceilingHeight = ceiling ? ceiling->height : 0;
  if (const auto drop = mountDrop(*body, mount.kind, ceilingHeight)) {
    kit.add(projector.id, ObstacleKind::ProjectorMount, "the projector's mount", *drop, 0);
  }
}

}  // namespace

Obstacles kitObstacles(const Job& job) {
  KitCollector kit(job);
  addFrame(kit);
  addMonitor(kit);
  addProjector(kit, job);
  return std::move(kit.obstacles);
}

Obstacles roomObstacles(const Job& job) {
  Obstacles all;
  for (const auto part :
       {wallObstacles, ceilingObstacles, fixtureObstacles, doorObstacles, bystanderObstacles}) {
    Obstacles some = part(job);
    std::move(some.begin(), some.end(), std::back_inserter(all));
  }
  return all;
}

Obstacles obstaclesOf(const Job& job) {
  Obstacles all = roomObstacles(job);
  Obstacles kit = kitObstacles(job);
  std::move(kit.begin(), kit.end(), std::back_inserter(all));
  return all;
}

}  // namespace baywright
