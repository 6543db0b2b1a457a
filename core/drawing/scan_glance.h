// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "geometry/shapes.h"
#include "survey/scan_geometry.h"

namespace baywright {

/// A scan seen from aside and above with one of its axes up, without what lies on top, so that a person sees
/// whether it stands on its feet and how large it is. Units of the scan, x to the right, y up.
struct ScanGlance {
  struct Dot {
    Vec2 at = Vec2::Zero();
    double height = 0;  ///< 0 at the floor, 1 at the ceiling
  };
  std::vector<Dot> dots;           ///< the farthest first
  std::optional<Segment2> person;  ///< from the feet to the top of the head, where the unit is known
};

/// How tall the person is. Metres.
inline constexpr double kGlancePerson = 1.80;

/// Points all over the scan's surfaces, kMostGlanced or fewer.
std::vector<Eigen::Vector3f> glanceSamples(const ScanGeometry& scan);
inline constexpr std::size_t kMostGlanced = 20'000;

/// Outliers are left out. Empty where there are no samples.
ScanGlance glanceAt(std::span<const Eigen::Vector3f> samples, UpAxis up, std::optional<double> metresPerUnit);

}  // namespace baywright
