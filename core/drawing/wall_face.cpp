// SPDX-License-Identifier: Apache-2.0
#include "drawing/wall_face.h"

#include <algorithm>
#include <cmath>

#include "drawing/fixture_outline.h"
#include "drawing/room_section.h"
#include "job/find.h"

namespace baywright {
namespace {

/// Fixtures nearer to a wall than this count as standing against it, metres.
constexpr double kAgainst = 0.05;
/// How far a line that attracts is drawn beyond the wall, metres.
constexpr double kBeyond = 0.1;
/// Depth of a thing drawn on a wall whose prototype has none, metres.
constexpr double kUsualDepth = 0.4;

double depthOf(const FixtureShape& shape) {
  if (const auto* box = std::get_if<BoxShape>(&shape)) return box->depth;
  if (const auto* cylinder = std::get_if<CylinderShape>(&shape)) return 2 * cylinder->radius;
  return kUsualDepth;
}

double widthOf(const FixtureShape& shape) {
  if (const auto* box = std::get_if<BoxShape>(&shape)) return box->width;
  return depthOf(shape);
}

FaceBox boxAround(const WallLine& wall, const Vec2& middle, Vec2 size, double bottom) {
  size.x() = std::min(size.x(), wall.length);
  const double left = std::clamp(middle.x() - size.x() / 2, 0.0, wall.length - size.x());
  const double low = bottom > 0 ? std::max(0.0, middle.y() - size.y() / 2) : 0.0;
  return {Vec2(left, low), Vec2(left + size.x(), low + size.y())};
}

FaceBox boxOf(const WallLine& wall, const Opening& opening) {
  const double right = wall.length - opening.offset.value;
  return {Vec2(right - opening.width.value, opening.sill.value),
          Vec2(right, opening.sill.value + opening.height.value)};
}

FaceBox boxOf(const WallLine& wall, const Fixture& fixture) {
  FaceBox box;
  for (const Vec2& p : outlineOf(fixture.shape)) {
    box.extend(onFace(wall, raised(p, fixture.bottom.value)));
    box.extend(onFace(wall, raised(p, fixture.top.value)));
  }
  return box;
}

bool standsAgainst(const WallLine& wall, const Fixture& fixture) {
  const Ring ring = outlineOf(fixture.shape);
  return std::any_of(ring.begin(), ring.end(), [&](const Vec2& p) {
    const double along = (p - wall.start).dot(wall.along);
    return std::abs((p - wall.start).dot(wall.inward)) < kAgainst && along > 0 && along < wall.length;
  });
}

/// A figure that was left as the prototype has it is known as well as there.
Dimension drawnAs(double value, Instrument how, const Dimension& prototype) {
  constexpr double kSame = 1e-9;
  return std::abs(value - prototype.value) < kSame ? prototype : Dimension{value, how, true};
}

/// Rules of one face, written down as the edges of the box meet them.
class FaceRules {
 public:
  FaceRules(const WallLine& wall, const FaceBox& box, double top) : wall_(wall), box_(box), top_(top) {}

  void leftAt(double x, const std::string& what) { upright(x - box_.min().x(), x, what); }
  void rightAt(double x, const std::string& what) { upright(x - box_.max().x(), x, what); }
  void middleAt(double x, const std::string& what) { upright(x - box_.center().x(), x, what); }
  void lowAt(double y, const std::string& what) { level(y - box_.min().y(), y, what); }
  void highAt(double y, const std::string& what) { level(y - box_.max().y(), y, what); }

  std::vector<SnapRule> take() && { return std::move(rules_); }

 private:
  void upright(double by, double x, const std::string& what) {
    rules_.push_back(onLine({by, 0}, {0, 1}, {Segment2{{x, 0}, {x, top_}}, what}));
  }
  void level(double by, double y, const std::string& what) {
    rules_.push_back(onLine({0, by}, {1, 0}, {Segment2{{-kBeyond, y}, {wall_.length + kBeyond, y}}, what}));
  }

