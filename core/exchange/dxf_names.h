// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace baywright::detail {

/// What a name of a layer or a block hints at. People name them freely: a hint is never more than that.
enum class NameHint { Wall, Door, Window, NotBuilt };

/// The name in lower case: Latin letters with the accents of western and central Europe, Greek and Cyrillic.
std::string foldedName(std::string_view utf8);

/// The hint and the word that gave it. Words of a dozen languages are known. NotBuilt (texts, dimensions,
/// hatches, frames, furniture, axes) wins over doors and windows, and those over walls: "A-WALL-PATT" is no
/// wall and "wall-doors" are doors.
struct HintedName {
  NameHint hint = NameHint::Wall;
  std::string_view word;
};
std::optional<HintedName> hintOf(std::string_view name);

/// True where some part of the name speaks of walls, whatever else it says: "A-WALL-PATT" is a filling of
/// walls.
bool namesWalls(std::string_view name);

}  // namespace baywright::detail
