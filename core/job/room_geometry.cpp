// SPDX-License-Identifier: Apache-2.0
#include "job/room_geometry.h"

#include <algorithm>
#include <cmath>

#include "job/find.h"

namespace baywright {
namespace {

WallLine lineAt(const Room& room, std::size_t index) {
  const Wall& wall = room.walls[index];
  const Wall& next = room.walls[(index + 1) % room.walls.size()];
  WallLine line;
  line.wall = wall.id;
  line.name = wall.name;
  line.start = wall.start;
  line.end = next.start;
  line.length = (line.end - line.start).norm();
  if (line.length > 0) line.along = (line.end - line.start) / line.length;
  line.inward = leftOf(line.along);
  line.startCovariance = wall.startCovariance;
  line.endCovariance = next.startCovariance;
  return line;
}

}  // namespace

double WallLine::sigmaAt(double offset) const {
  const double share = length > 0 ? std::clamp(offset / length, 0.0, 1.0) : 0.0;
  return std::hypot((1 - share) * startCovariance.sigmaAlong(inward),
                    share * endCovariance.sigmaAlong(inward));
}

Ring outline(const Room& room) {
  Ring ring;
  ring.reserve(room.walls.size());
  for (const Wall& wall : room.walls) ring.push_back(wall.start);
  return ring;
}

std::string wallLetters(std::size_t number) {
  std::string name;
  for (std::size_t rest = number + 1; rest > 0; rest = (rest - 1) / 26)
    name.insert(name.begin(), static_cast<char>('A' + (rest - 1) % 26));
  return name;
}

std::vector<WallLine> wallLines(const Room& room) {
  std::vector<WallLine> lines;
  lines.reserve(room.walls.size());
  for (std::size_t i = 0; i < room.walls.size(); ++i) lines.push_back(lineAt(room, i));
  return lines;
}

std::optional<WallLine> wallLine(const Room& room, Id wall) {
  const Wall* found = findById(room.walls, wall);
  if (!found) return std::nullopt;
  return lineAt(room, static_cast<std::size_t>(found - room.walls.data()));
}

std::optional<OpeningPlace> openingPlace(const Room& room, Id opening) {
  const Opening* found = findById(room.openings, opening);
  if (!found) return std::nullopt;
  const auto line = wallLine(room, found->wall);
  if (!line) return std::nullopt;
  OpeningPlace place;
  place.opening = opening;
  place.wall = found->wall;
  place.start = line->at(found->offset.value);
  place.end = line->at(found->offset.value + found->width.value);
  place.along = line->along;
  place.inward = line->inward;
  place.bottom = found->sill.value;
  place.top = found->sill.value + found->height.value;
  return place;
}

std::optional<CeilingPoint> ceilingAt(const Room& room, const Vec2& point) {
  std::optional<CeilingPoint> lowest;
  for (const CeilingPart& part : room.ceiling) {
    if (!part.region.empty() && locate(part.region, point) == Location::Outside) continue;
    const double height = part.heightAt(point);
    if (!lowest || height < lowest->height) lowest = {part.id, height};
  }
  return lowest;
}

std::optional<double> ceilingHeightAt(const Room& room, const Vec2& point) {
  const auto found = ceilingAt(room, point);
  return found ? std::optional(found->height) : std::nullopt;
}

Ring ceilingRegion(const Room& room, const CeilingPart& part) {
  return part.region.empty() ? outline(room) : part.region;
}

CeilingSpan spanOver(const CeilingPart& part, const Ring& region) {
  if (region.empty()) return {part.height.value, part.height.value};
  const double first = part.heightAt(region.front());
  CeilingSpan span{first, first};
  for (const Vec2& corner : region) {
    span.low = std::min(span.low, part.heightAt(corner));
    span.high = std::max(span.high, part.heightAt(corner));
  }
  return span;
}

double floorArea(const Room& room) {
  const Ring ring = outline(room);
  return std::abs(signedArea(ring));
}

bool isInside(const Room& room, const Vec2& point) {
  return room.walls.size() >= 3 && locate(outline(room), point) != Location::Outside;
}

std::optional<PlanBox> planBox(const Room& room) {
  if (room.walls.empty()) return std::nullopt;
  PlanBox box{room.walls.front().start, room.walls.front().start};
  for (const Wall& wall : room.walls) {
    box.low = box.low.cwiseMin(wall.start);
    box.high = box.high.cwiseMax(wall.start);
  }
  return box;
}

std::optional<double> cornerSigma(const Room& room, Id wall, const Vec2& unit) {
  const Wall* found = findById(room.walls, wall);
  return found ? std::optional(found->startCovariance.sigmaAlong(unit)) : std::nullopt;
}

PlanCovariance withVarianceAlong(const PlanCovariance& covariance, const Vec2& unit, double variance) {
  const Vec2 across = leftOf(unit);
  const double varianceAcross = std::pow(covariance.sigmaAlong(across), 2);
  return {variance * unit.x() * unit.x() + varianceAcross * across.x() * across.x(),
          variance * unit.x() * unit.y() + varianceAcross * across.x() * across.y(),
          variance * unit.y() * unit.y() + varianceAcross * across.y() * across.y()};
}

}  // namespace baywright
