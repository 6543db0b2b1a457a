// SPDX-License-Identifier: Apache-2.0
#include "job/room_starts.h"

#include <cmath>

#include "job/bay_start.h"
#include "job/edit_room.h"
#include "job/room_geometry.h"
#include "job/validate.h"

namespace baywright {
namespace {

std::vector<Vec2> cornersOf(const RectangleFloor& floor) {
  const double x = floor.length.value;
  const double y = floor.width.value;
  return {{0, 0}, {x, 0}, {x, y}, {0, y}};
}

std::vector<Vec2> cornersOf(const LShapeFloor& floor) {
  const double x = floor.length.value;
  const double y = floor.width.value;
  const double cutX = x - floor.cutLength.value;
  const double cutY = y - floor.cutWidth.value;
  return {{0, 0}, {x, 0}, {x, cutY}, {cutX, cutY}, {cutX, y}, {0, y}};
}

/// The size with a name, for a sentence.
struct NamedSize {
  const char* name;
  double value;
};

std::vector<NamedSize> sizesOf(const RectangleFloor& floor) {
  return {{"length", floor.length.value}, {"width", floor.width.value}};
}

std::vector<NamedSize> sizesOf(const LShapeFloor& floor) {
  return {{"length", floor.length.value},
          {"width", floor.width.value},
          {"cut's length", floor.cutLength.value},
          {"cut's width", floor.cutWidth.value},
          {"length beside the cut", floor.length.value - floor.cutLength.value},
          {"width beside the cut", floor.width.value - floor.cutWidth.value}};
}

/// Each corner gets half of the variance of a length along x and y, so that the typed lengths come back with
/// their instruments' accuracy.
PlanCovariance covarianceOf(const Dimension& length, const Dimension& width) {
  const double x = instrumentSigma(length.how, length.value);
  const double y = instrumentSigma(width.how, width.value);
  return {x * x / 2, 0, y * y / 2};
}

CeilingPart part(Job& job, const std::string& name, const Dimension& height) {
  CeilingPart made;
  made.id = job.takeId();
  made.name = name;
  made.height = height;
  return made;
}

void addCeiling(Job& job, const FlatCeiling& ceiling, const Vec2&) {
  job.room.ceiling.push_back(part(job, "Ceiling", ceiling.height));
}

void addCeiling(Job& job, const SlopedCeiling& ceiling, const Vec2& floorSize) {
  CeilingPart plane = part(job, "Sloped ceiling", ceiling.low);
  plane.height.known = ceiling.low.known && ceiling.high.known;
  const double rise = ceiling.high.value - ceiling.low.value;
  if (ceiling.direction == SlopedCeiling::Direction::AlongLength)
    plane.slope = {rise / floorSize.x(), 0};
  else
    plane.slope = {0, rise / floorSize.y()};
  job.room.ceiling.push_back(plane);
}

void addCeiling(Job& job, const SteppedCeiling& ceiling, const Vec2& floorSize) {
  job.room.ceiling.push_back(part(job, "Ceiling", ceiling.height));
  CeilingPart strip = part(job, "Lower ceiling", ceiling.lowHeight);
  const double x = ceiling.stripLength.value;
  const double y = floorSize.y();
  strip.region = {{0, 0}, {x, 0}, {x, y}, {0, y}};
  job.room.ceiling.push_back(strip);
}

}  // namespace

Result<Job> startRoom(Job job, const FloorStart& floor, const CeilingStart& ceiling) {
  for (const NamedSize& size : std::visit([](const auto& start) { return sizesOf(start); }, floor))
    if (!(size.value > 0) || !std::isfinite(size.value))
      return fail(std::string("The ") + size.name + " must be more than nothing.", "room / floor");

  const auto [length, width] = std::visit([](const auto& f) { return std::pair(f.length, f.width); }, floor);
  const Vec2 floorSize(length.value, width.value);
  job.room = Room{job.room.name, {}, {}, {}, {}};
  job.measurements.clear();
  std::visit([&](const auto& start) { addCeiling(job, start, floorSize); }, ceiling);

  auto made = setRoomOutline(std::move(job), std::visit([](const auto& f) { return cornersOf(f); }, floor),
                             length.how);
  if (!made) return made;
  if (!made->options.empty()) {
    made->option().placement.bay = startingPose(made->room, made->option().kit.frame);
  }
  for (Wall& wall : made->room.walls) wall.startCovariance = covarianceOf(length, width);
  return validated(std::move(*made));
}

}  // namespace baywright
