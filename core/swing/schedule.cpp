// SPDX-License-Identifier: Apache-2.0
#include "swing/schedule.h"

#include <array>
#include <vector>

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;

struct ArmAndCock {
  double arms;  // degrees
  double cock;  // degrees
};

LegAngles legThrough(std::initializer_list<ArmAndCock> poses) {
  const ArmAndCock& last = *(poses.end() - 1);
  const double clubAtEnd = last.arms + last.cock;
  std::vector<CurvePoint> points;
  for (const ArmAndCock& pose : poses)
    points.push_back({(pose.arms + pose.cock) / clubAtEnd, pose.arms * kDegree});
  return {monotoneCurve(points, Ends::Free), clubAtEnd * kDegree};
}

ScalarCurve overArms(std::initializer_list<CurvePoint> degreesAndValue, double unit) {
  std::vector<CurvePoint> points;
  for (const CurvePoint& point : degreesAndValue) points.push_back({point.at * kDegree, point.value * unit});
  return monotoneCurve(points, Ends::Flat);
}

ScalarCurve always(double value) {
  return monotoneCurve({{0, value}, {1, value}}, Ends::Flat);
}

/// Back, down, through. The downswing is checked against the double pendulum.
std::array<LegAngles, 3> expectedLegs() {
  return {legThrough({{0, 0}, {15, 1}, {30, 6}, {60, 26}, {90, 54}, {112, 68}, {123, 89}, {130, 112}}),
          legThrough({{0, 0}, {16.25, 49}, {32.5, 79}, {48.75, 97}, {65, 107}, {97.5, 112}, {130, 112}}),
          legThrough({{0, 0},
                      {-20, -3},
                      {-45, -14},
                      {-70, -36},
                      {-90, -56},
                      {-110, -70},
                      {-126, -94},
                      {-140, -121},
                      {-150, -138}})};
}

std::array<LegAngles, 3> straightLegs() {
  const LegAngles back = legThrough({{0, 0}, {180, 0}});
  return {back, back, legThrough({{0, 0}, {-180, 0}})};
}

/// Shares and angles are set by eye and by the limbs that they must leave whole: the reach of the arms is
/// what the lead arm allows at the top and the trail arm after impact, before both fold.
BodySchedule expectedBody() {
  BodySchedule body;
  body.shoulderTurn =
      overArms({{-150, -105}, {-90, -86}, {-45, -50}, {0, 0}, {45, 40}, {90, 74}, {130, 92}}, kDegree);
  body.hipTurn = overArms({{-150, -90}, {-60, -55}, {0, 0}, {70, 30}, {130, 45}}, kDegree);
  body.hubShift = overArms({{-150, 0.10}, {-110, 0.08}, {-60, 0.035}, {0, 0}, {60, -0.025}, {130, -0.03}}, 1);
  body.pelvisShift = overArms({{-150, 0.12}, {-90, 0.09}, {-45, 0.05}, {0, 0}, {130, -0.02}}, 1);
  body.standUp = overArms({{-150, 1}, {-110, 0.5}, {-60, 0.15}, {0, 0}, {130, 0}}, 1);
  body.armReach = overArms({{-150, 0.5}, {-120, 0.8}, {-90, 0.97}, {-60, 1}, {60, 1}, {130, 0.86}}, 1);
  body.flattening = overArms({{-150, 1}, {-110, 0.35}, {-70, 0}, {0, 0}}, 1);
  body.awayFromBall = overArms({{-50, 1}, {-10, 0}, {10, 0}, {50, 1}}, 1);
  return body;
}

}  // namespace

const LegAngles& legAngles(SwingStyle style, SwingLeg leg) {
  static const std::array<LegAngles, 3> expected = expectedLegs();
  static const std::array<LegAngles, 3> straight = straightLegs();
  const auto& legs = style == SwingStyle::Expected ? expected : straight;
  return legs[static_cast<std::size_t>(leg)];
}

const BodySchedule& bodySchedule(SwingStyle style) {
  static const BodySchedule expected = expectedBody();
  static const BodySchedule straight = [] {
    BodySchedule body = expectedBody();
    body.armReach = always(1);
    return body;
  }();
  return style == SwingStyle::Expected ? expected : straight;
}

}  // namespace baywright
