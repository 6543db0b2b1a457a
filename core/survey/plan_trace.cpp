// SPDX-License-Identifier: Apache-2.0
#include "survey/plan_trace.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace baywright {
namespace {

struct Direction {
  Vec2 along;
  std::string inLine;
  std::string square;
};

bool isKnown(const std::vector<Direction>& known, const Vec2& along) {
  return std::any_of(known.begin(), known.end(), [&](const Direction& direction) {
    const double sine = std::abs(cross(direction.along, along));
    const double cosine = std::abs(direction.along.dot(along));
    return std::min(sine, cosine) < kSameDirection;
  });
}

std::vector<Direction> directionsOf(std::span<const Vec2> corners) {
  std::vector<Direction> directions;
  for (std::size_t i = 1; i < corners.size(); ++i) {
    const Vec2 side = corners[i] - corners[i - 1];
    if (!(side.norm() > 0)) continue;
    const Vec2 along = side.normalized();
    if (isKnown(directions, along)) continue;
    const std::string name = i == 1 ? "the first side" : "side " + std::to_string(i);
    directions.push_back({along, "in line with " + name, "square to " + name});
  }
  if (directions.empty()) directions.push_back({{1, 0}, "level", "upright"});
  return directions;
}

}  // namespace

std::vector<TraceLine> traceLines(std::span<const Vec2> corners) {
  std::vector<TraceLine> lines;
  if (corners.empty()) return lines;
  const auto directions = directionsOf(corners);
  const Vec2& last = corners.back();
  for (const Direction& direction : directions) {
    lines.push_back({last, direction.along, direction.inLine});
    lines.push_back({last, leftOf(direction.along), direction.square});
  }
  const Vec2 diagonal = (directions.front().along + leftOf(directions.front().along)) / std::numbers::sqrt2;
  lines.push_back({last, diagonal, "45°"});
  lines.push_back({last, leftOf(diagonal), "45°"});
  for (std::size_t i = 0; i + 1 < corners.size(); ++i) {
    const std::string what =
        i == 0 ? "in line with the first corner" : "in line with corner " + std::to_string(i + 1);
    for (const Direction& direction : directions) {
      lines.push_back({corners[i], direction.along, what});
      lines.push_back({corners[i], leftOf(direction.along), what});
    }
  }
  return lines;
}

Result<Vec2> cornerAtLength(const Vec2& last, const Vec2& pointer, double length) {
  const Vec2 toward = pointer - last;
  if (!(toward.norm() > 0)) {
    return fail("The pointer is on the last corner and shows no direction.", {},
                "Point the way that the wall runs, then type its length.");
  }
  return Vec2(last + length * toward.normalized());
}

Instrument drawnInstrument(const Job& job) {
  const bool overPlan = std::any_of(job.planScans.begin(), job.planScans.end(),
                                    [](const PlanScan& scan) { return scan.scaled && scan.visible; });
  return overPlan ? Instrument::Drawing : Instrument::Guess;
}

}  // namespace baywright
