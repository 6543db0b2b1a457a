// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "base/uncertain.h"
#include "geometry/closest.h"
#include "geometry/frames.h"
#include "units/unit_system.h"

namespace baywright {

/// One of the four ways along and across a bay.
enum class BayWay { Forward, Back, Right, Left };

/// The tightest place of something that can be moved, as `first`, and its margin there.
struct TightPlace {
  Closest closest;
  Uncertain margin;
};

/// Where it would be tightest after a shift, world metres; nothing where it would meet nothing.
using PlaceAfter = std::function<std::optional<TightPlace>(const Vec3& shift)>;

/// What would be enough: a move along one of the bay's own lines, metres, in steps of kMoveGrain or half an
/// inch.
struct FreeingMove {
  BayWay way = BayWay::Forward;
  double distance = 0;
};

inline constexpr double kMoveGrain = 0.010;
/// Farther than this it is another plan, metres.
inline constexpr double kFarthestMove = 1.5;

/// A move after which `after` is clear, in the way that helps most where it is tightest, else in the next
/// best. At most one step longer than it must be where the nearest thing is flat, and longer past round
/// things. Asks `after` a few times. Nothing for a margin that is clear or has no number, for places that are
/// freed up or down rather than sideways, and where it takes more than kFarthestMove.
std::optional<FreeingMove> freeingMove(const TightPlace& now, const PlaceAfter& after, const BayPose& bay,
                                       const UnitSystem& units);

/// By how much lower it would have to be to be clear, in the same steps; as above.
std::optional<double> freeingDrop(const TightPlace& now, const PlaceAfter& after, const UnitSystem& units);

/// "to the right, facing the screen", "toward the screen's side": for what is moved in the room.
std::string wayInRoom(BayWay way);
/// "to the right", "nearer to the screen", "farther from the screen": for what is moved in the bay.
std::string wayInBay(BayWay way);
/// " Moving the bay 410 mm to the right, facing the screen, would clear it."
std::string movingText(const std::string& what, double distance, const std::string& way,
                       const UnitSystem& units);

}  // namespace baywright
