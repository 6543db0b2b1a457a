// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "job/fixture.h"
#include "job/golfer.h"
#include "job/kit.h"
#include "job/opening.h"

namespace baywright {

/// Usual sizes to pick from. Ids are zero: whoever puts an entry into a job gives it one. Fixtures stand at
/// the world's origin, openings name no wall. Read from resources by jobfile/catalogue_json.h.
struct Catalogue {
  std::vector<Frame> frames;
  std::vector<Screen> screens;
  std::vector<Mat> mats;
  std::vector<LaunchMonitor> monitors;
  std::vector<Projector> projectors;
  std::vector<Club> clubs;
  std::vector<Fixture> fixtures;
  std::vector<Opening> openings;

  bool operator==(const Catalogue&) const = default;
};

}  // namespace baywright
