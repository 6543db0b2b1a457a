// SPDX-License-Identifier: Apache-2.0
#include "survey/network_start.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <optional>

#include "geometry/polygon_validity.h"

namespace baywright {
namespace {

/// How far a start may lie from what was read and still be a good one: rooms are a few degrees out of square.
constexpr double kRoughLength = 0.05;
constexpr double kRoughShare = 0.02;
constexpr double kRoughAngle = 0.05;
/// What one observation may add: a blunder counts as three rough sigmas and no more.
constexpr double kMostCost = 9;
/// What one corner that is not square may add, where nothing was read about it.
constexpr double kMostCornerCost = 2;
/// A turn by less, radians (20 degrees), makes no corner.
constexpr double kNoCorner = 0.35;
/// Crossing walls and clockwise rooms come after all others.
constexpr double kImpossible = 1000;
/// Partial rooms that are kept while walking round.
constexpr std::size_t kBeam = 48;
/// Starts this near each other lead to the same adjustment.
constexpr double kSameStart = 0.02;
/// Places this near each other are one, found from readings that are a little off.
constexpr double kSamePlace = 0.03;

struct Turn {
  double angle;  ///< to the left
  double cost;   ///< of believing in it without a reading
};
constexpr std::array kTurns = {Turn{kPi / 2, 0}, Turn{-kPi / 2, 0.5}, Turn{kPi / 4, 2}, Turn{-kPi / 4, 2.5},
                               Turn{0, 4}};

double roughCost(const Observation& o, const Ring& corners) {
  double miss = misclosure(o, corners);
  double scale = kRoughLength + kRoughShare * std::abs(o.value);
  if (o.kind == ObservationKind::Angle) {
    scale = kRoughAngle;
    if (o.unsignedValue)
      miss = std::min(std::abs(miss), std::abs(std::remainder(o.value + observed(o, corners), 2 * kPi)));
  } else if (o.kind == ObservationKind::Offset && o.unsignedValue) {
    miss = o.value - std::abs(observed(o, corners));
  }
  return std::min(miss * miss / (scale * scale), kMostCost);
}

/// Corners are mostly square and mostly turn left, and nobody letters one that does not turn: so much for
/// each of them, when the readings leave it open.
double cornerCost(const Vec2& before, const Vec2& after) {
  const double turn = std::atan2(cross(before, after), before.dot(after));
  if (std::abs(turn) < kNoCorner) return kMostCornerCost;
  const double off = std::remainder(turn, kPi / 2) / kRoughAngle;
  return std::min(off * off, kMostCornerCost) + (turn < 0 ? kTurns[1].cost : 0);
}

/// What all observations and the shape say about a whole ring.
double ringCost(const SurveyNetwork& network, const Ring& corners) {
  double cost = 0;
  for (const Observation& o : network.observations) cost += roughCost(o, corners);
  const std::size_t count = corners.size();
  for (std::size_t i = 0; i < count; ++i)
    cost += cornerCost(corners[i] - corners[(i + count - 1) % count], corners[(i + 1) % count] - corners[i]);
  const bool isFloor = signedArea(corners) > 0 && selfCrossings({corners, {}}).empty();
  return isFloor ? cost : cost + kImpossible;
}

struct Scored {
  Ring corners;
  double cost = 0;
  double heading = 0;  ///< of the wall that ends at the last corner
};

bool isCheaper(const Scored& a, const Scored& b) {
  return a.cost < b.cost;
}

void keepBest(std::vector<Scored>& all, std::size_t count) {
  std::stable_sort(all.begin(), all.end(), isCheaper);
  if (all.size() > count) all.resize(count);
}

/// The mean of the read lengths between two corners, or nothing.
std::optional<double> readLength(const SurveyNetwork& network, int a, int b) {
  double sum = 0;
  int count = 0;
  for (const Observation& o : network.observations) {
    if (o.kind != ObservationKind::Distance) continue;
    if (!((o.from == a && o.to == b) || (o.from == b && o.to == a))) continue;
    sum += o.value;
    ++count;
  }
  if (count == 0) return std::nullopt;
  return sum / count;
}

std::vector<std::optional<double>> wallLengths(const SurveyNetwork& network) {
  std::vector<std::optional<double>> lengths;
  for (int i = 0; i < network.size(); ++i) lengths.push_back(readLength(network, i, network.next(i)));
  return lengths;
}

/// A length for walls that nobody read.
double usualLength(const std::vector<std::optional<double>>& lengths) {
  double sum = 0;
  int count = 0;
  for (const auto& length : lengths) {
    if (!length) continue;
    sum += *length;
    ++count;
  }
  return count > 0 ? sum / count : 4.0;
}

// --- rooms of right angles

/// All sequences of left (+1) and right (-1) turns at corners 1, 2, ... that bring the walk home.
class RightAngles {
 public:
  explicit RightAngles(const SurveyNetwork& network)
      : network_(network), lengths_(wallLengths(network)), usual_(usualLength(lengths_)) {}

