// SPDX-License-Identifier: Apache-2.0
#include "drawing/wall_bands.h"

#include <algorithm>
#include <cmath>

#include "job/find.h"
#include "job/room_geometry.h"

namespace baywright::detail {
namespace {

// A mitre is at most this many times the wall's thickness long, as at a corner of 20 degrees.
constexpr double kLongestMitre = 6;

// How far from the wall's own end its outer face ends, measured along the wall; positive lengthens it. `turn`
// is the left turn from this wall to its neighbour at that corner, `other` the neighbour's thickness.
double mitre(double turn, double thickness, double other) {
  const double sine = std::sin(turn);
  if (std::abs(sine) < 1e-9) return 0;  // in line: the outer faces meet square, or not at all
  const double length = (other - thickness * std::cos(turn)) / sine;
  const double limit = kLongestMitre * std::max(thickness, other);
  // A left turn is an inner corner of the room, so the outer face runs on past the corner.
  return std::clamp(length, -limit, limit);
}

double turnBetween(const Vec2& from, const Vec2& to) {
  return std::atan2(cross(from, to), from.dot(to));
}

// Openings of a wall as stretches along it, in order, within the wall.
std::vector<std::pair<double, double>> gapsOf(const Room& room, const WallLine& line) {
  std::vector<std::pair<double, double>> gaps;
  for (const Opening& opening : room.openings) {
    if (opening.wall != line.wall) continue;
    const double from = std::clamp(opening.offset.value, 0.0, line.length);
    const double to = std::clamp(opening.offset.value + opening.width.value, 0.0, line.length);
    if (from < to) gaps.emplace_back(from, to);
  }
  std::sort(gaps.begin(), gaps.end());
  return gaps;
}

struct BandEnds {
  double thickness;
  double outerFrom;  // where the outer face starts and ends, along the wall
  double outerTo;
};

WallBand bandOf(const Room& room, const WallLine& line, const BandEnds& ends) {
  WallBand band;
  band.wall = line.wall;
  const auto outer = [&](double at) { return Vec2(line.at(at) - ends.thickness * line.inward); };
  double from = 0;
  double outerFrom = ends.outerFrom;
  const auto addSolid = [&](double to, double outerTo) {
    if (to <= from && outerTo <= outerFrom) return;
    band.solids.push_back({outer(outerFrom), outer(outerTo), line.at(to), line.at(from)});
    band.edges.push_back({line.at(from), line.at(to)});
    band.edges.push_back({outer(outerFrom), outer(outerTo)});
  };
  for (const auto& [gapFrom, gapTo] : gapsOf(room, line)) {
    addSolid(gapFrom, gapFrom);
    for (const double jamb : {gapFrom, gapTo}) band.edges.push_back({line.at(jamb), outer(jamb)});
    from = outerFrom = std::max(gapTo, from);
  }
  addSolid(line.length, ends.outerTo);
  return band;
}

}  // namespace

std::vector<WallBand> wallBands(const Room& room) {
  const auto lines = wallLines(room);
  std::vector<WallBand> bands;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const std::size_t next = (i + 1) % lines.size();
    const std::size_t previous = (i + lines.size() - 1) % lines.size();
    const double own = room.walls[i].thickness;
    const double before =
        mitre(turnBetween(lines[previous].along, lines[i].along), own, room.walls[previous].thickness);
    const double after =
        mitre(turnBetween(lines[i].along, lines[next].along), own, room.walls[next].thickness);
    bands.push_back(bandOf(room, lines[i], {own, -before, lines[i].length + after}));
  }
  return bands;
}

}  // namespace baywright::detail
