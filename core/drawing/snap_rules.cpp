// SPDX-License-Identifier: Apache-2.0
#include "drawing/snap_rules.h"

#include <algorithm>
#include <cmath>

#include "drawing/fixture_outline.h"
#include "drawing/plan_footprint.h"
#include "drawing/thing_heights.h"
#include "drawing/view_move.h"
#include "drawing/wall_face.h"
#include "job/find.h"
#include "job/room_geometry.h"
#include "job/thing_lookup.h"

namespace baywright {
namespace {

/// Sine between two directions that count as the same: a millimetre over a metre.
constexpr double kParallel = 1e-3;
/// Corners this near each other, seen square to a wall, touch it together; metres.
constexpr double kTogether = 1e-6;

bool areParallel(const Vec2& a, const Vec2& b) {
  return std::abs(cross(a, b)) < kParallel;
}

/// A straight side that something may stand against, with its free side to the left.
struct Side {
  Segment2 line;
  Vec2 along;
  std::string name;

  Vec2 free() const { return leftOf(along); }
};

std::vector<Side> sidesOf(const Ring& ring, const std::string& name) {
  std::vector<Side> sides;
  // Seen from outside, the free side of a counter-clockwise ring is on the right: walk it backwards.
  const bool backwards = signedArea(ring) > 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    Segment2 line{ring[i], ring[(i + 1) % ring.size()]};
    if (backwards) std::swap(line.a, line.b);
    if ((line.b - line.a).norm() > kTogether) sides.push_back({line, (line.b - line.a).normalized(), name});
  }
  return sides;
}

std::vector<Side> wallSides(const Room& room) {
  std::vector<Side> sides;
  for (const WallLine& line : wallLines(room)) {
    if (line.length > kTogether) sides.push_back({line.segment(), line.along, "wall " + line.name});
  }
  return sides;
}

// A cylinder has no sides to be flush with.
std::vector<Side> fixtureSides(const Fixture& fixture) {
  if (std::holds_alternative<CylinderShape>(fixture.shape)) return {};
  return sidesOf(outlineOf(fixture.shape), fixture.name);
}

/// The ring stands against the side with `gap` between them.
SnapRule against(const Side& side, const Ring& ring, double gap, std::string what) {
  const Vec2 normal = side.free();
  double nearest = std::numeric_limits<double>::infinity();
  for (const Vec2& corner : ring) nearest = std::min(nearest, normal.dot(corner));
  SnapRule rule;
  rule.normal = normal;
  rule.at = normal.dot(side.line.a) + gap - nearest;
  rule.mark = {side.line, std::move(what)};
  // leftOf(normal) runs from the side's end to its start.
  double touchLow = std::numeric_limits<double>::infinity();
  double touchHigh = -touchLow;
  for (const Vec2& corner : ring) {
    if (normal.dot(corner) > nearest + kTogether) continue;
    touchLow = std::min(touchLow, rule.along().dot(corner));
    touchHigh = std::max(touchHigh, rule.along().dot(corner));
  }
  rule.low = rule.along().dot(side.line.b) - touchHigh;
  rule.high = rule.along().dot(side.line.a) - touchLow;
  return rule;
}

void addAgainst(std::vector<SnapRule>& rules, const Side& side, const PlanFootprint& footprint) {
  if (footprint.ring.empty()) return;
  for (const PlanFootprint::Gap& gap : footprint.gaps) {
    if (gap.distance > kTogether && areParallel(gap.toward, side.free()) && gap.toward.dot(side.free()) < 0)
      rules.push_back(against(side, footprint.ring, gap.distance, gap.what));
  }
  rules.push_back(against(side, footprint.ring, 0, "against " + side.name));
}

/// A side of the ring falls in line with a fixture's side that faces the same way.
void addInLine(std::vector<SnapRule>& rules, const Side& side, const PlanFootprint& footprint) {
  for (const Side& own : sidesOf(footprint.ring, {})) {
    if (!areParallel(own.along, side.along) || own.along.dot(side.along) < 0) continue;
    rules.push_back(onLine(side.line.a - own.line.a, side.along, {side.line, "in line with " + side.name}));
  }
}

/// Middle lines between walls that face each other.
std::vector<MiddleLine> roomMiddles(const Room& room) {
  constexpr double kNarrowest = 0.5;  // metres: nothing is centred in less
  std::vector<MiddleLine> middles;
  const auto lines = wallLines(room);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    for (std::size_t j = i + 1; j < lines.size(); ++j) {
      const WallLine& a = lines[i];
      const WallLine& b = lines[j];
      if (!areParallel(a.along, b.along) || a.inward.dot(b.inward) > 0) continue;
      const double apart = (b.start - a.start).dot(a.inward);
      if (apart < kNarrowest) continue;
      const double bStart = (b.start - a.start).dot(a.along);
      const double bEnd = (b.end - a.start).dot(a.along);
      const double low = std::max(0.0, std::min(bStart, bEnd));
      const double high = std::min(a.length, std::max(bStart, bEnd));
      if (high <= low) continue;
      middles.push_back(
          {a.at(low) + apart / 2 * a.inward, a.along, "midway between " + a.name + " and " + b.name});
    }
  }
  return middles;
}

