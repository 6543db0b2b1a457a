// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "job/job.h"

/// How a new outline takes over from an old one. Internal to `job`.
namespace baywright::detail {

/// Walls over the corners (counter-clockwise), with id, name and thickness of those of the old walls that
/// they stand for; the rest get new ids and free names. Corners are as sure as `how` allows.
std::vector<Wall> wallsOver(const std::vector<Vec2>& corners, Instrument how, Job& job);

/// The first of "A" ... "Z", "AA", "AB" ... that no wall has.
std::string freeWallName(const std::vector<Wall>& walls);

/// Takes out what names a wall that is not there any more.
void dropOrphans(Job& job);

}  // namespace baywright::detail
