// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "job/job.h"

namespace baywright {

/// Everything that has an Id, in the order in which a tree lists the kinds.
enum class ThingKind {
  Wall,
  Opening,
  CeilingPart,
  Fixture,
  Golfer,
  Club,
  Bystander,
  Option,
  Frame,
  Screen,
  Mat,
  Monitor,
  Projector,
  Measurement,
  PlanScan,
  RoomScan,
  Original,
};

/// "Wall", "Ceiling", "Launch monitor": for people, in the singular.
std::string_view kindName(ThingKind kind);

/// What an Id stands for.
struct Thing {
  Id id;
  ThingKind kind = ThingKind::Wall;
  std::string name;  ///< as the fitter named it, else its kind and number: "Wall B", "Bystander 2"
  Id owner;          ///< a club's golfer, an opening's wall, a kit part's option; none for the rest
  /// Where it stands on the plan, world metres: the middle of a wall, an opening, a region or a shape; the
  /// bay's origin for frame, screen and option; the strike point for a golfer and a club; the first pixel of
  /// a plan. None for a measurement of no single place, and where there is no option to place it.
  std::optional<Vec2> position;
};

/// The thing with this id; nothing when there is none. Kit parts are found in every option, each placed as
/// its own option says. A monitor or projector that its option does without is not a thing.
std::optional<Thing> findThing(const Job& job, Id id);

/// Everything in the job, by kind in the order of ThingKind and then as the job lists it. Owners come before
/// what they own.
std::vector<Thing> allThings(const Job& job);

/// The thing's name, or "Nothing" for an id that names none: for sentences and labels.
std::string nameOf(const Job& job, Id id);

/// The option that owns this id: the option itself or one of its kit parts. Null when it is neither.
const Option* optionOf(const Job& job, Id id);

}  // namespace baywright