  std::vector<Scored> all() {
    if (network_.size() % 2 != 0 || network_.size() > kMostTurns) return {};
    extend({});
    return std::move(found_);
  }

 private:
  void extend(std::vector<int> turns) {
    const int left = network_.size() - 1 - static_cast<int>(turns.size());
    const int sum = std::accumulate(turns.begin(), turns.end(), 0);
    // The turn at corner 0 makes up for the rest of a full round, so it must be one step either way.
    if (std::abs(4 - sum) > left + 1) return;
    if (left == 0) {
      if (std::abs(4 - sum) == 1) add(turns);
      return;
    }
    for (const int turn : {1, -1}) {
      turns.push_back(turn);
      extend(turns);
      turns.pop_back();
    }
  }

  void add(const std::vector<int>& turns) {
    std::vector<int> headings{0};
    for (const int turn : turns) headings.push_back((headings.back() + turn + 4) % 4);
    const auto lengths = completed(headings);
    if (!lengths) return;
    Scored made;
    made.corners.push_back({0, 0});
    for (std::size_t i = 0; i + 1 < headings.size(); ++i)
      made.corners.push_back(made.corners.back() + (*lengths)[i] * along(headings[i]));
    made.cost = ringCost(network_, made.corners);
    found_.push_back(std::move(made));
    keepBest(found_, kKept);
  }

  static Vec2 along(int heading) {
    return {heading == 0 ? 1.0 : heading == 2 ? -1.0 : 0.0, heading == 1 ? 1.0 : heading == 3 ? -1.0 : 0.0};
  }

  /// Lengths that were not read, from those along the same axis; nothing where one would have to be negative.
  std::optional<std::vector<double>> completed(const std::vector<int>& headings) const {
    std::vector<double> lengths(headings.size(), 0);
    for (int axis = 0; axis < 2; ++axis) {
      double sum = 0;
      int open = -1;
      for (std::size_t i = 0; i < headings.size(); ++i) {
        if (headings[i] % 2 != axis) continue;
        const double sense = headings[i] < 2 ? 1 : -1;
        if (!lengths_[i] && open < 0) {
          open = static_cast<int>(i);
          continue;
        }
        lengths[i] = lengths_[i].value_or(usual_);
        sum += sense * lengths[i];
      }
      if (open < 0) continue;
      lengths[open] = headings[open] < 2 ? -sum : sum;
      if (lengths[open] <= 0) return std::nullopt;
    }
    return lengths;
  }

  static constexpr std::size_t kKept = 2 * kMostStarts;

  const SurveyNetwork& network_;
  std::vector<std::optional<double>> lengths_;
  double usual_;
  std::vector<Scored> found_;
};

// --- corner by corner

/// Where circles about two points cross; the nearest thing to it where they do not meet.
std::array<Vec2, 2> crossingOfCircles(const Vec2& a, double ra, const Vec2& b, double rb) {
  const double distance = std::max((b - a).norm(), 1e-9);
  const Vec2 along = (b - a) / distance;
  const double t = std::clamp((distance * distance + ra * ra - rb * rb) / (2 * distance), -ra, ra);
  const double h = std::sqrt(std::max(ra * ra - t * t, 0.0));
  return {a + t * along + h * leftOf(along), a + t * along - h * leftOf(along)};
}

class Walk {
 public:
  explicit Walk(const SurveyNetwork& network)
      : network_(network), lengths_(wallLengths(network)), usual_(usualLength(lengths_)) {}

  std::vector<Scored> all() const {
    std::vector<Scored> beam{{{{0, 0}, {lengths_[0].value_or(usual_), 0}}, 0, 0}};
    for (int corner = 2; corner < network_.size(); ++corner) {
      std::vector<Scored> next;
      for (const Scored& partial : beam) extend(partial, corner, next);
      keepBest(next, kBeam);
      beam = std::move(next);
    }
    for (Scored& made : beam) made.cost = ringCost(network_, made.corners);
    return beam;
  }

