// SPDX-License-Identifier: Apache-2.0
// Problems of flight, from a job's text to its figures.
#include <cmath>

#include "textbook.h"

namespace baywright::reference {
namespace {

using namespace testing;

struct Shot {
  double speed;
  double launch;
  double spin;  ///< rpm
  double altitude = 0;
};

Textbook struck(const Shot& shot, double distance = 3.0) {
  JobBuilder builder = garage(12, 9);
  builder.withCeiling(5).bayAt(10, 4.5, 0).strikingFrom(distance).withoutProjector().withoutMonitor();
  return Textbook(builder.with([&](Job& j) {
    j.requirements.ballSpeed = shot.speed;
    j.requirements.meanLaunch = shot.launch;
    j.requirements.ballSpin = shot.spin * kPi / 30;
    j.requirements.altitude = shot.altitude;
  }));
}

// ISO 2533:1975, table of the standard atmosphere: 1.2250, 1.1117, 1.0066, 0.9093 kg/m3 at 0, 1000, 2000,
// 3000 m geometric height; our altitudes are geopotential, 0.5 m less at 3000 m.
TEST(FlightProblem, DensityOfTheStandardAtmosphere) {
  EXPECT_NEAR(struck({70, 0.2, 2600, 0})["ball.right.air_density"], 1.2250, 1e-4);
  EXPECT_NEAR(struck({70, 0.2, 2600, 1000})["ball.right.air_density"], 1.1117, 2e-4);
  EXPECT_NEAR(struck({70, 0.2, 2600, 1524})["ball.right.air_density"], 1.0555, 2e-4);
  EXPECT_NEAR(struck({70, 0.2, 2600, 2000})["ball.right.air_density"], 1.0066, 2e-4);
  EXPECT_NEAR(struck({70, 0.2, 2600, 3000})["ball.right.air_density"], 0.9093, 3e-4);
}

// Over three metres a fast ball flies nearly as in a vacuum: h = d tan a - g d^2 / (2 v^2 cos^2 a), t = d /
// (v cos a). Lift and drag add a few centimetres at most; without spin there is no lift, and drag alone takes
// a few millimetres.
TEST(FlightProblem, FirstMetresAreNearlyAParabola) {
  const double a = 12_deg;
  const Textbook answer = struck({70, a, 0});
  const double start = answer.job.option().kit.mat.thickness + 0.5 * 1.680 * 0.0254;
  const double vacuum = 3 * std::tan(a) - 9.80665 * 9 / (2 * 70 * 70 * std::cos(a) * std::cos(a));
  EXPECT_NEAR(vacuum, 0.6283, 1e-4);
  EXPECT_NEAR(answer["ball.right.height_at_screen"] - start, vacuum, 0.002);
  EXPECT_NEAR(answer["ball.right.time_to_screen"], 3 / (70 * std::cos(a)), 0.001);
  const double spun = struck({70, a, 2600})["ball.right.height_at_screen"] - start;
  EXPECT_GT(spun, vacuum);
  EXPECT_LT(spun, 0.6646);  // with lift and drag coefficients of 0.20 and 0.25 it is 0.6465 m
  const double speed = answer["ball.right.speed_at_screen"];
  EXPECT_NEAR(answer["ball.right.energy_at_screen"], 0.5 * 0.045926 * speed * speed, 0.01);
}

// Drag: dv/dx = -rho A CD v / (2 m), so that v falls off exponentially with the path while CD does not
// change; with the 0.247 of Bearman & Harvey's table for 70 m/s and 2000 rpm.
TEST(FlightProblem, SpeedFallsOffWithThePath) {
  const Textbook answer = struck({70, 0.1, 2000}, 4);
  const double area = kPi * std::pow(0.5 * 1.680 * 0.0254, 2);
  const double path = 4 / std::cos(0.1);
  const double expected = 70 * std::exp(-1.225 * area * 0.247 * path / (2 * 0.045926));
  EXPECT_NEAR(answer["ball.right.speed_at_screen"], expected, 0.06);  // and gravity takes 0.06 on the way up
}

// A ball of 45.93 g and 42.67 mm at 70 m/s, 10 degrees, 2600 rpm with Bearman & Harvey's coefficients: an
// integration of our own outside the program (fourth-order Runge-Kutta, 1 ms) gives 220.1 m, 23.5 m, 6.30
// s, 26.1 m/s, 35.4 degrees.
TEST(FlightProblem, WholeFlightOfADrive) {
  const Textbook answer = struck({70, 10_deg, 2600});
  EXPECT_NEAR(answer["ball.right.carry"], 220.1, 0.3);
  EXPECT_NEAR(answer["ball.right.apex"], 23.46, 0.05);
  EXPECT_NEAR(answer["ball.right.flight_time"], 6.302, 0.01);
  EXPECT_NEAR(answer["ball.right.landing_speed"], 26.1, 0.1);
  EXPECT_NEAR(answer["ball.right.landing_angle"], 35.4_deg, 0.2_deg);
}

// Tour averages: driver 167 mph, 10.9 degrees, 2686 rpm carries 275 yd; 7-iron 120 mph, 16.3 degrees, 7097
// rpm 172 yd.
TEST(FlightProblem, CarriesOfTourAverages) {
  const double mph = 0.44704;
  const double yard = 0.9144;
  EXPECT_NEAR(struck({167 * mph, 10.9_deg, 2686})["ball.right.carry"] / yard, 275, 0.06 * 275);
  EXPECT_NEAR(struck({120 * mph, 16.3_deg, 7097})["ball.right.carry"] / yard, 172, 0.06 * 172);
}

// Thinner air carries farther.
TEST(FlightProblem, CarriesFartherUpHigh) {
  EXPECT_GT(struck({70, 12_deg, 2600, 1600})["ball.right.carry"],
            struck({70, 12_deg, 2600})["ball.right.carry"] + 3);
}

// Restitution: what comes off the screen has the stated share of the speed that went in; energy is m v^2 / 2.
TEST(FlightProblem, ReboundKeepsTheShareThatTheScreenGivesBack) {
  JobBuilder builder = garage(12, 9);
  builder.withCeiling(5).bayAt(10, 4.5, 0).strikingFrom(3).withoutProjector().withoutMonitor();
  builder.kit().screen.restitution = 0.10;
  const Textbook answer(builder);
  const double in = std::sqrt(2 * answer["ball.right.rebound.energy"] / 0.045926);
  EXPECT_NEAR(answer["ball.right.rebound.speed_after_screen"] / in, 0.10, 1e-6);
  EXPECT_GE(answer["ball.right.rebound.reach"], answer["ball.right.rebound.landing"]);
}

// The first leg of the way back, under gravity alone: with the share e of what came in, from the height at
// which it came in, it lands after t = (v + sqrt(v^2 + 2 g h)) / g. Without spin the path in is a parabola
// that drag shortens; its slope at the screen is that of the launch less g x / v^2.
TEST(FlightProblem, ReboundLandsWhereAParabolaEnds) {
  const double g = 9.80665;
  for (const double e : {0.1, 0.2, 0.3}) {
    JobBuilder builder = garage(14, 9);
    builder.withCeiling(6).bayAt(13, 4.5, 0).withFrame(6, 4, 0.3).withScreen(5.8, 3.9).strikingFrom(3);
    builder.kit().screen.restitution = e;
    const Textbook answer(builder.withoutProjector().withoutMonitor().with([&](Job& j) {
      j.requirements.ballSpeed = 50;
      j.requirements.meanLaunch = 0.2;
      j.requirements.ballSpin = 0;
      j.requirements.dispersionUp = 0;
    }));
    const double speed = answer["ball.right.speed_at_screen"];
    const double slope = std::tan(0.2) - g * 3 / std::pow(50 * std::cos(0.2), 2);
    const double level = e * speed / std::hypot(1, slope);
    const double up = level * slope;
    const double drop = answer["ball.right.height_at_screen"] - 0.5 * 1.680 * 0.0254;
    const double time = (up + std::sqrt(up * up + 2 * g * drop)) / g;
    EXPECT_NEAR(answer["ball.right.rebound.landing"], level * time, 0.01 * level * time) << e;
    EXPECT_NEAR(answer["ball.right.rebound.energy"], 0.5 * 0.045926 * speed * speed, 0.01) << e;
  }
}

}  // namespace
}  // namespace baywright::reference
