// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

namespace baywright {

/// A thing's name inside a sentence: "Beam" is "the beam", "Wall" with a letter is "wall A"; a name that
/// looks like one of its own ("Beam 2", "Robin's shelf", "LED panel") stays as it is.
std::string inSentence(std::string_view name);

/// The same at the start of a sentence: "The beam", "Wall A", "Beam 2".
std::string startingSentence(std::string_view inSentence);

}  // namespace baywright