 private:
  void extend(const Scored& partial, int corner, std::vector<Scored>& next) const {
    for (const auto& [place, cost] : candidates(partial, corner)) {
      Scored made = partial;
      made.corners.push_back(place);
      const Vec2 wall = place - partial.corners.back();
      made.heading = std::atan2(wall.y(), wall.x());
      made.cost += cost;
      for (const Observation& o : network_.observations)
        if (std::max({o.from, o.to, o.at}) == corner) made.cost += roughCost(o, made.corners);
      next.push_back(std::move(made));
    }
  }

  std::vector<std::pair<Vec2, double>> candidates(const Scored& partial, int corner) const {
    std::vector<std::pair<Vec2, double>> places;
    const auto length = lengths_[corner - 1];
    const Vec2& from = partial.corners.back();
    const Vec2 heading(std::cos(partial.heading), std::sin(partial.heading));
    std::vector<std::pair<int, double>> reached;  // corners that have a place and a read length to this one
    for (int other = 0; other < corner; ++other)
      if (const auto read = readLength(network_, other, corner)) reached.push_back({other, *read});
    for (std::size_t i = 0; i < reached.size() && i < kMostReached; ++i)
      for (std::size_t j = i + 1; j < reached.size() && j < kMostReached; ++j)
        for (const Vec2& place : crossingOfCircles(partial.corners[reached[i].first], reached[i].second,
                                                   partial.corners[reached[j].first], reached[j].second))
          places.push_back({place, cross(heading, place - from) < 0 ? kTurns[1].cost : 0});
    for (const Turn& turn : turnsAt(corner - 1)) {
      const double turned = partial.heading + turn.angle;
      const Vec2 along(std::cos(turned), std::sin(turned));
      places.push_back({from + length.value_or(usual_) * along, turn.cost + (length ? 0 : 1)});
      if (length) continue;
      for (const auto& [other, read] : reached)
        if (const auto place = alongRay(from, along, partial.corners[other], read))
          places.push_back({*place, turn.cost});
    }
    return withoutRepeats(std::move(places));
  }

  /// Readings that agree lead to one place many times, and would leave no room for another.
  static std::vector<std::pair<Vec2, double>> withoutRepeats(std::vector<std::pair<Vec2, double>> places) {
    std::stable_sort(places.begin(), places.end(),
                     [](const auto& a, const auto& b) { return a.second < b.second; });
    std::vector<std::pair<Vec2, double>> kept;
    for (const auto& place : places)
      if (std::none_of(kept.begin(), kept.end(),
                       [&](const auto& other) { return (other.first - place.first).norm() < kSamePlace; }))
        kept.push_back(place);
    return kept;
  }

  /// Where a wall from `from` is `radius` away from `centre`, farther point.
  static std::optional<Vec2> alongRay(const Vec2& from, const Vec2& along, const Vec2& centre,
                                      double radius) {
    const double middle = (centre - from).dot(along);
    const double across = cross(along, centre - from);
    if (std::abs(across) >= radius) return std::nullopt;
    const double t = middle + std::sqrt(radius * radius - across * across);
    if (t <= 0) return std::nullopt;
    return from + t * along;
  }

  std::vector<Turn> turnsAt(int corner) const {
    std::vector<Turn> turns(kTurns.begin(), kTurns.end());
    for (const Observation& o : network_.observations) {
      if (o.kind == ObservationKind::Angle && !o.unsignedValue && o.at == corner &&
          o.from == network_.next(corner) && o.to == network_.before(corner))
        turns.push_back({kPi - o.value, 0});
    }
    return turns;
  }

  static constexpr std::size_t kMostReached = 4;

  const SurveyNetwork& network_;
  std::vector<std::optional<double>> lengths_;
  double usual_;
};

bool isSame(const Ring& a, const Ring& b) {
  for (std::size_t i = 0; i < a.size(); ++i)
    if ((a[i] - b[i]).norm() > kSameStart) return false;
  return true;
}

}  // namespace

std::vector<Ring> startingCorners(const SurveyNetwork& network) {
  std::vector<Scored> all = RightAngles(network).all();
  for (Scored& made : Walk(network).all()) all.push_back(std::move(made));
  std::stable_sort(all.begin(), all.end(), isCheaper);
  std::vector<Ring> starts;
  for (const Scored& made : all) {
    const bool isKnown = std::any_of(starts.begin(), starts.end(),
                                     [&](const Ring& start) { return isSame(start, made.corners); });
    if (!isKnown) starts.push_back(made.corners);
    if (starts.size() == kMostStarts) break;
  }
  return starts;
}

}  // namespace baywright
