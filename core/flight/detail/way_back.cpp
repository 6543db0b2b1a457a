// SPDX-License-Identifier: Apache-2.0
#include "flight/detail/way_back.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "flight/detail/slice.h"

namespace baywright::detail {
namespace {

constexpr double kForever = std::numeric_limits<double>::infinity();
/// A ball that leaves the floor slower than this upward (a hop of 5 mm) rolls from there on.
constexpr double kLeastHop = 0.31;  // m/s
/// A bound on the work: a ball that still hops after so many events is taken to roll.
constexpr int kMostHops = 100;

enum class Region { InFrame, InRoom };

class Walk {
 public:
  Walk(const ReboundInput& input, const BallState& state)
      : input_(input), ball_(input.surroundings.ball), gravity_(input.surroundings.gravity), state_(state) {
    legs_.reserve(16);
  }

  std::vector<BackLeg> legs() {
    for (int i = 0; i < kMostHops && !rolls_; ++i) hop();
    roll();
    return std::move(legs_);
  }

 private:
  struct Event {
    double time = kForever;
    std::optional<Surface> surface;  ///< none: the ball only passes the frame's mouth
    bool isFloor = false;
  };

  double mouth() const { return mouthOf(input_.frame); }

  /// Time until a coordinate that moves evenly reaches a bound that it is moving toward.
  static double timeTo(double bound, double position, double velocity) {
    const double gap = bound - position;
    if (velocity == 0 || gap * velocity < 0) return kForever;
    return gap / velocity;
  }
  double timeToFloor() const {
    const double drop = std::max(0.0, state_.position.z() - ball_.radius);
    const double up = state_.velocity.z();
    const double fast = std::sqrt(up * up + 2 * gravity_ * drop);
    return up > 0 ? (up + fast) / gravity_ : (fast - up > 0 ? 2 * drop / (fast - up) : 0);
  }
  double timeToRoof(double height) const {
    const double rise = std::max(0.0, height - ball_.radius - state_.position.z());
    const double up = state_.velocity.z();
    const double square = up * up - 2 * gravity_ * rise;
    if (up <= 0 || square < 0) return kForever;
    return 2 * rise / (up + std::sqrt(square));
  }

  Event nextEvent() const {
    const double fabric = input_.screen.restitution;
    Event next;
    const auto consider = [&](double time, std::optional<Surface> surface) {
      if (time < next.time) next = {time, std::move(surface), false};
    };
    const double toFloor = timeToFloor();
    const double landing = std::abs(state_.velocity.z() - gravity_ * toFloor);
    next = {toFloor, Surface{Vec3::UnitZ(), restitutionOf(input_.floor, landing), input_.floor.friction},
            true};
    if (region_ == Region::InFrame) {
      consider(timeToRoof(input_.frame.height), Surface{-Vec3::UnitZ(), fabric, kForever});
      if (state_.velocity.x() > 0)
        consider(timeTo(0, state_.position.x(), state_.velocity.x()),
                 Surface{-Vec3::UnitX(), fabric, kForever});
      const double side = std::copysign(1.0, state_.velocity.y());
      const double wall = std::max(std::abs(state_.position.y()), input_.frame.width / 2 - ball_.radius);
      consider(timeTo(side * wall, state_.position.y(), state_.velocity.y()),
               Surface{-side * Vec3::UnitY(), fabric, kForever});
      if (state_.velocity.x() < 0)
        consider(timeTo(mouth(), state_.position.x(), state_.velocity.x()), std::nullopt);
    } else {
      consider(timeToRoof(input_.ceiling),
               Surface{-Vec3::UnitZ(), input_.ceilingRestitution, input_.floor.friction});
      if (state_.velocity.x() > 0)
        consider(timeTo(mouth(), state_.position.x(), state_.velocity.x()), std::nullopt);
    }
    return next;
  }

  void hop() {
    const Event event = nextEvent();
    const BackLeg leg{state_.position, state_.velocity, Vec3(0, 0, -gravity_), event.time};
    state_.position = leg.at(event.time);
    state_.velocity = leg.velocityAt(event.time);
    if (event.time > 0) legs_.push_back(leg);
    if (!event.surface) {
      region_ = region_ == Region::InFrame ? Region::InRoom : Region::InFrame;
      return;
    }
    state_ = bounced(state_, *event.surface, ball_);
    rolls_ = event.isFloor && state_.velocity.z() < kLeastHop;
  }

  /// It grips at once and then slows evenly; toward the screen it ends there.
  void roll() {
    state_.position.z() = ball_.radius;
    state_.velocity.z() = 0;
    state_ = bounced(state_, {Vec3::UnitZ(), 0, kForever}, ball_);
    const double speed = state_.velocity.norm();
    const double slowing = 5.0 / 7.0 * input_.floor.rolling * gravity_;
    if (!(speed > 0) || !(slowing > 0)) return;
    BackLeg leg{state_.position, state_.velocity, -slowing / speed * state_.velocity, speed / slowing};
    if (const double beyond = leg.at(leg.duration).x(); beyond > 0) {
      const double share = -state_.position.x() / (beyond - state_.position.x());
      leg.duration *= 1 - std::sqrt(std::max(0.0, 1 - share));
    }
    legs_.push_back(leg);
  }

  const ReboundInput& input_;
  const Ball& ball_;
  double gravity_;
  BallState state_;
  Region region_ = Region::InFrame;
  bool rolls_ = false;
  std::vector<BackLeg> legs_;
};

}  // namespace

CaptureInput shotInput(const ReboundInput& input) {
  return {input.frame, input.screen, input.ball, input.shots, {}, input.surroundings};
}

bool reachesScreen(const Arrival& arrival) {
  return arrival.meets == Meets::Screen || arrival.meets == Meets::Surround;
}

BallState thrownBack(const ReboundInput& input, const Arrival& arrival) {
  const double back = input.screen.restitution;
  const double along = input.alongFabric.value_or(back);
  const Vec3 velocity(-back * arrival.velocity.x(), along * arrival.velocity.y(),
                      along * arrival.velocity.z());
  return {arrival.position, velocity, Vec3::Zero()};
}

std::vector<BackLeg> wayBack(const ReboundInput& input, BallState state) {
  return Walk(input, state).legs();
}

}  // namespace baywright::detail
