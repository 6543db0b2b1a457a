// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "geometry/polygon_validity.h"
#include "job/detail/validation.h"
#include "units/angle_text.h"
#include "units/length_text.h"
#include "units/number_text.h"

namespace baywright::detail {
namespace {

std::string outside(const std::string& what, const std::string& value, const std::string& low,
                    const std::string& high) {
  return "The " + what + " is " + value + ", but must lie between " + low + " and " + high + ".";
}

/// Units that can be printed with, whatever a damaged job says.
UnitSystem printable(const UnitSystem& units) {
  const bool known =
      std::find(kInchFractions.begin(), kInchFractions.end(), units.inchFraction) != kInchFractions.end();
  return known ? units : UnitSystem{units.length, UnitSystem{}.inchFraction, units.decimal};
}

}  // namespace

ProblemList::ProblemList(const UnitSystem& units) : units_(printable(units)) {}

void ProblemList::add(std::string what, std::string where, std::string next) {
  problems_.push_back({std::move(what), std::move(where), std::move(next)});
}

void ProblemList::length(const std::string& what, double metres, Range range, const std::string& where) {
  if (!range.contains(metres)) add(outside(what, text(metres), text(range.low), text(range.high)), where);
}

void ProblemList::length(const std::string& what, const Dimension& dimension, Range range,
                         const std::string& where) {
  length(what, dimension.value, range, where);
}

void ProblemList::angle(const std::string& what, double radians, Range range, const std::string& where) {
  if (range.contains(radians)) return;
  const auto degrees = [&](double value) { return formatAngle(value, units_); };
  add(outside(what, degrees(radians), degrees(range.low), degrees(range.high)), where);
}

void ProblemList::number(const std::string& what, double value, Range range, const std::string& where) {
  if (range.contains(value)) return;
  const auto plain = [&](double x) { return formatNumber(x, x == std::floor(x) ? 0 : 3, units_); };
  add(outside(what, plain(value), plain(range.low), plain(range.high)), where);
}

void ProblemList::point(const std::string& what, const Vec2& point, const std::string& where) {
  length("x of the " + what, point.x(), limits::kCoordinate, where);
  length("y of the " + what, point.y(), limits::kCoordinate, where);
}

void ProblemList::polygon(const std::string& what, const std::vector<Vec2>& corners,
                          const std::string& where) {
  for (const Vec2& corner : corners)
    if (!limits::kCoordinate.contains(corner.x()) || !limits::kCoordinate.contains(corner.y()))
      return point(what + "'s corner", corner, where);
  const auto valid = validated(Polygon{corners, {}});
  if (!valid) add(valid.error().what, where + " / " + what, valid.error().next);
}

std::string ProblemList::text(double metres) const {
  return formatLength(metres, units_);
}

}  // namespace baywright::detail
