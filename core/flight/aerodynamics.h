// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <variant>

#include "flight/ball.h"

namespace baywright {

/// How air acts on a spinning ball. Force = density v^2 / 2 * area * coefficient: drag against the motion,
/// lift square to it and to the spin axis. `spinDecay` slows the spin by the moment density v^2 / 2 * area *
/// diameter * coefficient.
struct Coefficients {
  double drag = 0;
  double lift = 0;
  double spinDecay = 0;
};

/// The same at every speed: 0 and 0 is a vacuum, 0.5 about a smooth sphere, 0.25 about a golf ball.
struct ConstantCoefficients {
  double drag = 0;
  double lift = 0;

  bool operator==(const ConstantCoefficients&) const = default;
};

/// Wind tunnel figures for a hexagonally dimpled ball: Bearman & Harvey, "Golf Ball Aerodynamics",
/// Aeronautical Quarterly 27 (1976) 112-122, figs 7 and 8, as tabulated for a university course in numerical
/// methods (tkt4140, NTNU), interpolated linearly in speed and spin. Valid for 13.7 to 88.1 m/s and 2000 to
/// 6000 rpm. Beyond the table its edge is kept, except that lift falls in proportion to the spin below 2000
/// rpm, so that a ball without spin has none. Read off a graph for an old dimple pattern, so coefficients may
/// be 5 to 10 % off for a ball of today; the carries of a tour professional's bag come out within 5 %, driver
/// to wedge. The default, since it alone covers the whole bag.
struct BearmanHarvey {
  bool operator==(const BearmanHarvey&) const = default;
};

/// Drag 0.171 + 0.62 S, lift 0.083 + 0.885 S, spin moment 0.0125 S with S = radius * spin / speed:
/// Quintavalla, "A generally applicable model for the aerodynamic behavior of golf balls", Science and Golf
/// IV (2002) 341-348. For drivers (S from about 0.05 to 0.2): carry comes out within 2 % there, but a tenth
/// short for a 7-iron and a quarter for a wedge.
struct LinearInSpinRatio {
  bool operator==(const LinearInSpinRatio&) const = default;
};

using Aerodynamics = std::variant<BearmanHarvey, LinearInSpinRatio, ConstantCoefficients>;

/// Speed in m/s through the air (> 0), spin in rad/s (>= 0).
Coefficients coefficientsAt(const Aerodynamics& model, const Ball& ball, double speed, double spin);

/// Whether the model's source covers this speed and spin.
bool isWithinSource(const Aerodynamics& model, const Ball& ball, double speed, double spin);

}  // namespace baywright
