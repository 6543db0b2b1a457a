// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>

#include "geometry/vec.h"

namespace baywright {

/// From `low` to `high`, both included.
struct Range {
  double low = 0;
  double high = 0;

  bool contains(double value) const { return value >= low && value <= high; }  // false for NaN
  double nearest(double value) const { return value < low ? low : value > high ? high : value; }
};

/// What a job may hold. The ranges are wide: they part slips of the hand (a stature of 188 m, a frame of zero
/// width) from the merely unusual. Where no source is named the figure is ours. Metres, radians, kilograms.
namespace limits {

// On the plan and in height.
inline constexpr Range kCoordinate{-1000, 1000};  ///< as far as units/length_text.h reads
inline constexpr Range kWallLength{0.01, 3000};   ///< a shorter one is a slip of the mouse
inline constexpr Range kWallThickness{0, 3};
inline constexpr Range kCeilingHeight{1.0, 30};  ///< at its highest; a slope may come down to the floor
inline constexpr Range kSlope{-10, 10};
inline constexpr double kCornerSigma = 10;  ///< a corner that is known worse than this is not known

// Openings.
inline constexpr Range kOpeningSize{0.1, 30};
inline constexpr Range kSill{0, 30};
inline constexpr Range kPanel{0.001, 0.3};  ///< thickness of a leaf or of a sectional panel
inline constexpr Range kOpenAngle{0.01, kPi};
inline constexpr Range kTrackHeadroom{0, 3};
inline constexpr Range kTrackDepth{0, 30};
/// Openings may overlap each other or their wall's end by this much: sizes that were typed in fractions of
/// an inch add up to a little more than the whole.
inline constexpr double kOpeningSlack = 1e-6;

// Fixtures.
inline constexpr Range kFixtureSize{0.001, 100};
inline constexpr Range kFixtureLevel{-5, 35};

// People. Clubs: Rules of Golf Equipment Rules, part 2 section 1c: 18 in to 48 in, and 46 in locally; a
// little more is let through for clubs that do not conform.
inline constexpr Range kStature{1.0, 2.3};
inline constexpr Range kClubLength{0.457, 1.25};
inline constexpr Range kClubLie{0.7, 1.3};
inline constexpr Range kReach{0.2, 6};
inline constexpr Range kBystanderRadius{0.05, 2};
inline constexpr Range kBystanderHeight{0.2, 2.5};

// Kit.
inline constexpr Range kFrameSize{0.3, 20};
inline constexpr Range kFrameDepth{0.02, 10};
inline constexpr Range kTube{0.005, 0.5};
inline constexpr Range kTolerance{0, 0.2};
inline constexpr Range kScreenSize{0.3, 20};
inline constexpr Range kScreenBottom{0, 10};
inline constexpr Range kScreenTravel{0, 3};
inline constexpr Range kScreenGain{0.05, 10};
inline constexpr Range kRestitution{0, 1};
inline constexpr Range kMatSize{0.1, 10};
inline constexpr Range kMatThickness{0.001, 0.5};
inline constexpr Range kMonitorSize{0.005, 3};
inline constexpr Range kThrowRatio{0.1, 20};
inline constexpr Range kPanelPixels{100, 20000};
inline constexpr Range kLumens{1, 1e6};
inline constexpr Range kContrastRatio{1, 1e9};
inline constexpr Range kLensOffset{-3, 3};
inline constexpr Range kLensShift{0, 3};
inline constexpr Range kFocus{0.01, 200};
inline constexpr Range kKeystone{0, 1.3};
inline constexpr Range kBodySize{0.005, 3};
inline constexpr Range kMass{0, 500};

// Placement.
inline constexpr Range kStrikeDistance{0.1, 50};
inline constexpr Range kInBay{-100, 100};
inline constexpr Range kHeading{-1000, 1000};
inline constexpr Range kAxisTurn{-kPi, kPi};
inline constexpr Range kUsedShift{-3, 3};

// Scans.
inline constexpr Range kScanSigma{0, 1};
inline constexpr Range kDotsPerMetre{0, 1e6};

// How much of anything. More is no room but a file that wants to keep the program busy.
inline constexpr std::size_t kMostThings = 20000;
inline constexpr std::size_t kMostCorners = 2000;
inline constexpr std::size_t kLongestName = 1000;   ///< bytes
inline constexpr std::size_t kLongestNote = 20000;  ///< bytes

}  // namespace limits

}  // namespace baywright
