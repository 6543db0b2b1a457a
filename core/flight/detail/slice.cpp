// SPDX-License-Identifier: Apache-2.0
#include "flight/detail/slice.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace baywright::detail {
namespace {

/// Directions closer than this to square with d never reach a plane d = const in any room.
constexpr double kLeastForward = 1e-6;
/// How far outside a half plane a point that was computed to lie on its edge may come out, metres.
constexpr double kOnEdge = 1e-9;
/// Halvings of kLaunchStep that bring a change of outcome below 1e-6 rad.
constexpr int kHalvings = 15;
/// Outcomes that one launch step can hide: a bound on the work, far above what a room can do.
constexpr int kChangesPerStep = 16;

struct Interval {
  double from, to;
};

/// Where a ray on the plan passes through a box, from 0 on.
std::optional<Interval> passage(const Aabb3& box, const Vec2& start, const Vec2& along) {
  Interval inside{0, std::numeric_limits<double>::infinity()};
  for (int axis = 0; axis < 2; ++axis) {
    const double low = box.low[axis] - start[axis];
    const double high = box.high[axis] - start[axis];
    if (std::abs(along[axis]) < kLeastForward) {
      if (low > 0 || high < 0) return std::nullopt;
      continue;
    }
    const double first = low / along[axis];
    const double second = high / along[axis];
    inside.from = std::max(inside.from, std::min(first, second));
    inside.to = std::min(inside.to, std::max(first, second));
  }
  if (inside.from > inside.to) return std::nullopt;
  return inside;
}

bool sameOutcome(const Arrival& a, const Arrival& b) {
  return a.meets == b.meets && a.obstacle == b.obstacle;
}

}  // namespace

Slice::Slice(const FlightSpace& space, double direction)
    : space_(space), input_(space.input()), along_(std::cos(direction), std::sin(direction)) {
  cutObstacles();
  placeFrame();
}

std::optional<double> Slice::distanceTo(double down) const {
  if (along_.x() < kLeastForward) return std::nullopt;
  return (down - input_.ball.x()) / along_.x();
}

void Slice::cutObstacles() {
  const Vec2 start = flat(input_.ball);
  for (const GrownObstacle& obstacle : space_.obstacles()) {
    const auto inside = passage(obstacle.bounds, start, along_);
    if (!inside) continue;
    Section section{obstacle.id, inside->from, inside->to, obstacle.bounds.low.z(), obstacle.bounds.high.z(),
                    {}};
    section.sides.reserve(obstacle.faces.size());
    for (const auto& [normal, offset] : obstacle.faces)
      section.sides.push_back({flat(normal).dot(along_), normal.z(), offset - flat(normal).dot(start)});
    sections_.push_back(std::move(section));
  }
  std::ranges::stable_sort(sections_, {}, &Section::from);
}

void Slice::placeFrame() {
  const Frame& frame = input_.frame;
  const double radius = input_.surroundings.ball.radius;
  const double half = frame.width / 2;
  const double mouth = mouthOf(frame);
  const double offset = std::abs(input_.ball.y());
  startsInside_ = input_.ball.x() > mouth && offset < half;
  toScreen_ = distanceTo(0);
  if (input_.ball.x() <= mouth) toMouth_ = distanceTo(mouth);
  if (toMouth_) {
    const double across = std::abs(acrossAt(*toMouth_));
    lane_ = across <= half - frame.tube - radius ? Lane::Inside
            : across < half + radius             ? Lane::Post
                                                 : Lane::Outside;
  }
  if (std::abs(along_.y()) < kLeastForward) return;
  const double side = std::copysign(1.0, along_.y());
  toSideFromInside_ = std::max(0.0, (side * (half - radius) - input_.ball.y()) / along_.y());
  if (offset >= half && side * input_.ball.y() < 0)
    toSideFromOutside_ = (-side * (half + radius) - input_.ball.y()) / along_.y();
}

Slice::Contact Slice::insideContact(const PlanePath& path, double from) const {
  const Screen& screen = input_.screen;
  const double radius = input_.surroundings.ball.radius;
  Contact first{Meets::Nothing, std::numeric_limits<double>::infinity(), {}};
  const auto consider = [&](Meets meets, std::optional<double> time) {
    if (time && *time >= from && *time < first.time) first = {meets, *time, {}};
  };
  if (toScreen_) {
    const auto time = path.timeAtDistance(*toScreen_);
    if (time) {
      const double z = path.at(*time).y();
      const bool onFace = std::abs(acrossAt(*toScreen_)) <= screen.width / 2 - radius &&
                          z >= screen.bottom + radius && z <= screen.bottom + screen.height - radius;
      consider(onFace ? Meets::Screen : Meets::Surround, time);
    }
  }
  if (toSideFromInside_) consider(Meets::SideFabric, path.timeAtDistance(*toSideFromInside_));
  consider(Meets::RoofFabric, path.timeUpThrough(input_.frame.height - radius));
  return first;
}

