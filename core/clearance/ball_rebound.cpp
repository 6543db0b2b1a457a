// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "clearance/checks.h"
#include "clearance/quantities.h"
#include "units/length_text.h"
#include "units/quantity_text.h"

namespace baywright {
namespace {

/// Standard uncertainty of the returning speed as a share of it. It follows the screen's restitution, for
/// which no figure is published and which few have measured (invented).
constexpr double kSpeedShare = 0.2;

std::string distanceText(const CheckInput& input, const ReboundSafety& safety) {
  if (!safety.smallestDistance) return " No distance to the screen would be enough: find a softer screen.";
  if (*safety.smallestDistance <= input.option.placement.strikeDistance) return {};
  return " From " + formatLength(*safety.smallestDistance, input.job.units) + " on it would be slow enough.";
}

}  // namespace

CheckResult checkBallRebound(const CheckInput& input) {
  CheckResult result;
  for (const BallSetting& ball : input.balls) {
    if (!ball.zone.rebound) continue;
    const bool right = ball.zone.hand == Hand::Right;
    const std::string hand = right ? "right" : "left";
    const ReboundSafety& safety = *ball.zone.rebound;
    const Rebound& worst = safety.worst;
    Finding finding;
    finding.check = "ball_rebound";
    finding.key = "ball_rebound/" + hand;
    finding.subjects = {input.option.kit.screen.id};
    finding.subject = right ? "Rebound toward a right-hander" : "Rebound toward a left-hander";
    finding.unit = MarginUnit::Speed;
    finding.margin = Uncertain{input.job.requirements.reboundSpeed - worst.speedAtStrike,
                               kSpeedShare * worst.speedAtStrike};
    finding.verdict = verdictOf(*finding.margin);
    const BayPose& bay = input.option.placement.bay;
    finding.points = std::pair(worldFromBay(bay, ball.zone.ball), worldFromBay(bay, worst.rest));
    const auto speed = [&](double v) { return formatQuantity(v, QuantityKind::Speed, input.job.units); };
    finding.sentence = worst.speedAtStrike > 0
                           ? finding.subject + ": a ball comes back at up to " + speed(worst.speedAtStrike) +
                                 ", " + speed(input.job.requirements.reboundSpeed) + " is allowed." +
                                 distanceText(input, safety)
                           : finding.subject + ": balls stop " + formatLength(worst.reach, input.job.units) +
                                 " from the screen.";
    finding.source = "restitution of the screen as entered, no published figure; limit as agreed in the job";
    result.findings.push_back(std::move(finding));
    const auto add = [&](std::string_view name, double value, const char* unit) {
      result.figures.push_back({figureName({"ball", hand, "rebound", name}), value, unit});
    };
    add("speed", worst.speedAtStrike, "m/s");
    add("speed_after_screen", worst.velocityOut.norm(), "m/s");
    add("landing", -worst.landing.x(), "m");
    add("reach", worst.reach, "m");
    add("past_strike_point", std::max(0.0, worst.reach - input.option.placement.strikeDistance), "m");
    add("energy", worst.energyIn, "J");
    if (safety.smallestDistance) add("smallest_distance", *safety.smallestDistance, "m");
  }
  return result;
}

}  // namespace baywright
