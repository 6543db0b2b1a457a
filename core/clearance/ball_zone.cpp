// SPDX-License-Identifier: Apache-2.0
#include "clearance/ball_zone.h"

#include <algorithm>
#include <array>
#include <tuple>

#include "clearance/memo.h"
#include "geometry/rigid_map.h"

namespace baywright {
namespace {

struct Bounce {
  std::optional<ReboundSafety> rebound;
  std::optional<DangerZone> danger;
};

std::vector<Obstacle> inBay(std::span<const RoomObstacle> obstacles, const BayPose& bay) {
  const RigidMap world = worldFromBay(bay);
  const RigidMap toBay{world.linear.transpose(), -(world.linear.transpose() * world.offset)};
  std::vector<Obstacle> bodies;
  for (const RoomObstacle& obstacle : obstacles) {
    // Capture knows the frame by itself; what was not measured would stand in every ball's way.
    if (obstacle.kind == ObstacleKind::Frame || !obstacle.missing.empty()) continue;
    bodies.push_back({obstacle.id, transformed(obstacle.solid, toBay)});
  }
  return bodies;
}

std::vector<Hand> handsOf(const Job& job) {
  std::vector<Hand> hands;
  for (const Hand hand : {Hand::Right, Hand::Left}) {
    if (std::any_of(job.golfers.begin(), job.golfers.end(),
                    [&](const Golfer& golfer) { return golfer.swings && golfer.hand == hand; })) {
      hands.push_back(hand);
    }
  }
  if (hands.empty()) hands.push_back(Hand::Right);
  return hands;
}

Bounce bounceOf(const ReboundInput& input, Hand hand, double speedLimit) {
  Bounce bounce;
  if (auto safety = reboundSafety(input, speedLimit)) bounce.rebound = std::move(*safety);
  DangerInput danger;
  danger.rebound = input;
  danger.hand = hand;
  danger.returningSpeed = speedLimit;
  if (auto zone = dangerZone(danger)) bounce.danger = std::move(*zone);
  return bounce;
}

/// Two standard deviations hold 95 % of launch angles and of directions.
constexpr double kFanSigmas = 2;

BallSetting settingOf(const CaptureInput& input, Hand hand) {
  BallSetting setting;
  setting.zone.hand = hand;
  setting.zone.ball = input.ball;
  auto capture = captureOf(input);
  if (!capture) {
    setting.problem = capture.error();
    return setting;
  }
  setting.zone.capture = std::move(*capture);
  const Shots& shots = input.shots;
  setting.zone.heightAtScreen = heightAtScreen(input, shots.meanLaunch, shots.meanDirection);
  setting.zone.highShotAtScreen =
      heightAtScreen(input, shots.meanLaunch + kFanSigmas * shots.sigmaLaunch, shots.meanDirection);
  setting.zone.air = input.surroundings.air;
  if (auto fan = fanOf(input, rangeOf(input.shots, kFanSigmas))) setting.zone.fan = std::move(*fan);
  return setting;
}

}  // namespace

struct BallZoneMaker::Kept {
  using Inputs = std::tuple<Frame, Screen, Vec3, Shots, double, Air>;

  std::array<Memo<Inputs, Bounce>, 2> bounces;
  std::array<Memo<Inputs, std::vector<Vec2>>, 2> windows;
  std::array<Memo<Inputs, std::optional<ShotFigures>>, 2> meanShots;
};

BallZoneMaker::BallZoneMaker() : kept_(std::make_unique<Kept>()) {}
BallZoneMaker::~BallZoneMaker() = default;
BallZoneMaker::BallZoneMaker(BallZoneMaker&&) noexcept = default;
BallZoneMaker& BallZoneMaker::operator=(BallZoneMaker&&) noexcept = default;

std::vector<BallSetting> BallZoneMaker::make(const Job& job, std::span<const RoomObstacle> obstacles) {
  const Option& option = job.option();
  const std::vector<Obstacle> bodies = inBay(obstacles, option.placement.bay);
  std::vector<BallSetting> settings;
  for (const Hand hand : handsOf(job)) {
    CaptureInput input;
    input.frame = option.kit.frame;
    input.screen = option.kit.screen;
    input.ball = ballAtRest(option.kit.mat, option.placement, hand);
    input.shots = shotsFrom(job.requirements);
    input.obstacles = bodies;
    input.surroundings = surroundingsFrom(job.requirements);
    BallSetting setting = settingOf(input, hand);
    const Kept::Inputs inputs{
        input.frame,           input.screen, input.ball, input.shots, job.requirements.reboundSpeed,
        input.surroundings.air};
    const auto which = static_cast<std::size_t>(hand == Hand::Left);
    const Bounce& bounce = kept_->bounces[which].get(inputs, [&] {
      ReboundInput rebound;
      rebound.frame = input.frame;
      rebound.screen = input.screen;
      rebound.ball = input.ball;
      rebound.shots = input.shots;
      rebound.surroundings = input.surroundings;
      return bounceOf(rebound, hand, job.requirements.reboundSpeed);
    });
    setting.zone.rebound = bounce.rebound;
    setting.zone.danger = bounce.danger;
    setting.zone.window =
        kept_->windows[which].get(inputs, [&] { return captureWindow(input).value_or(std::vector<Vec2>()); });
    setting.zone.meanShot = kept_->meanShots[which].get(inputs, [&]() -> std::optional<ShotFigures> {
      const auto figures = shotFigures(input, input.shots.meanLaunch, input.shots.meanDirection);
      return figures ? std::optional(*figures) : std::nullopt;
    });
    settings.push_back(std::move(setting));
  }
  return settings;
}

}  // namespace baywright
