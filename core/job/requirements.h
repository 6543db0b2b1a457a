// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace baywright {

/// The clearances and limits that a job asks for; the fitter may change each. Metres unless said.
/// Sources stand beside the values; they are guidance, the local code and the makers' instructions decide.
struct Requirements {
  double swingClearance = 0.15;  ///< from the expected swing to anything hard (common practice, no source)
  double frameAbove = 0.076;     ///< to fit the top cover, about 3 in (common practice, no source)
  double frameBeside = 0.05;     ///< hands and cable ties (common practice, no source)
  double frameBehind = 0.05;     ///< behind the travelling screen (common practice, no source)
  double exitWidth = 0.813;      ///< clear width at an exit, 32 in at 90 degrees (IRC R311.2)
  double wayWidth = 0.914;       ///< clear width of the way to an exit, 36 in (IRC R311.6, ADA 2010 403.5.1)
  double reboundSpeed = 3.0;     ///< m/s that a ball may have when it is back at the golfer (invented)
  double ballSpeed = 70.0;       ///< m/s of the shots to be caught, a strong amateur's; tour mean is 75
  /// rad/s of backspin: 4500 rpm, the middle of the bag; tour averages run from 2700 (driver) to 9300 (wedge)
  double ballSpin = 471;
  double altitude = 0;            ///< metres above sea level, for the density of the air (ISO 2533)
  double dispersionUp = 0.070;    ///< radians, standard deviation of those shots' launch angle (invented)
  double dispersionSide = 0.070;  ///< radians, of their launch direction (invented)
  double meanLaunch = 0.28;       ///< radians, mean launch angle over the bag, about 16 degrees
  double captureShare = 0.98;     ///< share of that dispersion which must land on the screen (invented)
  double coverage = 0.98;         ///< share of the screen that the picture must fill (invented)
  double spill = 0.05;            ///< share of the picture that may miss the screen (invented)
  double uniformity = 0.60;       ///< lowest over highest of nine points (invented)
  double contrast = 15.0;         ///< with room light on; basic decision making (ANSI/InfoComm 3M-2011)
  double ambient = 20.0;          ///< lx of room light on the screen (invented)
  double shadow = 0.02;           ///< share of the picture that a golfer at address may shade (invented)
  double obstruction = 0.002;     ///< share of the picture that anything fixed may shade (invented)

  bool operator==(const Requirements&) const = default;
};

}  // namespace baywright
