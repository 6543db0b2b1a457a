// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "base/id.h"
#include "base/problem.h"
#include "flight/shots.h"
#include "flight/trajectory.h"
#include "geometry/solid.h"
#include "job/kit.h"

namespace baywright {

/// What a shot meets first. In the bay frame, with the ball's centre as the moving point and R its radius:
///   Screen      reaches d = 0 with the whole ball on the screen's face
///   Surround    reaches d = 0 beside, above or below the screen, inside the frame: the edge, fabric or
///   padding if fitted SideFabric  the inside of a side wall, between the frame's mouth and the screen
///   RoofFabric  the inside of the roof, likewise
///   FrameTube   a front member of the frame, which throws the ball back
///   Floor       the floor before anything else (a topped ball)
///   Obstacle    one of the given solids
///   Nothing     passes the frame and meets nothing within kCaptureReach
enum class Meets { Screen, Surround, SideFabric, RoofFabric, FrameTube, Floor, Obstacle, Nothing };
inline constexpr int kMeetsCount = 8;

/// Flights are followed this far from the ball, metres.
inline constexpr double kCaptureReach = 15.0;

/// Something in the room, in the bay frame. Several may carry one id (the pieces of a concave thing).
struct Obstacle {
  Id id;
  Solid body;
};

/// The frame's mouth is at d = -(depth - behindScreen); its members are `tube` thick and stand inside width
/// and height. Obstacles need not include the frame or the floor; walls, ceiling, fixtures, projector and
/// monitor belong in it.
struct CaptureInput {
  Frame frame;
  Screen screen;
  Vec3 ball{-3.0, 0, 0.05};  ///< centre of the ball at rest; d < 0
  Shots shots;
  std::span<const Obstacle> obstacles;
  Surroundings surroundings;
};

/// One shot to its first contact.
struct Arrival {
  Meets meets = Meets::Nothing;
  Id obstacle;  ///< when meets is Obstacle
  double time = 0;
  Vec3 position = Vec3::Zero();  ///< centre of the ball
  Vec3 velocity = Vec3::Zero();
};
Result<Arrival> arrivalOf(const CaptureInput& input, double launchAngle, double direction);

/// Height at which a shot crosses the plane of the screen's face, whatever stands in its way; the ball's
/// centre. None if it comes down or turns before.
std::optional<double> heightAtScreen(const CaptureInput& input, double launchAngle, double direction);

/// How much of the dispersion hits one thing in the room, and its most likely shot.
struct ObstacleHit {
  Id id;
  double share = 0;
  double launchAngle = 0;
  double direction = 0;
  Vec3 position = Vec3::Zero();
  double speed = 0;  ///< m/s on arrival
};

/// Shares add up to one. `window` is the region of directions, as (direction, launch angle) in radians, whose
/// shots would reach the screen's face if nothing but the floor stood before it: counter-clockwise with
/// direction to the right, on its boundary the ball just touches the screen's edge from inside. Empty when
/// the screen cannot be reached.
struct Capture {
  double share[kMeetsCount] = {};  ///< by Meets
  std::vector<ObstacleHit> hits;   ///< most shots first
  std::vector<Vec2> window;

  double of(Meets what) const { return share[static_cast<int>(what)]; }
  double caught() const { return of(Meets::Screen); }
};

/// The flights are the parabolas of near_flight.h with pure backspin, so each stays in its vertical plane; in
/// each of a fixed set of planes the launch angles at which the outcome changes are found by bisection, and
/// the normal distribution is integrated exactly between them and by Gauss-Legendre across the planes, split
/// where the frame's and screen's sides lie. Deterministic. The error of a share is below kShareError for
/// screen and frame; behind obstacles, whose sides are not split at, it may reach a few times that. Obstacles
/// are grown by the ball's radius face by face (an edge by up to 0.7 radius too much: never missed),
/// cylinders enclosed in a 16-sided bar. Refused with a sentence: a ball that is not in front of the screen,
/// speeds and angles out of range.
inline constexpr double kShareError = 1e-3;
Result<Capture> captureOf(const CaptureInput& input);

/// Outline of a bundle of shots for drawing: from the ball along the outermost shots to the screen's plane
/// and back. Plan in (d, r), elevation in (d, u); closed polygons.
struct ShotRange {
  double launchLow = 0;
  double launchHigh = 0;
  double directionLeft = 0;
  double directionRight = 0;
};
/// Mean plus and minus that many standard deviations.
ShotRange rangeOf(const Shots& shots, double sigmas);
struct Fan {
  std::vector<Vec2> plan;
  std::vector<Vec2> elevation;
};
Fan fanOf(const CaptureInput& input, const ShotRange& range);

}  // namespace baywright
