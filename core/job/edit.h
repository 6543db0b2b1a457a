// SPDX-License-Identifier: Apache-2.0
#pragma once

/// The verbs of the program. Each takes a job and answers the job after the edit, or a sentence that says why
/// it cannot be done; the job given is never changed, so that undo is to keep it. What comes back has passed
/// validate(). A thing that is added gets new ids whatever ids it brings (clubs of a golfer too); the thing
/// itself gets the last one: `newestId(after)`. A thing that is set replaces the one with the same id.
/// Verbs about kit and placement change the active option.

#include "job/edit_fixtures.h"
#include "job/edit_kit.h"
#include "job/edit_openings.h"
#include "job/edit_options.h"
#include "job/edit_people.h"
#include "job/edit_placement.h"
#include "job/edit_record.h"
#include "job/edit_room.h"
#include "job/edit_scans.h"
#include "job/edit_thing.h"
