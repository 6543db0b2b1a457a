// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <optional>
#include <string_view>
#include <vector>

#include "clearance/finding.h"
#include "clearance/obstacle.h"
#include "flight/capture.h"
#include "flight/danger_zone.h"
#include "flight/fan.h"
#include "flight/rebound.h"
#include "flight/shot_figures.h"
#include "geometry/frames.h"
#include "job/golfer.h"
#include "optics/brightness.h"
#include "optics/keystone.h"
#include "optics/mounting_zone.h"
#include "optics/obstruction.h"
#include "optics/picture.h"
#include "optics/shadow.h"
#include "swing/envelope.h"

namespace baywright {

/// One golfer swinging one club where the option puts the strike point. The golfer stands as high as the ball
/// lies: on the mat, or beside it on something of its thickness.
struct SwingZone {
  Id golfer;
  Id club;
  Hand hand = Hand::Right;
  BayPose bay;
  Vec3 strikePointInBay = Vec3::Zero();  ///< (d, r, u)
  Vec3 strikePoint = Vec3::Zero();       ///< world
  std::shared_ptr<const Swing> swing;    ///< in the swing frame (swing/envelope.h); null when it has none
  double clearance = 0;                  ///< required from the expected swing to anything hard, metres
  double worstMoment = 0;                ///< moment of the swing at which it is tightest
  Verdict verdict = Verdict::Unknown;    ///< the worst of this golfer and club's findings
};
/// `p` is (d, r, u) about the strike point.
Vec3 worldFromSwing(const SwingZone& zone, const Vec3& p);

/// The projector's picture, as the option places it, no corner moved unless said.
struct PictureZone {
  Picture picture;
  CornerFit corners;
  Brightness brightness;
  Obstructions obstructions;     ///< by whatever is fixed; parts index `obstructedBy`
  std::vector<Id> obstructedBy;  ///< one a solid that was asked
  struct GolferShadow {
    Id golfer;
    Id club;
    Shadow shadow;
    double worstMoment = 0;   ///< moment of the swing at which it is largest
    double addressSigma = 0;  ///< standard uncertainty of shadow.atAddress
  };
  std::vector<GolferShadow> shadows;         ///< each golfer with the first club
  std::optional<MountingZone> mountingZone;  ///< at the lens's height; none for kit that makes no picture
};

/// What becomes of balls struck from one strike point, bay frame.
struct BallZone {
  Hand hand = Hand::Right;
  Vec3 ball = Vec3::Zero();  ///< centre of the ball at rest
  Capture capture;
  Air air;
  std::optional<ShotFigures> meanShot;
  std::optional<double> heightAtScreen;    ///< of the mean shot's centre
  std::optional<double> highShotAtScreen;  ///< of a shot two standard deviations higher
  std::vector<Vec2> window;  ///< captureWindow: (direction, launch angle) that cross the screen's face
  Fan fan;                   ///< shots within two standard deviations
  std::optional<ReboundSafety> rebound;
  std::optional<DangerZone> danger;
};

/// The floor that a hinged leaf sweeps, or that a sectional door takes up when open, world plan.
struct DoorSweep {
  Id opening;
  std::vector<Vec2> sector;  ///< counter-clockwise
  Verdict verdict = Verdict::Unknown;
};

/// The widest way from the strike point to an exit.
struct Way {
  Id exit;
  /// World plan, from the strike point to the middle of the exit; empty: no way at all.
  std::vector<Vec2> path;
  double clearWidth = 0;        ///< metres, of its narrowest place, the exit itself left aside
  double sigma = 0;             ///< standard uncertainty of clearWidth
  Vec2 narrowA = Vec2::Zero();  ///< the place, from side to side: WidestWay
  Vec2 narrowB = Vec2::Zero();
  Verdict verdict = Verdict::Unknown;
};

/// Everything that follows from a job: the one source of every view, every sheet and the command line.
struct Assessment {
  std::vector<Finding> findings;       ///< worst first; equally bad ones in the order of their keys
  std::vector<Quantity> quantities;    ///< by name
  std::vector<SwingZone> swings;       ///< golfers and clubs in the job's order
  std::optional<PictureZone> picture;  ///< none without a projector, or when it makes no picture
  std::vector<BallZone> balls;         ///< one a hand in use, right first
  std::vector<DoorSweep> doors;
  std::vector<Way> ways;
  std::shared_ptr<const std::vector<RoomObstacle>> obstacles;  ///< never null

  int count(Verdict verdict) const;
  /// The finding with this key, or null.
  const Finding* find(std::string_view key) const;
};

}  // namespace baywright
