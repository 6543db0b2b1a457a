// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

Result<Job> addGolfer(Job job, Golfer golfer);
/// Clubs without an id are new ones. A measured reach with a club that is gone goes too.
Result<Job> setGolfer(Job job, Golfer golfer);
Result<Job> addClub(Job job, Id golfer, Club club);
Result<Job> setClub(Job job, const Club& club);

Result<Job> addBystander(Job job, Bystander bystander);
Result<Job> setBystander(Job job, const Bystander& bystander);
/// `by` in world metres.
Result<Job> moveBystander(Job job, Id bystander, const Vec2& by);

}  // namespace baywright