std::vector<MiddleLine> openingMiddles(const Room& room) {
  std::vector<MiddleLine> middles;
  for (const Opening& opening : room.openings) {
    if (const auto place = openingPlace(room, opening.id))
      middles.push_back({place->middle(), place->inward, "the middle of " + opening.name});
  }
  return middles;
}

/// How far a middle line is drawn either way, metres: across any room.
constexpr double kLong = 50;

Segment2 shown(const MiddleLine& line) {
  return {line.through - kLong * line.along, line.through + kLong * line.along};
}

void addMiddles(std::vector<SnapRule>& rules, const PlanFootprint& moving,
                const std::vector<MiddleLine>& targets) {
  for (const MiddleLine& target : targets) {
    for (const MiddleLine& own : moving.middles) {
      if (areParallel(own.along, target.along))
        rules.push_back(onLine(target.through - own.through, target.along, {shown(target), target.what}));
    }
  }
}

MiddleLine bayMiddle(const Job& job) {
  const BayPose& bay = job.option().placement.bay;
  return {bay.origin, bay.down(), "the bay's middle line"};
}

/// Along its wall only: by the wall's middle, whatever else the move does.
std::vector<SnapRule> openingRules(const Job& job, Id id, const PlanFootprint& footprint) {
  std::vector<SnapRule> rules;
  const Opening& opening = *findById(job.room.openings, id);
  const auto line = wallLine(job.room, opening.wall);
  if (!line) return rules;
  addMiddles(
      rules, footprint,
      {{line->at(line->length / 2), line->inward, "the middle of wall " + line->name}, bayMiddle(job)});
  return rules;
}

/// What hangs together with the bay and must not be attracted by it.
bool isWholeBay(ThingKind kind) {
  return kind == ThingKind::Option || kind == ThingKind::Frame || kind == ThingKind::Screen;
}
bool isInBay(ThingKind kind) {
  return kind == ThingKind::Mat || kind == ThingKind::Monitor || kind == ThingKind::Projector ||
         kind == ThingKind::Golfer || kind == ThingKind::Club;
}

std::vector<SnapRule> wallRules(const Room& room, Id id) {
  std::vector<SnapRule> rules;
  const auto moving = wallLine(room, id);
  if (!moving) return rules;
  for (const WallLine& other : wallLines(room)) {
    if (other.wall == id || !areParallel(moving->along, other.along)) continue;
    rules.push_back(onLine(other.start - moving->start, moving->along,
                           {other.segment(), "in line with wall " + other.name}));
  }
  return rules;
}

std::vector<SnapRule> planRules(const Job& job, Id id) {
  std::vector<SnapRule> rules;
  const auto thing = findThing(job, id);
  if (thing && thing->kind == ThingKind::Wall) return wallRules(job.room, id);
  const auto footprint = planFootprint(job, id);
  if (!thing || !footprint) return rules;
  if (thing->kind == ThingKind::Opening) return openingRules(job, id, *footprint);
  if (isInBay(thing->kind)) addMiddles(rules, *footprint, {bayMiddle(job)});
  if (footprint->ring.size() < 3) return rules;
  for (const Side& side : wallSides(job.room)) addAgainst(rules, side, *footprint);
  addMiddles(rules, *footprint, roomMiddles(job.room));
  addMiddles(rules, *footprint, openingMiddles(job.room));
  if (!isWholeBay(thing->kind) && !isInBay(thing->kind)) addMiddles(rules, *footprint, {bayMiddle(job)});
  for (const Fixture& fixture : job.room.fixtures) {
    if (fixture.id == id) continue;
    for (const Side& side : fixtureSides(fixture)) {
      addAgainst(rules, side, *footprint);
      addInLine(rules, side, *footprint);
    }
  }
  return rules;
}

/// A rule of the plan as an elevation sees it, if it says anything about the horizontal there.
std::optional<SnapRule> seenFrom(const SnapRule& rule, const DrawnView& view, const Job& job) {
  const Vec2 horizontal = horizontalOf(view, job);
  const double share = rule.normal.dot(horizontal);
  if (std::abs(std::abs(share) - 1) > kParallel || rule.low > 0 || rule.high < 0) return std::nullopt;
  const double x = viewFromWorld(view, job, raised(rule.mark.line.a, 0)).x();
  const double top = kLong / 10;
  return onLine({rule.at / share, 0}, {0, 1}, {Segment2{{x, 0}, {x, top}}, rule.mark.what});
}

