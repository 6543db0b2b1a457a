// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "base/problem.h"
#include "units/unit_system.h"

namespace baywright {

/// A scale is written as its denominator: 50 for 1:50, 48 for 1/4 inch to the foot.

enum class ScaleFamily {
  Metric,        ///< 1:1, 1:2, 1:5, 1:10 ... 1:1000, ISO 5455:1979
  Architectural  ///< 3 in, 1 1/2 in, 1 in ... 1/16 in to the foot, practice in the US (values from memory)
};

/// The family that a job's unit asks for.
ScaleFamily scaleFamilyOf(const UnitSystem& units);

/// Denominators from the largest drawing to the smallest.
std::span<const double> scaleLadder(ScaleFamily family);

/// True from 1:1 to 1:1000. Nothing else is drawn.
bool isScale(double denominator);

/// "1:50", or "1/4″ = 1′-0″" for a denominator of the architectural family.
std::string scaleName(double denominator);
/// As it stands on a drawing: "SCALE 1:50" (ISO 5455 clause 3), "1/4″ = 1′-0″".
std::string scaleText(double denominator);

/// "1:50", "50", "1/4\" = 1'", "1/4 in = 1 ft". Refused: anything larger than the thing itself or smaller
/// than 1:1000.
Result<double> parseScale(std::string_view text);

}  // namespace baywright
