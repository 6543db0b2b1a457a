// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <cmath>

#include "job/job.h"
#include "job/room_geometry.h"

namespace baywright::testing {

/// A turn about the world's origin, radians, and then a shift.
struct Move {
  double turn = 0;
  Vec2 shift = Vec2::Zero();

  Vec2 direction(const Vec2& v) const { return Eigen::Rotation2Dd(turn) * v; }
  Vec2 operator()(const Vec2& p) const { return direction(p) + shift; }
};

inline PlanCovariance mapped(const PlanCovariance& c, const Mat2& map) {
  Mat2 m;
  m << c.xx, c.xy, c.xy, c.yy;
  const Mat2 after = map * m * map.transpose();
  return {after(0, 0), after(0, 1), after(1, 1)};
}

/// Everything of the job at another place of the world, looking another way.
inline Job movedJob(Job job, const Move& move) {
  const Mat2 map = Eigen::Rotation2Dd(move.turn).toRotationMatrix();
  for (Wall& wall : job.room.walls) {
    wall.start = move(wall.start);
    wall.startCovariance = mapped(wall.startCovariance, map);
  }
  for (CeilingPart& part : job.room.ceiling) {
    for (Vec2& corner : part.region) corner = move(corner);
    part.anchor = move(part.anchor);
    part.slope = move.direction(part.slope);
  }
  for (Fixture& fixture : job.room.fixtures) {
    if (auto* box = std::get_if<BoxShape>(&fixture.shape)) {
      box->centre = move(box->centre);
      box->heading += move.turn;
    } else if (auto* round = std::get_if<CylinderShape>(&fixture.shape)) {
      round->centre = move(round->centre);
    } else {
      for (Vec2& corner : std::get<PrismShape>(fixture.shape).outline) corner = move(corner);
    }
  }
  for (Bystander& person : job.bystanders) person.position = move(person.position);
  for (Option& option : job.options) {
    option.placement.bay.origin = move(option.placement.bay.origin);
    option.placement.bay.heading += move.turn;
  }
  return job;
}

inline Vec2 inMirror(const Vec2& p) {
  return {-p.x(), p.y()};
}
inline Hand inMirror(Hand hand) {
  return hand == Hand::Right ? Hand::Left : Hand::Right;
}

/// Everything of the job as a mirror along y shows it: x is -x, right is left, and so are hands.
inline Job mirroredJob(Job job) {
  const Mat2 map = Vec2(-1, 1).asDiagonal();
  const std::vector<WallLine> lines = wallLines(job.room);
  std::vector<Wall> walls;
  for (std::size_t i = lines.size(); i-- > 0;) {
    Wall wall = job.room.walls[i];
    wall.start = inMirror(lines[i].end);
    wall.startCovariance = mapped(lines[i].endCovariance, map);
    walls.push_back(wall);
  }
  for (Opening& opening : job.room.openings) {
    const auto wall = wallLine(job.room, opening.wall);
    opening.offset.value = wall->length - opening.offset.value - opening.width.value;
    opening.hinge = opening.hinge == HingeSide::Start ? HingeSide::End : HingeSide::Start;
  }
  job.room.walls = walls;
  for (CeilingPart& part : job.room.ceiling) {
    for (Vec2& corner : part.region) corner = inMirror(corner);
    std::reverse(part.region.begin(), part.region.end());
    part.anchor = inMirror(part.anchor);
    part.slope = inMirror(part.slope);
  }
  for (Fixture& fixture : job.room.fixtures) {
    if (auto* box = std::get_if<BoxShape>(&fixture.shape)) {
      box->centre = inMirror(box->centre);
      box->heading = -box->heading;
    } else if (auto* round = std::get_if<CylinderShape>(&fixture.shape)) {
      round->centre = inMirror(round->centre);
    } else {
      for (Vec2& corner : std::get<PrismShape>(fixture.shape).outline) corner = inMirror(corner);
    }
  }
  for (Golfer& golfer : job.golfers) golfer.hand = inMirror(golfer.hand);
  for (Bystander& person : job.bystanders) person.position = inMirror(person.position);
  for (Option& option : job.options) {
    Placement& p = option.placement;
    p.bay.origin = inMirror(p.bay.origin);
    p.bay.heading = kPi - p.bay.heading;
    std::swap(p.strikeRightHanded, p.strikeLeftHanded);
    p.strikeRightHanded = -p.strikeRightHanded;
    p.strikeLeftHanded = -p.strikeLeftHanded;
    p.matCentre.y() = -p.matCentre.y();
    p.monitor.y() = -p.monitor.y();
    p.projector.lens.y() = -p.projector.lens.y();
    p.projector.yaw = -p.projector.yaw;
    p.projector.roll = -p.projector.roll;
    p.projector.shiftSide = -p.projector.shiftSide;
  }
  return job;
}

}  // namespace baywright::testing