std::vector<SnapRule> elevationRules(const DrawnView& view, const Job& job, Id id) {
  std::vector<SnapRule> rules;
  for (const SnapRule& rule : planRules(job, id)) {
    if (auto seen = seenFrom(rule, view, job)) rules.push_back(std::move(*seen));
  }
  const auto heights = heightsOf(job, id);
  if (!heights || !heights->canRise) return rules;
  const auto level = [&](double by, double height, std::string what) {
    rules.push_back(onLine({0, by}, {1, 0}, {Segment2{{-kLong, height}, {kLong, height}}, std::move(what)}));
  };
  const auto thing = findThing(job, id);
  if (thing->kind == ThingKind::CeilingPart) {
    for (const CeilingPart& part : job.room.ceiling) {
      const double height = part.heightAt(heights->at);
      if (part.id != id) level(height - heights->bottom, height, "level with " + part.name);
    }
    return rules;
  }
  level(-heights->bottom, 0, "on the floor");
  if (const auto ceiling = ceilingHeightAt(job.room, heights->at))
    level(*ceiling - heights->top, *ceiling, "under the ceiling");
  return rules;
}

}  // namespace

std::vector<SnapRule> moveRules(const DrawnView& view, const Job& job, Id id) {
  switch (view.kind) {
    case ViewKind::Plan:
      return planRules(job, id);
    case ViewKind::DownRange:
    case ViewKind::Side:
      return elevationRules(view, job, id);
    case ViewKind::Wall:
      if (const auto box = faceBoxOf(job.room, view.wall, id)) return faceRules(job, view.wall, *box, id);
      return elevationRules(view, job, id);
    case ViewKind::ScreenFace:
      break;
  }
  return {};
}

std::vector<SnapRule> cornerRules(const Room& room, Id wall) {
  std::vector<SnapRule> rules;
  const auto lines = wallLines(room);
  const auto found =
      std::find_if(lines.begin(), lines.end(), [&](const WallLine& line) { return line.wall == wall; });
  if (found == lines.end() || lines.size() < 3) return rules;
  const auto at = static_cast<std::size_t>(found - lines.begin());
  const std::size_t count = lines.size();
  const WallLine& before = lines[(at + count - 1) % count];
  const WallLine& beyondBefore = lines[(at + count - 2) % count];
  const WallLine& beyondNext = lines[(at + 1) % count];
  const auto add = [&](const Vec2& through, const Vec2& along, std::string what) {
    rules.push_back(onLine(through, along, {shown({through, along, {}}), std::move(what)}));
  };
  add(before.start, beyondBefore.inward, "square to wall " + beyondBefore.name);
  add(found->end, beyondNext.inward, "square to wall " + beyondNext.name);
  for (const Vec2& beside : {before.start, found->end}) {
    add(beside, {1, 0}, "level");
    add(beside, {0, 1}, "upright");
  }
  return rules;
}

std::vector<SnapPoint> planPoints(const Job& job) {
  std::vector<SnapPoint> points;
  const auto lines = wallLines(job.room);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const WallLine& before = lines[(i + lines.size() - 1) % lines.size()];
    points.push_back({lines[i].start, "corner " + before.name + lines[i].name});
  }
  for (const Opening& opening : job.room.openings) {
    const auto place = openingPlace(job.room, opening.id);
    if (!place) continue;
    points.push_back({place->start, "jamb of " + opening.name});
    points.push_back({place->end, "jamb of " + opening.name});
  }
  for (const Fixture& fixture : job.room.fixtures) {
    if (const auto* cylinder = std::get_if<CylinderShape>(&fixture.shape)) {
      points.push_back({cylinder->centre, "the middle of " + fixture.name});
      continue;
    }
    for (const Vec2& corner : outlineOf(fixture.shape))
      points.push_back({corner, "corner of " + fixture.name});
  }
  const auto frame = planFootprint(job, job.option().kit.frame.id);
  if (frame) {
    for (const Vec2& corner : frame->ring) points.push_back({corner, "corner of the frame"});
  }
  return points;
}

std::vector<SnapRule> planLines(const Job& job) {
  std::vector<SnapRule> rules;
  for (const Side& side : wallSides(job.room)) rules.push_back(onSegment(side.line, "on " + side.name));
  for (const Fixture& fixture : job.room.fixtures) {
    for (const Side& side : fixtureSides(fixture))
      rules.push_back(onSegment(side.line, "on the side of " + side.name));
  }
  for (const MiddleLine& middle : roomMiddles(job.room))
    rules.push_back(onLine(middle.through, middle.along, {shown(middle), middle.what}));
  return rules;
}

}  // namespace baywright
