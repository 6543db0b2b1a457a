// SPDX-License-Identifier: Apache-2.0
#include <array>

#include "clearance/door_geometry.h"
#include "clearance/obstacles.h"
#include "clearance/wording.h"

namespace baywright {

Obstacles doorObstacles(const Job& job) {
  Obstacles obstacles;
  for (const Opening& opening : job.room.openings) {
    if (opening.kind != OpeningKind::SectionalDoor) continue;
    const auto door = sectionalDoor(job.room, opening);
    if (!door) continue;
    RoomObstacle like;
    like.id = opening.id;
    like.uncertainty = door->uncertainty;
    like.missing = door->missing;
    const auto add = [&](ObstacleKind kind, const std::string& name, const ConvexPolyhedron& body) {
      RoomObstacle obstacle = withSolid(like, body);
      obstacle.kind = kind;
      obstacle.name = name;
      obstacle.overhead = obstacle.bounds.low.z() > 1.0;
      obstacles.push_back(std::move(obstacle));
    };
    const std::string name = inSentence(opening.name);
    for (const ConvexPolyhedron& track : door->tracks)
      add(ObstacleKind::DoorTrack, "the track of " + name, track);
    if (opening.staysOpen && door->open) add(ObstacleKind::SectionalDoor, name + " when open", *door->open);
  }
  return obstacles;
}

}  // namespace baywright