  const WallLine& wall_;
  const FaceBox& box_;
  double top_;
  std::vector<SnapRule> rules_;
};

void addBeside(FaceRules& rules, const FaceBox& there, const std::string& name) {
  rules.leftAt(there.max().x(), "beside " + name);
  rules.rightAt(there.min().x(), "beside " + name);
  rules.leftAt(there.min().x(), "in line with " + name);
  rules.rightAt(there.max().x(), "in line with " + name);
  rules.highAt(there.max().y(), "level with " + name);
  rules.lowAt(there.max().y(), "on top of " + name);
  if (there.min().y() <= 0) return;
  rules.lowAt(there.min().y(), "level with " + name);
  rules.highAt(there.min().y(), "under " + name);
}

}  // namespace

Vec2 onFace(const WallLine& wall, const Vec3& world) {
  return {(wall.end - flat(world)).dot(wall.along), world.z()};
}

Vec2 footOfFace(const WallLine& wall, double x) {
  return wall.end - x * wall.along;
}

std::optional<FaceBox> faceBoxOf(const Room& room, Id wall, Id thing) {
  const auto line = wallLine(room, wall);
  if (!line) return std::nullopt;
  if (const Opening* opening = findById(room.openings, thing)) {
    if (opening->wall != wall) return std::nullopt;
    return boxOf(*line, *opening);
  }
  if (const Fixture* fixture = findById(room.fixtures, thing)) return boxOf(*line, *fixture);
  return std::nullopt;
}

std::optional<double> ceilingOverFace(const Room& room, const WallLine& wall, double from, double to) {
  std::optional<double> lowest;
  for (const detail::CeilingStretch& part : detail::ceilingBefore(room, wall)) {
    const double low = std::max(from, part.from);
    const double high = std::min(to, part.to);
    if (low > high) continue;
    // Straight in between: lowest at one of its ends.
    const double rise = (part.heightTo - part.heightFrom) / (part.to - part.from);
    for (const double x : {low, high}) {
      const double height = part.heightFrom + rise * (x - part.from);
      if (!lowest || height < *lowest) lowest = height;
    }
  }
  return lowest;
}

FaceBox usualBox(const WallLine& wall, const Opening& prototype, const Vec2& at) {
  return boxAround(wall, at, {prototype.width.value, prototype.height.value}, prototype.sill.value);
}

FaceBox usualBox(const WallLine& wall, const Fixture& prototype, const Vec2& at) {
  return boxAround(wall, at, {widthOf(prototype.shape), prototype.top.value - prototype.bottom.value},
                   prototype.bottom.value);
}

FaceBox boxOnFace(const Vec2& start, const Vec2& toward, const TypedFace& typed) {
  Vec2 size = toward - start;
  if (typed.width) size.x() = std::copysign(*typed.width, size.x());
  if (typed.height) size.y() = std::copysign(*typed.height, size.y());
  return withTyped(FaceBox(start).extend(start + size), typed);
}

FaceBox withTyped(FaceBox box, const TypedFace& typed) {
  if (typed.width) box.max().x() = box.min().x() + *typed.width;
  if (typed.height) box.max().y() = box.min().y() + *typed.height;
  Vec2 by = Vec2::Zero();
  if (typed.left) by.x() = *typed.left - box.min().x();
  if (typed.low) by.y() = *typed.low - box.min().y();
  return box.translate(by);
}

Opening openingOnFace(const WallLine& wall, Opening opening, const FaceBox& drawn, Instrument how) {
  const bool isDoor = opening.kind == OpeningKind::HingedDoor || opening.kind == OpeningKind::SectionalDoor;
  const double left = std::clamp(drawn.min().x(), 0.0, wall.length);
  const double right = std::clamp(drawn.max().x(), left, wall.length);
  const double low = isDoor ? 0.0 : std::max(0.0, drawn.min().y());
  opening.wall = wall.wall;
  opening.offset = {wall.length - right, how, true};
  opening.width = drawnAs(right - left, how, opening.width);
  opening.sill = drawnAs(low, how, opening.sill);
  opening.height = drawnAs(drawn.max().y() - low, how, opening.height);
  return opening;
}

Fixture fixtureOnFace(const WallLine& wall, Fixture fixture, const FaceBox& drawn, Instrument how) {
  const Vec2 foot = footOfFace(wall, drawn.center().x());
  const double width = drawn.sizes().x();
  if (std::holds_alternative<CylinderShape>(fixture.shape)) {
    fixture.shape = CylinderShape{foot + width / 2 * wall.inward, width / 2};
  } else {
    BoxShape box;
    box.depth = depthOf(fixture.shape);
    box.width = width;
    box.heading = std::atan2(wall.along.y(), wall.along.x());
    box.centre = foot + box.depth / 2 * wall.inward;
    fixture.shape = box;
  }
  fixture.bottom = drawnAs(std::max(0.0, drawn.min().y()), how, fixture.bottom);
  fixture.top = drawnAs(drawn.max().y(), how, fixture.top);
  fixture.planInstrument = how;
  return fixture;
}

bool liesOnFace(const WallLine& wall, const FaceBox& box) {
  constexpr double kRounding = 1e-9;
  return box.min().x() >= -kRounding && box.max().x() <= wall.length + kRounding;
}

Instrument drawnOnFaceBy(const Job& job) {
  const bool showsScan = std::any_of(job.roomScans.begin(), job.roomScans.end(),
                                     [](const RoomScan& scan) { return scan.visible; });
  return showsScan ? Instrument::Scan : Instrument::Guess;
}

std::vector<SnapRule> faceRules(const Job& job, Id wall, const FaceBox& box, Id except,
                                std::optional<double> usualHeight) {
  const Room& room = job.room;
  const auto line = wallLine(room, wall);
  if (!line || box.isEmpty()) return {};
  const auto ceiling = ceilingOverFace(room, *line, box.min().x(), box.max().x());
  FaceRules rules(*line, box, ceiling.value_or(box.max().y()));
  rules.leftAt(0, "at the left end");
  rules.rightAt(line->length, "at the right end");
  rules.middleAt(line->length / 2, "the middle of wall " + line->name);
  rules.lowAt(0, "on the floor");
  if (ceiling) rules.highAt(*ceiling, "under the ceiling");
  if (usualHeight) rules.lowAt(*usualHeight, "at the usual height");
  for (const Opening& opening : room.openings) {
    if (opening.wall == wall && opening.id != except) addBeside(rules, boxOf(*line, opening), opening.name);
  }
  for (const Fixture& fixture : room.fixtures) {
    if (fixture.id != except && standsAgainst(*line, fixture))
      addBeside(rules, boxOf(*line, fixture), fixture.name);
  }
  return std::move(rules).take();
}

std::vector<LiveDimension> faceDimensions(const Room& room, Id wall, const FaceBox& box, bool canRise) {
  const auto line = wallLine(room, wall);
  if (!line) return {};
  const Vec2 middle = box.center();
  const auto dimension = [](const Vec2& from, const Vec2& to, const Vec2& grow, std::string what) {
    return LiveDimension{std::move(what), from, to, (to - from).norm(), grow};
  };
  std::vector<LiveDimension> dimensions;
  if (box.min().x() >= 0)
    dimensions.push_back(dimension({box.min().x(), middle.y()}, {0, middle.y()}, {1, 0},
                                   "from the left end of wall " + line->name));
  if (box.max().x() <= line->length)
    dimensions.push_back(dimension({box.max().x(), middle.y()}, {line->length, middle.y()}, {-1, 0},
                                   "from the right end of wall " + line->name));
  if (!canRise) return dimensions;
  dimensions.push_back(dimension({middle.x(), box.min().y()}, {middle.x(), 0}, {0, 1}, "above the floor"));
  const auto ceiling = ceilingOverFace(room, *line, box.min().x(), box.max().x());
  if (ceiling && *ceiling >= box.max().y())
    dimensions.push_back(
        dimension({middle.x(), box.max().y()}, {middle.x(), *ceiling}, {0, -1}, "below the ceiling"));
  return dimensions;
}

}  // namespace baywright
