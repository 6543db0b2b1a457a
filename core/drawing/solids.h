// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "clearance/assessment.h"
#include "drawing/layers.h"
#include "drawing/swing_surface.h"
#include "drawing/views.h"
#include "job/job.h"

namespace baywright {
namespace detail {
class ScanLeftovers;
}

/// Triangles of one thing in the world, for the 3D view. Front faces turn counter-clockwise; walls, floor and
/// ceiling face into the room, so that a renderer that culls back faces looks into it from outside.
struct SceneSolid {
  Id id;  ///< what it belongs to; several solids may share it
  Layer layer = Layer::Fixtures;
  std::optional<Verdict> verdict;
  double opacity = 1;  ///< below 1: a zone to see through
  std::vector<Eigen::Vector3f> vertices;
  std::vector<Eigen::Vector3f> normals;  ///< one a vertex, unit length
  std::vector<std::uint32_t> indices;    ///< three a triangle
};

struct SceneOptions {
  ViewOptions zones;             ///< which zones are shown
  std::optional<double> moment;  ///< golfers stand at this moment of the swing; absent: at address
  bool ceiling = true;
};

/// Everything that the 3D view shows and that exports write, opaque solids first. Pure.
std::vector<SceneSolid> sceneSolids(const Job& job, const Assessment& assessment,
                                    const SceneOptions& options);

/// sceneSolids() for job after job: keeps the surfaces of swings, and of what scans show beside the model, that did
/// not change. It never gives another
/// answer. One thread at a time.
class SceneBuilder {
 public:
  SceneBuilder();
  ~SceneBuilder();
  std::vector<SceneSolid> build(const Job& job, const Assessment& assessment, const SceneOptions& options);

 private:
  detail::SwingSurfaces surfaces_;
  std::unique_ptr<detail::ScanLeftovers> leftovers_;
};

}  // namespace baywright
