// SPDX-License-Identifier: Apache-2.0
#include "survey/take_room.h"

#include <map>

#include "job/bay_start.h"
#include "job/validate.h"

namespace baywright {
namespace {

/// New ids for old ones, by kind: different kinds may share an id before they are in a job.
class NewIds {
 public:
  explicit NewIds(Job& job) : job_(job) {}

  Id give(Id old) {
    const Id made = job_.takeId();
    ids_[old] = made;
    return made;
  }
  /// Nothing stays nothing.
  Id at(Id old) const {
    const auto found = ids_.find(old);
    return found == ids_.end() ? Id{} : found->second;
  }
  bool knows(Id old) const { return !old || ids_.contains(old); }

 private:
  Job& job_;
  std::map<Id, Id> ids_;
};

}  // namespace

Result<Job> takeRoom(Job job, const RecognisedRoom& recognised) {
  const std::string name = recognised.room.name.empty() ? job.room.name : recognised.room.name;
  job.room = recognised.room;
  job.room.name = name;
  NewIds walls(job);
  for (Wall& wall : job.room.walls) wall.id = walls.give(wall.id);
  for (CeilingPart& part : job.room.ceiling) part.id = job.takeId();
  for (Opening& opening : job.room.openings) {
    opening.id = job.takeId();
    opening.wall = walls.at(opening.wall);
  }
  for (Fixture& fixture : job.room.fixtures) fixture.id = job.takeId();
  job.measurements.clear();
  for (Measurement reading : recognised.measurements) {
    if (!walls.knows(reading.from) || !walls.knows(reading.to) || !walls.knows(reading.at)) continue;
    reading.id = job.takeId();
    reading.from = walls.at(reading.from);
    reading.to = walls.at(reading.to);
    reading.at = walls.at(reading.at);
    job.measurements.push_back(std::move(reading));
  }
  job.roomScans.clear();
  for (RoomScan scan : recognised.scans) {
    scan.id = job.takeId();
    job.roomScans.push_back(std::move(scan));
  }
  job.originals.clear();
  for (Original original : recognised.originals) {
    original.id = job.takeId();
    job.originals.push_back(std::move(original));
  }
  for (Option& option : job.options) option.placement.bay = startingPose(job.room, option.kit.frame);
  return validated(std::move(job));
}

}  // namespace baywright
