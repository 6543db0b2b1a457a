// SPDX-License-Identifier: Apache-2.0
#include "job/edit_openings.h"

#include <algorithm>

#include "job/detail/editing.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

/// The offset nearest to the wanted one at which the opening lies within its wall; the start where it is too
/// wide.
double offsetWithin(const Opening& opening, double wallLength, double wanted) {
  return std::clamp(wanted, 0.0, std::max(0.0, wallLength - opening.width.value));
}

}  // namespace

void detail::keepOpeningsInWalls(Room& room) {
  for (Opening& opening : room.openings) {
    const auto line = wallLine(room, opening.wall);
    if (line) opening.offset.value = offsetWithin(opening, line->length, opening.offset.value);
  }
}

Result<Job> addOpening(Job job, Opening opening) {
  return detail::appended(std::move(job), &Room::openings, std::move(opening));
}

Result<Job> setOpening(Job job, const Opening& opening) {
  return detail::replaced(std::move(job), &Room::openings, opening, "opening");
}

Result<Job> moveOpening(Job job, Id id, double along) {
  Opening* opening = findById(job.room.openings, id);
  if (!opening) return detail::notThere("opening");
  const auto line = wallLine(job.room, opening->wall);
  if (!line) return detail::notThere("opening's wall");
  opening->offset.value = offsetWithin(*opening, line->length, opening->offset.value + along);
  return validated(std::move(job));
}

}  // namespace baywright
