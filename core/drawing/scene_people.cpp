// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <set>

#include "drawing/finding_marks.h"
#include "drawing/scene_parts.h"

namespace baywright::detail {
namespace {

// A person who is not swinging: a body as wide as the place it takes up, and a head.
MeshBuilder bystanderMesh(const Bystander& person) {
  const double head =
      person.height * 0.065;  // half of the head's height, Drillis & Contini 1966: 0.130 stature
  const double shoulders = person.height - 2 * head;
  const double radius = std::min(0.6 * person.radius, shoulders / 2);
  MeshBuilder mesh;
  mesh.addCapsule({raised(person.position, radius), raised(person.position, shoulders - radius), radius});
  const Vec3 face = raised(person.position, person.height - head);
  mesh.addCapsule({face, face, head});
  return mesh;
}

}  // namespace

std::vector<SceneSolid> peopleSolids(const SceneInput& input) {
  std::vector<SceneSolid> solids;
  std::set<Id> drawn;
  for (const SwingZone& zone : input.assessment.swings) {
    const auto& shown = input.options.zones.shown;
    if (!shown.empty() && std::find(shown.begin(), shown.end(), zone.golfer) == shown.end()) continue;
    if (!zone.swing || !drawn.insert(zone.golfer).second) continue;
    MeshBuilder mesh;
    for (const SwingCapsule& part : poseAt(*zone.swing, input.options.moment.value_or(0))) {
      mesh.addCapsule(
          {worldFromSwing(zone, part.capsule.a), worldFromSwing(zone, part.capsule.b), part.capsule.radius});
    }
    addSolid(solids, std::move(mesh), {zone.golfer, Layer::People, 1, {}});
  }
  for (const Bystander& person : input.job.bystanders)
    addSolid(solids, bystanderMesh(person), {person.id, Layer::People, 1, {}});
  return solids;
}

std::vector<SceneSolid> findingSolids(const SceneInput& input) {
  constexpr double kBall = 0.03;
  constexpr double kRod = 0.008;
  std::vector<SceneSolid> solids;
  for (const Finding* finding : shownFindings(input.assessment, input.options.zones)) {
    MeshBuilder mesh;
    const auto& [from, to] = *finding->points;
    for (const Vec3& end : {from, to}) mesh.addCapsule({end, end, kBall});
    mesh.addCapsule({from, to, kRod});
    const Id subject = finding->subjects.empty() ? Id{} : finding->subjects.front();
    addSolid(solids, std::move(mesh), {subject, Layer::Tightest, 1, finding->verdict});
  }
  return solids;
}

}  // namespace baywright::detail
