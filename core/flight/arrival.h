// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "base/id.h"
#include "base/problem.h"
#include "flight/near_flight.h"
#include "flight/shots.h"
#include "geometry/solid.h"
#include "job/kit.h"

namespace baywright {

/// What a shot meets first.
enum class Meets {
  Screen,    ///< reaches d = 0 with the whole ball on the screen's face
  Surround,  ///< reaches d = 0 beside, above or below the face, inside the frame: fabric or padding if fitted
  SideFabric,  ///< a side wall of the frame
  RoofFabric,  ///< the roof of the frame, from below
  FrameTube,   ///< a front member of the frame, which throws the ball back
  Floor,       ///< the floor before anything else (a topped ball)
  Obstacle,    ///< one of the given solids
  Nothing,     ///< nothing within kCaptureReach
};
inline constexpr int kMeetsCount = 8;

/// Flights are followed for as long as the ball would need for this distance at its first speed, metres.
/// Shots of kNearFlightSpeed or more that pass over the frame do not come down on it within that.
inline constexpr double kCaptureReach = 15.0;

/// Something in the room, in the bay frame. Several may carry one id (the pieces of a concave thing).
struct Obstacle {
  Id id;
  Solid body;
};

/// The question that everything about struck balls starts from, in the bay frame. The frame's mouth is at
/// d = behindScreen - depth, or at the screen if that lies behind it; its posts stand at the sides and its
/// top member along the upper edge there, `tube` thick, inside width and height. Side walls are at r = ±width
/// / 2, the roof is at u = height. Obstacles need not include the frame, the screen or the floor; walls,
/// ceiling, fixtures, projector and monitor belong in it. An obstacle that already touches the resting ball
/// is what every shot meets.
struct CaptureInput {
  Frame frame;
  Screen screen;
  Vec3 ball{-3.0, 0, 0.05};  ///< centre of the ball at rest; -12 <= d < 0
  Shots shots;               ///< speeds from kNearFlightSpeed to 120 m/s
  std::span<const Obstacle> obstacles;
  Surroundings surroundings;
};

/// What is wrong with the input, if anything.
std::optional<Problem> problemWith(const CaptureInput& input);

/// One shot to its first contact, along the parabola of near_flight.h with pure backspin, so that it stays in
/// a vertical plane. Obstacles are grown by the ball's radius face by face: an edge reaches out farther than
/// the ball does (0.4 radius at a right angle, more at a sharp one), so none is missed. Cylinders are
/// enclosed in a 16-sided bar.
struct Arrival {
  Meets meets = Meets::Nothing;
  Id obstacle;  ///< when meets is Obstacle
  double time = 0;
  Vec3 position = Vec3::Zero();  ///< centre of the ball
  Vec3 velocity = Vec3::Zero();
};
Result<Arrival> arrivalOf(const CaptureInput& input, double launchAngle, double direction);

/// Height at which a shot crosses the plane of the screen's face, whatever stands in its way; the ball's
/// centre. None if it never gets there.
std::optional<double> heightAtScreen(const CaptureInput& input, double launchAngle, double direction);

/// From launch angle `from` to `to` in one vertical plane all shots meet the same.
struct LaunchSpan {
  double from = 0;
  double to = 0;
  Arrival middle;  ///< the shot halfway
};
/// All that shots of one direction meet, from the lowest launch angle to the highest; the spans join. Angles
/// where the outcome changes are found by steps of kLaunchStep and bisection to 1e-6 rad: what fills less
/// than a step may be missed (20 mm a metre away, so less than a ball's breadth within 2 m).
inline constexpr double kLaunchStep = 0.02;
struct SpanRange {
  double direction = 0;
  double lowest = -0.2;
  double highest = 1.2;
};
Result<std::vector<LaunchSpan>> launchSpans(const CaptureInput& input, const SpanRange& range);

}  // namespace baywright
