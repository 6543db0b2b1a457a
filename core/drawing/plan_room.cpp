// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "drawing/fixture_outline.h"
#include "drawing/marks.h"
#include "drawing/plan_parts.h"
#include "drawing/text_box.h"
#include "drawing/wall_bands.h"
#include "job/ceiling_regions.h"
#include "units/length_text.h"

namespace baywright::detail {
namespace {

// Places for a label around a point: on it, then below, above, and farther off.
std::vector<Text> around(const Board& board, Text label) {
  const double step = board.mm(label.heightMm * 1.8);
  label.anchor = TextAnchor::Centre;
  label.at.y() -= board.mm(label.heightMm / 2);
  std::vector<Text> candidates;
  for (const int rows : {0, -1, 1, -2, 2, -3, 3}) {
    candidates.push_back(label);
    candidates.back().at.y() += rows * step;
  }
  return candidates;
}

// Places all over a region, level ones before upright ones, those farthest from `busy` first; the whole text
// inside.
std::vector<Text> within(const Board& board, const Ring& region, const Vec2& busy, Text label) {
  constexpr int kPlaces = 7;
  Eigen::AlignedBox2d box;
  for (const Vec2& corner : region) box.extend(corner);
  label.anchor = TextAnchor::Centre;
  std::vector<Text> candidates;
  for (const double angle : {0.0, kPi / 2}) {
    label.angle = angle;
    const auto first = static_cast<std::ptrdiff_t>(candidates.size());
    for (int i = 1; i < kPlaces; ++i) {
      for (int k = 1; k < kPlaces; ++k) {
        label.at = box.min() + box.sizes().cwiseProduct(Vec2(i, k)) / kPlaces;
        const auto ink = boxOf(label, board.mm(1));
        const bool inside =
            locate(region, ink.min()) == Location::Inside && locate(region, ink.max()) == Location::Inside;
        if (inside) candidates.push_back(label);
      }
    }
    std::stable_sort(candidates.begin() + first, candidates.end(), [&](const Text& a, const Text& b) {
      return (a.at - busy).squaredNorm() > (b.at - busy).squaredNorm();
    });
  }
  return candidates;
}

// Closer than this two lines are one: nobody sees a millimetre.
constexpr double kSameLine = 1e-3;

// True where the edge from a to b runs along a wall: the wall is its line already.
bool alongWall(const std::vector<WallLine>& lines, const Vec2& a, const Vec2& b) {
  return std::any_of(lines.begin(), lines.end(), [&](const WallLine& line) {
    return std::abs((a - line.start).dot(line.inward)) < kSameLine &&
           std::abs((b - line.start).dot(line.inward)) < kSameLine;
  });
}

using Edges = std::vector<std::vector<Vec2>>;

// True where neighbours share the edge: two dashed lines on top of each other would look like a full one.
bool isThere(const Edges& edges, const Vec2& a, const Vec2& b) {
  return std::any_of(edges.begin(), edges.end(), [&](const std::vector<Vec2>& edge) {
    const auto same = [](const Vec2& p, const Vec2& q) { return (p - q).norm() < kSameLine; };
    return (same(edge[0], a) && same(edge[1], b)) || (same(edge[0], b) && same(edge[1], a));
  });
}

std::string ceilingText(const Room& room, const CeilingPart& part, const UnitSystem& units) {
  if (!part.height.known) return "ceiling height not measured";
  const auto [low, high] = seenSpan(room, part);
  std::string text = "ceiling " + formatLength(low, units);
  if (high - low > displayStep(units)) text += " to " + formatLength(high, units);
  return text;
}

// An arrow up the slope beside its label, on whichever side lies in the region.
void drawSlope(Board& board, const CeilingPart& part, const Ring& region, const Text& label) {
  if (part.slope.norm() < 1e-6) return;
  const Vec2 up = part.slope.normalized();
  const auto box = boxOf(label, board.mm(1));
  const double clear = box.sizes().cwiseProduct(up.cwiseAbs()).sum() / 2 + board.mm(1.5);
  const double length = board.mm(12);
  for (const double from : {clear, -clear - length}) {
    const Vec2 foot = box.center() + from * up;
    const Vec2 tip = foot + length * up;
    if (locate(region, foot) == Location::Outside || locate(region, tip) == Location::Outside) continue;
    const Vec2 barb = board.mm(2) * up;
    const Vec2 aside = board.mm(0.8) * leftOf(up);
    Path arrow =
        strokes(Layer::Overhead, {{foot, tip}, {tip - barb + aside, tip, tip - barb - aside}}, part.id);
    arrow.dash = LineDash::Continuous;
    board.add(std::move(arrow));
    return;
  }
}

}  // namespace

void drawFloorAndWalls(Board& board, const ViewInput& input) {
  const Room& room = input.job.room;
  if (room.walls.empty()) return;
  Path floor = areaOf(Layer::Floor, {outline(room)}, Fill::Soft);
  floor.stroked = false;
  board.add(std::move(floor));
  for (WallBand& band : wallBands(room)) {
    Path solid = areaOf(Layer::Walls, std::move(band.solids), Fill::Poche, band.wall);
    solid.stroked = false;
    solid.weight = LineWeight::Thin;
    board.add(std::move(solid));
    board.add(strokes(Layer::Walls, std::move(band.edges), band.wall));
  }
}

void drawCeiling(Board& board, const ViewInput& input) {
  const Room& room = input.job.room;
  const auto lines = wallLines(room);
  Edges drawn;
  for (const CeilingPart& part : room.ceiling) {
    const std::vector<Ring> regions = seenRegions(room, part);
    if (regions.empty() || regions.front().size() < 3) continue;
    Edges edges;
    for (const Ring& ring : regions) {
      for (std::size_t i = 0; i < ring.size(); ++i) {
        const Vec2& next = ring[(i + 1) % ring.size()];
        if (!alongWall(lines, ring[i], next) && !isThere(drawn, ring[i], next))
          edges.push_back({ring[i], next});
      }
    }
    const Ring& region = regions.front();
    drawn.insert(drawn.end(), edges.begin(), edges.end());
    if (!edges.empty()) board.add(strokes(Layer::Overhead, std::move(edges), part.id));
    if (!input.options.labels) continue;
    Text label =
        textAt(Layer::Labels, centroid(Polygon{region, {}}), ceilingText(room, part, input.job.units));
    label.heightMm = kSmallText;
    label.id = part.id;
    label.onGround = true;
    const Placement& placement = input.placement();
    const Vec2 strike = placement.bay.origin - placement.strikeDistance * placement.bay.down();
    const auto placed = board.addWhereFree(within(board, region, strike, label));
    if (placed) drawSlope(board, part, region, *placed);
  }
}

void drawFixtures(Board& board, const ViewInput& input) {
  for (const Fixture& fixture : input.job.room.fixtures) {
    const bool overhead = fixture.bottom.value >= kPlanCut;
    const Ring ring = outlineOf(fixture.shape);
    Path outline = polygon(overhead ? Layer::Overhead : Layer::Fixtures, ring, fixture.id);
    if (fixture.kind == FixtureKind::Column) outline.fill = Fill::Poche;
    if (!overhead && fixture.kind != FixtureKind::Column) outline.fill = Fill::Soft;
    board.add(std::move(outline));
    if (fixture.kind == FixtureKind::Light && ring.size() >= 4) {
      const std::size_t quarter = ring.size() / 4;
      board.add(strokes(Layer::Overhead, {{ring[0], ring[2 * quarter]}, {ring[quarter], ring[3 * quarter]}},
                        fixture.id));
    }
  }
}

void drawFixtureNames(Board& board, const ViewInput& input) {
  for (const Fixture& fixture : input.job.room.fixtures) {
    if (fixture.name.empty()) continue;
    const Ring ring = outlineOf(fixture.shape);
    Text label = textAt(Layer::Labels, centroid(Polygon{ring, {}}), fixture.name);
    label.heightMm = kSmallText;
    label.id = fixture.id;
    label.onGround = true;
    board.addWhereFree(around(board, label));
  }
}

}  // namespace baywright::detail
