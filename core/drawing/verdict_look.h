// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "clearance/finding.h"
#include "drawing/linework.h"
#include "units/unit_system.h"

namespace baywright {

/// "clear", "tight", "blocked", "unknown".
std::string_view wordOf(Verdict verdict);
/// Tick, tilde, bar, question mark.
SymbolKind symbolOf(Verdict verdict);
/// What the hatch of hatch.h looks like, for a legend: "no hatch", "dots", ...
std::string_view hatchNameOf(Verdict verdict);

/// The margin and its 95 % half-width in the job's unit, "−64 mm ± 5 mm" or "12.0 % ± 1.0 %"; "—" where it is
/// not known.
std::string marginText(const Finding& finding, const UnitSystem& units);

}  // namespace baywright
