// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

// Verbs for whatever is selected, so that a view needs to know no kinds.

/// The id that the last add gave out.
inline Id newestId(const Job& job) {
  return Id{job.lastId};
}

/// Moves the thing on the plan by world metres, as a drag does:
///   option, frame, screen   the whole bay             mat       with strike points and monitor
///   golfer, club            the golfer's strike point  wall     along its normal (moveWall)
///   opening                 along its wall             the rest  as they are
/// What turns nowhere or stands nowhere (a measurement, a 3D scan, a locked plan) is refused with a sentence.
/// Kit parts of an option that is not active move in that option.
Result<Job> translate(Job job, Id thing, const Vec2& by);

/// Turns the thing about its own position, radians, counter-clockwise: the bay by any of option, frame,
/// screen (about the bay's origin); fixture, ceiling region, plan scan about their middle; the projector in
/// its yaw. What has no direction of its own is refused with a sentence.
Result<Job> rotate(Job job, Id thing, double angle);

/// Another fixture, bystander or opening like this one, beside it: kBesideIt to the right on the plan; an
/// opening after it in its wall, or before it where there is no room after. The rest is there once or comes
/// from the catalogue: refused with a sentence, as is a wall without room for a second opening.
Result<Job> copyThing(Job job, Id thing);
inline constexpr double kBesideIt = 0.5;  ///< metres

/// Takes the thing out of the job. A golfer's clubs, a wall's openings and the measurements that name a wall
/// go with it; a monitor or projector is left out of its option. A frame, screen or mat stays: a bay cannot
/// do without. Removing a wall takes away the corner where it starts.
Result<Job> removeThing(Job job, Id thing);

/// Measurements have no name: their note is set.
Result<Job> renameThing(Job job, Id thing, const std::string& name);

}  // namespace baywright
