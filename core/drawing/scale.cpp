// SPDX-License-Identifier: Apache-2.0
#include "drawing/scale.h"

#include <array>
#include <cmath>

#include "units/length_text.h"
#include "units/number_text.h"

namespace baywright {
namespace {

constexpr std::array kMetric = {1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0};

struct Architectural {
  double denominator;
  std::string_view inchesForAFoot;
};
constexpr std::array<Architectural, 11> kArchitectural = {{{4, "3″"},
                                                           {8, "1 1/2″"},
                                                           {12, "1″"},
                                                           {16, "3/4″"},
                                                           {24, "1/2″"},
                                                           {32, "3/8″"},
                                                           {48, "1/4″"},
                                                           {64, "3/16″"},
                                                           {96, "1/8″"},
                                                           {128, "3/32″"},
                                                           {192, "1/16″"}}};

constexpr auto kArchitecturalLadder = [] {
  std::array<double, kArchitectural.size()> ladder{};
  for (std::size_t i = 0; i < ladder.size(); ++i) ladder[i] = kArchitectural[i].denominator;
  return ladder;
}();

constexpr double kSmallestScale = 1000;

// Fractions of an inch are exact in binary, but the metres they become are not.
constexpr double kRatioRounding = 1e-9;

Result<double> ratioOf(std::string_view text) {
  const UnitSystem inches{LengthUnit::Inches, 16, '.'};
  if (const std::size_t equals = text.find('='); equals != std::string_view::npos) {
    const auto drawn = parseSize(text.substr(0, equals), inches);
    if (!drawn) return tl::unexpected(drawn.error());
    const auto real = parseSize(text.substr(equals + 1), inches);
    if (!real) return tl::unexpected(real.error());
    const double ratio = *real / *drawn;
    return std::abs(ratio - std::round(ratio)) < kRatioRounding * ratio ? std::round(ratio) : ratio;
  }
  const std::size_t colon = text.find(':');
  if (colon == std::string_view::npos) return parseNumber(text, inches);
  const auto drawn = parseNumber(text.substr(0, colon), inches);
  if (!drawn) return tl::unexpected(drawn.error());
  const auto real = parseNumber(text.substr(colon + 1), inches);
  if (!real) return tl::unexpected(real.error());
  return *real / *drawn;
}

}  // namespace

ScaleFamily scaleFamilyOf(const UnitSystem& units) {
  return isImperial(units.length) ? ScaleFamily::Architectural : ScaleFamily::Metric;
}

std::span<const double> scaleLadder(ScaleFamily family) {
  if (family == ScaleFamily::Architectural) return kArchitecturalLadder;
  return kMetric;
}

bool isScale(double denominator) {
  return denominator >= 1 && denominator <= kSmallestScale;
}

std::string scaleName(double denominator) {
  for (const Architectural& row : kArchitectural) {
    if (row.denominator == denominator) return std::string(row.inchesForAFoot).append(" = 1′-0″");
  }
  const int decimals = denominator == std::round(denominator) ? 0 : 1;
  return std::string("1:").append(formatNumber(denominator, decimals, UnitSystem{}));
}

std::string scaleText(double denominator) {
  const std::string name = scaleName(denominator);
  return name.starts_with("1:") ? std::string("SCALE ").append(name) : name;
}

Result<double> parseScale(std::string_view text) {
  const auto ratio = ratioOf(text);
  if (ratio && isScale(*ratio)) return *ratio;
  return fail(std::string("\"").append(text).append("\" is no scale from 1:1 to 1:1000."), {},
              "Write it as 1:50 or as 1/4\" = 1'.");
}

}  // namespace baywright
