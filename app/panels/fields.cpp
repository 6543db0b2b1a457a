// SPDX-License-Identifier: Apache-2.0
#include "panels/field.h"

namespace baywright {

std::vector<Field> fieldsOf(const Job& job, Id id) {
  const std::optional<Thing> thing = findThing(job, id);
  if (!thing) return {};
  switch (thing->kind) {
    case ThingKind::Wall:
    case ThingKind::Opening:
    case ThingKind::CeilingPart:
    case ThingKind::Fixture:
      return roomFields(job, *thing);
    case ThingKind::Golfer:
    case ThingKind::Club:
    case ThingKind::Bystander:
      return peopleFields(job, *thing);
    case ThingKind::Option:
    case ThingKind::Frame:
    case ThingKind::Screen:
    case ThingKind::Mat:
    case ThingKind::Monitor:
    case ThingKind::Projector:
      return kitFields(job, *thing);
    case ThingKind::PlanScan:
    case ThingKind::RoomScan:
    case ThingKind::Original:
      return scanFields(job, *thing);
    case ThingKind::Measurement:
      return readingFields(job, *thing);
  }
  return {};
}

}  // namespace baywright
