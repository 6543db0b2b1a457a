// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "survey/ceiling_fit.h"

namespace baywright::detail {

/// Standard uncertainty of a ceiling height, metres: its instrument's and kUneven.
double sigmaOf(const CeilingReading& reading);

/// z = height + slope . (p - anchor), least squares over some readings.
struct ReadPlane {
  Vec2 anchor = Vec2::Zero();
  double height = 0;
  Vec2 slope = Vec2::Zero();

  double at(const Vec2& p) const { return height + slope.dot(p - anchor); }
};

/// One or two planes through readings, and which reading lies on which.
struct CeilingModel {
  CeilingShape shape = CeilingShape::NotMeasured;
  std::vector<ReadPlane> planes;
  std::vector<int> planeOf;  ///< of each reading
  int unknowns = 0;
  double squares = 0;  ///< of the residuals, each over its sigma
  // Where two planes part: on the line of points p with across . p = where; plane 0 lies below it.
  Vec2 across = Vec2::Zero();
  double where = 0;
  double lowEnd = 0;   ///< the last reading of plane 0 along `across`
  double highEnd = 0;  ///< the first reading of plane 1
  bool isAlongALine = false;

  /// What the simplest ceiling has least of: `squares`, Akaike's two for each unknown, and what a second
  /// plane must explain beyond that.
  double judged() const;
};

/// The ceilings that the readings could be of, and of which no reading says that they cannot be (chi-square
/// test at kCeilingLevel). `floor` gives the directions along which two planes may part; empty: one plane
/// only.
std::vector<CeilingModel> agreeingModels(const Ring& floor, std::span<const CeilingReading> readings);

}  // namespace baywright::detail
