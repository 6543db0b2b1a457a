// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "base/uncertain.h"
#include "units/unit_system.h"

namespace baywright {

/// A thing's name inside a sentence: "Beam" is "the beam", "Wall" with a letter is "wall A"; a name that
/// looks like one of its own ("Beam 2", "Robin's shelf", "LED panel") stays as it is.
std::string inSentence(std::string_view name);

/// The same at the start of a sentence: "The beam", "Wall A", "Beam 2".
std::string startingSentence(std::string_view inSentence);

/// How much of a negative margin is missing: "64 mm", "under 1 mm" for what would print as nothing.
std::string missingText(Uncertain margin, const UnitSystem& units);

/// A margin and where it is, to the end of a sentence: "64 mm short at wall A.", "412 mm to spare at wall
/// A.", "12 mm to spare at wall A, but only known to ± 30 mm."
std::string marginText(Uncertain margin, const std::string& where, const UnitSystem& units);

}  // namespace baywright
