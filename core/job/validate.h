// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

/// Every invariant of a Job that is broken, in the order of the document; empty: the job may be assessed,
/// drawn and saved. Each problem is a sentence with the thing's name and the number in the job's unit; its
/// `where` is a path such as "people / Robin / stature".
///
/// Held: all numbers finite and within what a room, a person or a maker could mean (job/limits.h); ids
/// present, different, and not above lastId; references that name something of the right kind; a floor that
/// is a simple counter-clockwise polygon; a ceiling over a floor; openings within their wall and clear of
/// each other; a projector on the golfer's side of the screen; at least one option.
///
/// Not held, because assess() has a verdict for it: whether anything fits, touches, or is in range. A room
/// without walls is valid: it has not been surveyed yet.
std::vector<Problem> validate(const Job& job);

/// The job itself, or its first problem; says how many more there are.
Result<Job> validated(Job job);

}  // namespace baywright
