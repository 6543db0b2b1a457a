// SPDX-License-Identifier: Apache-2.0
#include "drawing/thing_heights.h"

#include <algorithm>

#include "drawing/bay_plan.h"
#include "job/find.h"
#include "job/room_geometry.h"
#include "job/thing_lookup.h"
#include "optics/projector_body.h"

namespace baywright {
namespace {

ThingHeights ofProjector(const Option& option, const Vec2& at) {
  const ProjectorMount& mount = option.placement.projector;
  ThingHeights heights{mount.lens.z(), mount.lens.z(), at, true};
  if (const auto body = projectorBody(option.kit.projector, mount)) {
    for (const Vec3& vertex : body->vertices()) {
      heights.bottom = std::min(heights.bottom, vertex.z());
      heights.top = std::max(heights.top, vertex.z());
    }
  }
  return heights;
}

std::optional<ThingHeights> ofKit(const Job& job, const Thing& thing) {
  const Option* option = optionOf(job, thing.id);
  if (!option || !thing.position) return std::nullopt;
  const Kit& kit = option->kit;
  const Vec2 at = *thing.position;
  switch (thing.kind) {
    case ThingKind::Screen:
      return ThingHeights{kit.screen.bottom, kit.screen.bottom + kit.screen.height, at, false};
    case ThingKind::Mat:
      return ThingHeights{0, kit.mat.thickness, at, false};
    case ThingKind::Monitor: {
      const double bottom = option->placement.monitor.z();
      return ThingHeights{bottom, bottom + kit.monitor.size.z(), at, true};
    }
    case ThingKind::Projector:
      return ofProjector(*option, at);
    default:
      return ThingHeights{0, kit.frame.height, at, false};
  }
}

}  // namespace

std::optional<ThingHeights> heightsOf(const Job& job, Id id) {
  const auto thing = findThing(job, id);
  if (!thing || !thing->position) return std::nullopt;
  const Vec2 at = *thing->position;
  switch (thing->kind) {
    case ThingKind::Option:
    case ThingKind::Frame:
    case ThingKind::Screen:
    case ThingKind::Mat:
    case ThingKind::Monitor:
    case ThingKind::Projector:
      return ofKit(job, *thing);
    case ThingKind::Fixture: {
      const Fixture& fixture = *findById(job.room.fixtures, id);
      return ThingHeights{fixture.bottom.value, fixture.top.value, at, true};
    }
    case ThingKind::Opening: {
      const Opening& opening = *findById(job.room.openings, id);
      return ThingHeights{opening.sill.value, opening.sill.value + opening.height.value, at,
                          opening.kind == OpeningKind::Window};
    }
    case ThingKind::Bystander:
      return ThingHeights{0, findById(job.bystanders, id)->height, at, false};
    case ThingKind::CeilingPart: {
      const double height = findById(job.room.ceiling, id)->heightAt(at);
      return ThingHeights{height, height, at, true};
    }
    default:
      return std::nullopt;
  }
}

}  // namespace baywright