std::optional<Slice::Contact> Slice::outsideContact(const PlanePath& path) const {
  if (!toSideFromOutside_) return std::nullopt;
  const double down = input_.ball.x() + *toSideFromOutside_ * along_.x();
  if (down < mouthOf(input_.frame) || down > input_.frame.behindScreen) return std::nullopt;
  const auto time = path.timeAtDistance(*toSideFromOutside_);
  if (!time || path.at(*time).y() >= input_.frame.height + input_.surroundings.ball.radius)
    return std::nullopt;
  return Contact{Meets::SideFabric, *time, {}};
}

std::optional<Slice::Contact> Slice::frameContact(const PlanePath& path) const {
  if (startsInside_) return insideContact(path, 0);
  if (!toMouth_) return outsideContact(path);
  const auto time = path.timeAtDistance(*toMouth_);
  if (!time) return std::nullopt;
  const double z = path.at(*time).y();
  const double radius = input_.surroundings.ball.radius;
  const bool below = z < input_.frame.height + radius;
  const bool belowMember = z <= input_.frame.height - input_.frame.tube - radius;
  if (lane_ == Lane::Inside && belowMember) return insideContact(path, *time);
  if (lane_ != Lane::Outside && below) return Contact{Meets::FrameTube, *time, {}};
  return outsideContact(path);
}

std::optional<double> Slice::entry(const Section& section, const PlanePath& path, double until) const {
  const auto from = path.timeAtDistance(section.from);
  if (!from || *from > until) return std::nullopt;
  const double to = std::min(until, path.timeAtDistance(section.to).value_or(until));
  // Between the two the path stays within the larger of its ends, but for the bulge of a parabola.
  const double bulge = std::abs(path.acceleration.y()) * (to - *from) * (to - *from) / 8;
  const double z1 = path.at(*from).y();
  const double z2 = path.at(to).y();
  if (std::max(z1, z2) + bulge < section.low || std::min(z1, z2) - bulge > section.high) return std::nullopt;

  // Each side is a quadratic in time that a path enters at most once: at its falling root. The body is
  // entered at the first of these times, or at once, at which all the other sides hold.
  const auto insideAt = [&](double t) {
    const Vec2 p = path.at(t);
    return std::ranges::all_of(section.sides, [&](const HalfPlane& h) {
      return h.along * p.x() + h.up * p.y() <= h.limit + kOnEdge;
    });
  };
  if (insideAt(0)) return 0;
  std::optional<double> first;
  for (const HalfPlane& h : section.sides) {
    const double a = 0.5 * (h.along * path.acceleration.x() + h.up * path.acceleration.y());
    const double b = h.along * path.velocity.x() + h.up * path.velocity.y();
    const double c = h.up * path.height - h.limit;
    const double discriminant = b * b - 4 * a * c;
    if (discriminant < 0) continue;
    // (-b - sqrt) / (2 a), in the form that does not cancel.
    const double root = std::sqrt(discriminant);
    const double time =
        b > 0 ? (a == 0 ? -1 : (-b - root) / (2 * a)) : (root - b == 0 ? -1 : 2 * c / (root - b));
    if (time >= 0 && time <= until && (!first || time < *first) && insideAt(time)) first = time;
  }
  return first;
}

Slice::Contact Slice::contact(const PlanePath& path) const {
  Contact first{Meets::Nothing, kCaptureReach / input_.shots.speed, {}};
  if (const auto frame = frameContact(path); frame && frame->time < first.time) first = *frame;
  const auto floor = path.timeDownThrough(input_.surroundings.ball.radius);
  if (floor && *floor < first.time) first = {Meets::Floor, *floor, {}};
  for (const Section& section : sections_) {
    const auto time = entry(section, path, first.time);
    if (time && *time < first.time) first = {Meets::Obstacle, *time, section.id};
  }
  return first;
}

Arrival Slice::arrival(double launchAngle) const {
  const PlanePath path = space_.path(launchAngle);
  const Contact met = contact(path);
  const Vec2 p = path.at(met.time);
  const Vec2 v = path.velocityAt(met.time);
  return {met.meets, met.obstacle, met.time, raised(flat(input_.ball) + p.x() * along_, p.y()),
          raised(v.x() * along_, v.y())};
}

std::vector<LaunchSpan> Slice::spans(double lowest, double highest) const {
  std::vector<LaunchSpan> spans;
  const int steps = std::max(1, static_cast<int>(std::ceil((highest - lowest) / kLaunchStep)));
  double start = lowest;
  double left = lowest;
  Arrival atLeft = arrival(left);
  const auto close = [&](double at) {
    spans.push_back({start, at, arrival(0.5 * (start + at))});
    start = at;
  };
  for (int i = 1; i <= steps; ++i) {
    const double right = i == steps ? highest : lowest + (highest - lowest) * i / steps;
    const Arrival atRight = arrival(right);
    for (int changes = 0; changes < kChangesPerStep && !sameOutcome(atLeft, atRight); ++changes) {
      double same = left;
      double other = right;
      Arrival atOther = atRight;
      for (int half = 0; half < kHalvings; ++half) {
        const double middle = 0.5 * (same + other);
        const Arrival there = arrival(middle);
        if (sameOutcome(there, atLeft)) {
          same = middle;
        } else {
          other = middle;
          atOther = there;
        }
      }
      close(0.5 * (same + other));
      left = other;
      atLeft = atOther;
    }
    left = right;
    atLeft = atRight;
  }
  close(highest);
  return spans;
}

}  // namespace baywright::detail
