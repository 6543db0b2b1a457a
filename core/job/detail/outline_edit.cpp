// SPDX-License-Identifier: Apache-2.0
#include "job/detail/outline_edit.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "job/find.h"
#include "job/room_geometry.h"

namespace baywright::detail {
namespace {

/// Two corners this close are the same corner: a tenth of what a tape shows.
constexpr double kSameCorner = 1e-4;

/// Old walls for new corners, in the order of the new ones; null where a corner is new.
std::vector<const Wall*> successors(const std::vector<Wall>& old, const std::vector<Vec2>& corners) {
  std::vector<const Wall*> found(corners.size(), nullptr);
  if (old.size() == corners.size()) {
    for (std::size_t i = 0; i < old.size(); ++i) found[i] = &old[i];
    return found;
  }
  for (std::size_t i = 0; i < corners.size(); ++i)
    for (const Wall& wall : old)
      if ((wall.start - corners[i]).norm() < kSameCorner &&
          std::find(found.begin(), found.end(), &wall) == found.end())
        found[i] = &wall;
  return found;
}

/// A length between two such corners has the instrument's uncertainty: each end carries half of its variance.
PlanCovariance cornerCovariance(const std::vector<Vec2>& corners, std::size_t index, Instrument how) {
  const std::size_t count = corners.size();
  const double before = (corners[index] - corners[(index + count - 1) % count]).norm();
  const double after = (corners[(index + 1) % count] - corners[index]).norm();
  return PlanCovariance::isotropic(instrumentSigma(how, std::max(before, after)) / std::sqrt(2.0));
}

}  // namespace

std::string freeWallName(const std::vector<Wall>& walls) {
  for (std::size_t number = 0;; ++number) {
    const std::string name = wallLetters(number);
    if (std::none_of(walls.begin(), walls.end(), [&](const Wall& wall) { return wall.name == name; }))
      return name;
  }
}

std::vector<Wall> wallsOver(const std::vector<Vec2>& corners, Instrument how, Job& job) {
  const std::vector<const Wall*> old = successors(job.room.walls, corners);
  std::vector<Wall> walls(corners.size());
  for (std::size_t i = 0; i < corners.size(); ++i) {
    if (old[i]) walls[i] = *old[i];
    walls[i].start = corners[i];
    walls[i].startCovariance = cornerCovariance(corners, i, how);
  }
  for (std::size_t i = 0; i < corners.size(); ++i) {
    if (old[i]) continue;
    walls[i].id = job.takeId();
    walls[i].name = freeWallName(walls);
  }
  return walls;
}

void dropOrphans(Job& job) {
  const std::vector<Wall>& walls = job.room.walls;
  const auto gone = [&](Id id) { return id && !findById(walls, id); };
  std::erase_if(job.room.openings, [&](const Opening& opening) { return gone(opening.wall); });
  std::erase_if(job.measurements,
                [&](const Measurement& m) { return gone(m.from) || gone(m.to) || gone(m.at); });
}

}  // namespace baywright::detail
