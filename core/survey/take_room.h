// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "job/job.h"
#include "survey/recognised_room.h"

namespace baywright {

/// The job with what was recognised in place of the room it has: every proposal accepted. Walls, ceiling,
/// openings, fixtures, readings, scans and originals get new ids, and what refers to them follows; readings that name
/// nothing in the new room are dropped. The room keeps its name where the new one has none, and the bay goes
/// where startingPose puts it. Refused: what validate() refuses.
Result<Job> takeRoom(Job job, const RecognisedRoom& recognised);

}  // namespace baywright
