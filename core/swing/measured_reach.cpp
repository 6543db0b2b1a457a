// SPDX-License-Identifier: Apache-2.0
#include "swing/measured_reach.h"

#include <algorithm>
#include <cmath>

#include "swing/cover.h"
#include "swing/figures.h"

namespace baywright {
namespace {

constexpr double kLeastCock =
    0.45;  // nearly straight: below, the club no longer gets past the top of its arc
constexpr double kMostCock = 1.25;
constexpr double kMeets = 1e-3;  // metres, what a tape is read to

/// How far the head gets from the hub up the plane, for a cock of the wrists; falls as the cock grows.
double reachUpPlane(const SwingPathInput& input, double cock) {
  constexpr int kSteps = 64;
  double best = 0;
  for (const SwingLeg leg : {SwingLeg::Backswing, SwingLeg::FollowThrough}) {
    const LegAngles& angles = legAngles(input.style, leg);
    for (int i = 0; i <= kSteps; ++i) {
      const double share = static_cast<double>(i) / kSteps;
      const double arms = angles.arms(share);
      const double arm = input.posture.arm() * bodySchedule(input.style).armReach(arms);
      best = std::max(best, -arm * std::cos(arms) - input.posture.club * std::cos(angles.club(share, cock)));
    }
  }
  return best;
}

double cockForReach(const SwingPathInput& input, double reach) {
  double less = kLeastCock;
  double more = kMostCock;
  for (int i = 0; i < 24; ++i) {
    const double middle = (less + more) / 2;
    (reachUpPlane(input, middle) > reach ? less : more) = middle;
  }
  return (less + more) / 2;
}

/// What is missing to the goal, up and behind; zero where nothing was taped.
Vec2 missing(const SwingPathInput& input, const ReachGoal& goal) {
  const EnvelopeFigures figures = figuresOf(coverOfClub(swingPathOf(input)), Hand::Right);
  return {goal.highest ? *goal.highest - figures.highest.value : 0,
          goal.behind ? *goal.behind - figures.behindGolfer.value : 0};
}

}  // namespace

std::optional<ReachFit> fitReach(const SwingPathInput& modelled, const ReachGoal& goal) {
  SwingPathInput input = modelled;
  input.hand = Hand::Right;
  const Vec2 first = missing(input, goal);
  const double slope = input.posture.planeSlope;
  const double upPlane = first.x() * std::sin(slope) + first.y() * std::cos(slope);
  input.cock = cockForReach(input, reachUpPlane(input, 1) + upPlane);

  // The extremes lie where the arc is shifted by the whole shift, so one step is exact unless another part of
  // the swing becomes the extreme; then a second one is.
  for (int step = 0; step < 4; ++step) {
    const Vec2 rest = missing(input, goal);
    if (rest.cwiseAbs().maxCoeff() < kMeets / 10) break;
    input.arcShift += Vec3(0, -rest.y(), rest.x());
    if (input.arcShift.norm() > kLongestArcShift) return std::nullopt;
  }
  if (!(missing(input, goal).cwiseAbs().maxCoeff() <= kMeets)) return std::nullopt;
  return ReachFit{input.cock, input.arcShift, input.posture.arm() + input.posture.club};
}

}  // namespace baywright
