// SPDX-License-Identifier: Apache-2.0
#include "clearance/standing_area.h"

#include <algorithm>
#include <cmath>

#include "clearance/headroom_field.h"
#include "clearance/quantities.h"
#include "geometry/polygon.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

/// kStandingCell, or what makes about kNodes of a larger room; a metre at most.
double cellFor(const Room& room) {
  constexpr double kNodes = 60'000;
  const auto box = planBox(room);
  const double area = box ? box->size().prod() : 0;
  return std::clamp(std::sqrt(area / kNodes), kStandingCell, 1.0);
}

}  // namespace

std::vector<Quantity> standingAreas(const Job& job) {
  std::vector<Quantity> areas;
  const double cell = cellFor(job.room);
  for (const Golfer& golfer : job.golfers) {
    if (!golfer.swings) continue;
    for (const Club& club : golfer.clubs) {
      const HeadroomQuestion question{golfer.id, club.id, job.option().placement.bay.heading, cell};
      const auto field = headroomField(job, question, {});
      if (!field || !*field) continue;
      double area = 0;
      for (const Ring& ring : (*field)->zone) area += signedArea(ring);
      areas.push_back(
          {figureName({"swing", idText(golfer.id), idText(club.id), "standing_area"}), area, "m2"});
    }
  }
  std::sort(areas.begin(), areas.end(), [](const Quantity& a, const Quantity& b) { return a.name < b.name; });
  return areas;
}

}  // namespace baywright
