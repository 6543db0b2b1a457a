// SPDX-License-Identifier: Apache-2.0
#include "drawing/room_section.h"

#include <algorithm>
#include <cmath>

#include "job/find.h"
#include "job/room_geometry.h"

namespace baywright::detail {
namespace {

// Breaks in the ceiling closer than this are one.
constexpr double kSameBreak = 1e-6;

double side(const SectionLine& line, const Vec2& p) {
  return cross(line.along, p - line.through);
}

WallCut cutOf(const Room& room, const WallLine& wall, const SectionLine& line) {
  const double a = side(line, wall.start);
  const double b = side(line, wall.end);
  const Vec2 at = wall.start + a / (a - b) * (wall.end - wall.start);
  WallCut cut;
  cut.wall = wall.wall;
  cut.x = line.xOf(at);
  // The masonry lies behind the face; a slanting wall is cut slanting.
  const double slant = -line.along.dot(wall.inward);
  const double thickness = findById(room.walls, wall.wall)->thickness;
  cut.xOuter = cut.x + thickness / slant;
  const double offset = (at - wall.start).dot(wall.along);
  for (const Opening& opening : room.openings) {
    if (opening.wall != wall.wall) continue;
    if (offset <= opening.offset.value || offset >= opening.offset.value + opening.width.value) continue;
    cut.opening = opening.id;
    cut.openingBottom = opening.sill.value;
    cut.openingTop = opening.sill.value + opening.height.value;
  }
  return cut;
}

// Each wall owns its start only, so a plane through a corner meets one wall there or two that cancel.
std::vector<WallCut> cutsOf(const Room& room, const SectionLine& line) {
  std::vector<WallCut> cuts;
  for (const WallLine& wall : wallLines(room)) {
    if ((side(line, wall.start) <= 0) == (side(line, wall.end) <= 0)) continue;
    cuts.push_back(cutOf(room, wall, line));
  }
  std::stable_sort(cuts.begin(), cuts.end(), [](const WallCut& a, const WallCut& b) { return a.x < b.x; });
  return cuts;
}

// Where the lowest part may change: edges of regions, and where two planes cross.
std::vector<double> breaksOf(const Room& room, const SectionLine& line, double from, double to) {
  std::vector<double> breaks{from, to};
  const auto add = [&](double x) {
    if (x > from && x < to) breaks.push_back(x);
  };
  for (std::size_t i = 0; i < room.ceiling.size(); ++i) {
    const CeilingPart& part = room.ceiling[i];
    for (std::size_t k = 0; k < part.region.size(); ++k) {
      const Vec2& p = part.region[k];
      const Vec2& q = part.region[(k + 1) % part.region.size()];
      const double a = side(line, p);
      const double b = side(line, q);
      if ((a <= 0) != (b <= 0)) add(line.xOf(p + a / (a - b) * (q - p)));
    }
    for (std::size_t k = 0; k < i; ++k) {
      const CeilingPart& other = room.ceiling[k];
      const double slope = (part.slope - other.slope).dot(line.along);
      if (slope != 0) add((other.heightAt(line.at(0)) - part.heightAt(line.at(0))) / slope);
    }
  }
  std::sort(breaks.begin(), breaks.end());
  return breaks;
}

std::vector<CeilingStretch> ceilingOf(const Room& room, const SectionLine& line, double from, double to) {
  std::vector<CeilingStretch> stretches;
  const auto breaks = breaksOf(room, line, from, to);
  for (std::size_t i = 0; i + 1 < breaks.size(); ++i) {
    if (breaks[i + 1] - breaks[i] < kSameBreak) continue;
    const auto over = ceilingAt(room, line.at((breaks[i] + breaks[i + 1]) / 2));
    if (!over) continue;
    const CeilingPart& part = *findById(room.ceiling, over->part);
    const double endHeight = part.heightAt(line.at(breaks[i + 1]));
    if (!stretches.empty() && stretches.back().part == part.id &&
        breaks[i] - stretches.back().to < kSameBreak) {
      stretches.back().to = breaks[i + 1];
      stretches.back().heightTo = endHeight;
      continue;
    }
    stretches.push_back(
        {part.id, breaks[i], breaks[i + 1], part.heightAt(line.at(breaks[i])), endHeight, part.height.known});
  }
  return stretches;
}

}  // namespace

std::vector<RoomStretch> sectionOf(const Room& room, const SectionLine& line) {
  const auto cuts = cutsOf(room, line);
  std::vector<RoomStretch> section;
  for (std::size_t i = 0; i + 1 < cuts.size(); i += 2) {
    section.push_back({cuts[i], cuts[i + 1], ceilingOf(room, line, cuts[i].x, cuts[i + 1].x)});
  }
  return section;
}

std::vector<CeilingStretch> ceilingBefore(const Room& room, const WallLine& wall) {
  constexpr double kBefore = 0.005;  // metres: over the face itself two parts may meet
  const SectionLine before{wall.end + kBefore * wall.inward, -wall.along};
  std::vector<CeilingStretch> over;
  for (const RoomStretch& stretch : sectionOf(room, before)) {
    for (CeilingStretch part : stretch.ceiling) {
      const double from = std::max(0.0, part.from);
      const double to = std::min(wall.length, part.to);
      if (to - from <= kBefore) continue;
      const double rise = (part.heightTo - part.heightFrom) / (part.to - part.from);
      const double low = part.heightFrom - rise * part.from;  // carried on to the wall's end
      // The cut ends where the walls beside it stand, a hair from the wall's own ends.
      part.from = from <= kBefore ? 0 : from;
      part.to = wall.length - to <= kBefore ? wall.length : to;
      part.heightFrom = low + rise * part.from;
      part.heightTo = low + rise * part.to;
      over.push_back(part);
    }
  }
  return over;
}

std::optional<double> heightAt(const std::vector<RoomStretch>& section, double x) {
  for (const RoomStretch& stretch : section) {
    for (const CeilingStretch& part : stretch.ceiling) {
      if (x < part.from || x > part.to) continue;
      const double share = (x - part.from) / (part.to - part.from);
      return part.heightFrom + share * (part.heightTo - part.heightFrom);
    }
  }
  return std::nullopt;
}

}  // namespace baywright::detail
