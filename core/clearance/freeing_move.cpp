// SPDX-License-Identifier: Apache-2.0
#include "clearance/freeing_move.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "clearance/finding.h"
#include "units/length_text.h"

namespace baywright {
namespace {

/// A way is tried when at least this share of it leads out of the tightest place.
constexpr double kLeastShare = 0.3;
/// Places that a move may meet one after the other before it is given up.
constexpr int kRounds = 8;

/// What the margin lacks to be clear; none where it lacks nothing or is no number.
std::optional<double> lacking(Uncertain margin) {
  const Verdict verdict = verdictOf(margin);
  if (verdict != Verdict::Blocked && verdict != Verdict::Tight) return std::nullopt;
  return margin.halfWidth95() - margin.value;
}

double roundedUp(double metres, const UnitSystem& units) {
  const double grain = isImperial(units.length) ? 0.5 * 0.0254 : kMoveGrain;
  return std::ceil(metres / grain - 1e-9) * grain;
}

/// Two convex shapes are parted by a plane square to `escape`: their gap grows by the move's share along it.
std::optional<double> enoughAlong(const Vec3& way, const TightPlace& now, const PlaceAfter& after,
                                  const UnitSystem& units) {
  double distance = 0;
  std::optional<TightPlace> place = now;
  for (int round = 0; round < kRounds; ++round) {
    const auto missing = lacking(place->margin);
    if (!missing) return distance > 0 ? std::optional(distance) : std::nullopt;
    const double share = std::max(kLeastShare, way.dot(place->closest.escape));
    distance = roundedUp(distance + *missing / share, units);
    if (!(distance <= kFarthestMove)) return std::nullopt;
    place = after(distance * way);
    if (!place) return distance;
  }
  return std::nullopt;
}

}  // namespace

std::optional<FreeingMove> freeingMove(const TightPlace& now, const PlaceAfter& after, const BayPose& bay,
                                       const UnitSystem& units) {
  if (!lacking(now.margin)) return std::nullopt;
  struct Try {
    BayWay way;
    Vec2 along;
    double share;
  };
  std::array<Try, 4> tries = {{{BayWay::Forward, bay.down(), 0},
                               {BayWay::Back, -bay.down(), 0},
                               {BayWay::Right, bay.right(), 0},
                               {BayWay::Left, -bay.right(), 0}}};
  for (Try& each : tries) each.share = each.along.dot(flat(now.closest.escape));
  std::stable_sort(tries.begin(), tries.end(), [](const Try& a, const Try& b) { return a.share > b.share; });
  for (const Try& each : tries) {
    if (!(each.share >= kLeastShare)) break;
    if (const auto distance = enoughAlong(raised(each.along, 0), now, after, units))
      return FreeingMove{each.way, *distance};
  }
  return std::nullopt;
}

std::optional<double> freeingDrop(const TightPlace& now, const PlaceAfter& after, const UnitSystem& units) {
  if (!lacking(now.margin) || !(-now.closest.escape.z() >= kLeastShare)) return std::nullopt;
  return enoughAlong(-Vec3::UnitZ(), now, after, units);
}

std::string wayInRoom(BayWay way) {
  switch (way) {
    case BayWay::Forward:
      return "toward the screen's side";
    case BayWay::Back:
      return "away from the screen's side";
    case BayWay::Right:
      return "to the right, facing the screen";
    case BayWay::Left:
      break;
  }
  return "to the left, facing the screen";
}

std::string wayInBay(BayWay way) {
  switch (way) {
    case BayWay::Forward:
      return "nearer to the screen";
    case BayWay::Back:
      return "farther from the screen";
    case BayWay::Right:
      return "to the right";
    case BayWay::Left:
      break;
  }
  return "to the left";
}

std::string movingText(const std::string& what, double distance, const std::string& way,
                       const UnitSystem& units) {
  const bool hasAside = way.find(',') != std::string::npos;
  return " Moving " + what + " " + formatLength(distance, units) + " " + way + (hasAside ? "," : "") +
         " would clear it.";
}

}  // namespace baywright
