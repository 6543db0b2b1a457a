// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_ring.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace baywright {
namespace {

constexpr double kMostChanged = 0.1;  ///< share of the floor that a short side may decide on

struct Step {
  int line = kFrameEdge;
  int from = 0;
  int to = 0;
  bool isTaken = false;
};

std::vector<Step> boundarySteps(const PlanFaces& plan, const std::vector<bool>& inside) {
  std::vector<Step> steps;
  for (std::size_t f = 0; f < plan.faces.size(); ++f) {
    if (!inside[f]) continue;
    for (const FaceEdge& edge : plan.faces[f].edges)
      if (edge.neighbour == kNoFace || !inside[static_cast<std::size_t>(edge.neighbour)])
        steps.push_back({edge.line, edge.from, edge.to, false});
  }
  return steps;
}

/// The step to go on with: where faces touch in a corner only, the one that turns most to the left keeps to
/// one side of it.
Step* nextStep(std::vector<Step>& steps, const Step& last, const std::vector<Vec2>& vertices) {
  const auto direction = [&](const Step& step) -> Vec2 {
    return vertices[static_cast<std::size_t>(step.to)] - vertices[static_cast<std::size_t>(step.from)];
  };
  Step* best = nullptr;
  double most = -4;
  for (Step& step : steps) {
    if (step.isTaken || step.from != last.to) continue;
    const double turn =
        std::atan2(cross(direction(last), direction(step)), direction(last).dot(direction(step)));
    if (turn <= most) continue;
    most = turn;
    best = &step;
  }
  return best;
}

SideRing joinedSides(const std::vector<Step>& loop, const std::vector<Vec2>& vertices) {
  SideRing ring;
  const std::size_t n = loop.size();
  for (std::size_t i = 0; i < n; ++i) {
    if (loop[i].line == loop[(i + n - 1) % n].line) continue;
    ring.lines.push_back(loop[i].line);
    ring.corners.push_back(vertices[static_cast<std::size_t>(loop[i].from)]);
  }
  return ring;
}

std::optional<Vec2> crossing(const ScanLine& a, const ScanLine& b) {
  constexpr double kParallel = 0.05;  // sine of 3 degrees: beyond it a corner is nowhere in particular
  const double det = cross(a.normal, b.normal);
  if (std::abs(det) < kParallel) return std::nullopt;
  return Vec2((a.offset * b.normal.y() - b.offset * a.normal.y()) / det,
              (a.normal.x() * b.offset - b.normal.x() * a.offset) / det);
}

/// The ring of these lines in their order; nothing where two neighbours are nearly parallel or a side has
/// turned round.
std::optional<SideRing> ringAlong(std::vector<int> sides, const std::vector<ScanLine>& lines) {
  for (std::size_t i = 0; i < sides.size() && sides.size() > 2;)
    if (sides[i] == sides[(i + 1) % sides.size()])
      sides.erase(sides.begin() + static_cast<std::ptrdiff_t>(i));
    else
      ++i;
  if (sides.size() < 3) return std::nullopt;
  SideRing ring{sides, {}};
  const std::size_t n = sides.size();
  for (std::size_t i = 0; i < n; ++i) {
    const auto corner = crossing(lines[static_cast<std::size_t>(sides[(i + n - 1) % n])],
                                 lines[static_cast<std::size_t>(sides[i])]);
    if (!corner) return std::nullopt;
    ring.corners.push_back(*corner);
  }
  return ring;
}

double lengthOf(const SideRing& ring, std::size_t side) {
  return (ring.corners[(side + 1) % ring.corners.size()] - ring.corners[side]).norm();
}

/// One short side fewer.
std::optional<SideRing> withoutSide(const SideRing& ring, std::size_t side,
                                    const std::vector<ScanLine>& lines) {
  const std::size_t n = ring.lines.size();
  const std::size_t before = (side + n - 1) % n;
  const std::size_t after = (side + 1) % n;
  std::vector<int> sides = ring.lines;
  const Vec2& u = lines[static_cast<std::size_t>(sides[before])].normal;
  const Vec2& v = lines[static_cast<std::size_t>(sides[after])].normal;
  std::vector<std::size_t> gone{side};
  if (std::abs(u.dot(v)) > 0.98)
    gone.push_back(lengthOf(ring, before) < lengthOf(ring, after) ? before : after);
  std::vector<int> kept;
  for (std::size_t i = 0; i < n; ++i)
    if (std::find(gone.begin(), gone.end(), i) == gone.end()) kept.push_back(sides[i]);
  return ringAlong(kept, lines);
}

}  // namespace

SideRing largestRing(const PlanFaces& plan, const std::vector<bool>& inside) {
  auto steps = boundarySteps(plan, inside);
  SideRing best;
  double most = 0;
  for (Step& start : steps) {
    if (start.isTaken) continue;
    start.isTaken = true;
    std::vector<Step> loop{start};
    while (loop.back().to != loop.front().from) {
      Step* next = nextStep(steps, loop.back(), plan.vertices);
      if (!next) break;
      next->isTaken = true;
      loop.push_back(*next);
    }
    const bool isOpen = loop.back().to != loop.front().from;
    const bool hasFrame =
        std::any_of(loop.begin(), loop.end(), [](const Step& s) { return s.line == kFrameEdge; });
    if (isOpen || hasFrame) continue;
    SideRing ring = joinedSides(loop, plan.vertices);
    const double ringArea = signedArea(ring.corners);
    if (ringArea <= most) continue;
    most = ringArea;
    best = std::move(ring);
  }
  return best;
}

SideRing tidied(SideRing ring, const std::vector<ScanLine>& lines, const LeastLength& leastLength) {
  while (ring.lines.size() > 3) {
    std::vector<std::pair<double, std::size_t>> shortSides;
    for (std::size_t i = 0; i < ring.lines.size(); ++i)
      if (const double share = lengthOf(ring, i) / leastLength(ring, i); share < 1)
        shortSides.emplace_back(share, i);
    std::sort(shortSides.begin(), shortSides.end());
    std::optional<SideRing> next;
    for (const auto& [share, side] : shortSides) {
      next = withoutSide(ring, side, lines);
      const double before = signedArea(ring.corners);
      if (next && std::abs(signedArea(next->corners) - before) < kMostChanged * before) break;
      next.reset();
    }
    if (!next) break;
    ring = std::move(*next);
  }
  return ring;
}

}  // namespace baywright
