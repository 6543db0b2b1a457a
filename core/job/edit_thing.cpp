// SPDX-License-Identifier: Apache-2.0
#include "job/edit_thing.h"

#include "job/detail/editing.h"
#include "job/edit_fixtures.h"
#include "job/edit_openings.h"
#include "job/edit_options.h"
#include "job/edit_people.h"
#include "job/edit_room.h"
#include "job/thing_lookup.h"

namespace baywright {
namespace {

Result<Job> removeGolferOrClub(Job job, const Thing& thing) {
  if (thing.kind == ThingKind::Golfer) {
    std::erase_if(job.golfers, [&](const Golfer& golfer) { return golfer.id == thing.id; });
    return validated(std::move(job));
  }
  Golfer& golfer = *findById(job.golfers, thing.owner);
  std::erase_if(golfer.clubs, [&](const Club& club) { return club.id == thing.id; });
  if (golfer.reach && golfer.reach->club == thing.id) golfer.reach.reset();
  return validated(std::move(job));
}

/// Calls `change` with the thing itself, whatever its kind.
template <class Change>
void withThing(Job& job, Id id, Change change) {
  const auto each = [&](auto& list) {
    if (auto* found = findById(list, id)) change(*found);
  };
  each(job.room.walls);
  each(job.room.openings);
  each(job.room.ceiling);
  each(job.room.fixtures);
  each(job.golfers);
  for (Golfer& golfer : job.golfers) each(golfer.clubs);
  each(job.bystanders);
  each(job.options);
  for (Option& option : job.options) {
    const auto part = [&](auto& kitPart) {
      if (kitPart.id == id) change(kitPart);
    };
    part(option.kit.frame);
    part(option.kit.screen);
    part(option.kit.mat);
    part(option.kit.monitor);
    part(option.kit.projector);
  }
  each(job.planScans);
  each(job.roomScans);
  each(job.originals);
}

}  // namespace

Result<Job> copyThing(Job job, Id id) {
  const auto thing = findThing(job, id);
  if (!thing) return detail::notThere("thing");
  switch (thing->kind) {
    case ThingKind::Fixture: {
      const Result<Job> added = addFixture(job, *findById(job.room.fixtures, id));
      return added ? moveFixture(*added, newestId(*added), Vec2(kBesideIt, 0)) : added;
    }
    case ThingKind::Bystander: {
      Bystander copy = *findById(job.bystanders, id);
      copy.position += Vec2(kBesideIt, 0);
      return addBystander(std::move(job), std::move(copy));
    }
    case ThingKind::Opening: {
      Opening copy = *findById(job.room.openings, id);
      const double offset = copy.offset.value;
      copy.offset.value = offset + copy.width.value;
      if (Result<Job> after = addOpening(job, copy)) return after;
      copy.offset.value = offset - copy.width.value;
      return addOpening(std::move(job), std::move(copy));
    }
    default:
      return detail::cannot(*thing, "copied", "There is one of it, or the list of what can be added has it.");
  }
}

Result<Job> removeThing(Job job, Id id) {
  const auto thing = findThing(job, id);
  if (!thing) return detail::notThere("thing");
  switch (thing->kind) {
    case ThingKind::Wall:
      return removeWallCorner(std::move(job), id);
    case ThingKind::Golfer:
    case ThingKind::Club:
      return removeGolferOrClub(std::move(job), *thing);
    case ThingKind::Option:
      return removeOption(std::move(job), id);
    case ThingKind::Frame:
    case ThingKind::Screen:
    case ThingKind::Mat:
      return detail::cannot(*thing, "removed", "A bay needs it: choose another one instead.");
    case ThingKind::Monitor:
      findById(job.options, thing->owner)->kit.hasMonitor = false;
      return validated(std::move(job));
    case ThingKind::Projector:
      findById(job.options, thing->owner)->kit.hasProjector = false;
      return validated(std::move(job));
    default:
      break;
  }
  const auto matches = [&](const auto& item) { return item.id == id; };
  std::erase_if(job.room.openings, matches);
  std::erase_if(job.room.ceiling, matches);
  std::erase_if(job.room.fixtures, matches);
  std::erase_if(job.bystanders, matches);
  std::erase_if(job.measurements, matches);
  std::erase_if(job.planScans, matches);
  std::erase_if(job.roomScans, matches);
  std::erase_if(job.originals, matches);
  return validated(std::move(job));
}

Result<Job> renameThing(Job job, Id id, const std::string& name) {
  if (!findThing(job, id)) return detail::notThere("thing");
  if (Measurement* measurement = findById(job.measurements, id)) measurement->note = name;
  withThing(job, id, [&](auto& thing) { thing.name = name; });
  return validated(std::move(job));
}

}  // namespace baywright
