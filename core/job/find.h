// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <iterator>

#include "base/id.h"

namespace baywright {

/// The thing with this id in a list of things, or null. Const list, const thing. The pointer lives as long as
/// the list is neither changed nor destroyed.
///
///     if (const Wall* wall = findById(job.room.walls, id)) ...
template <class List>
auto findById(List& things, Id id) -> decltype(&*std::begin(things)) {
  const auto found =
      std::find_if(std::begin(things), std::end(things), [&](const auto& thing) { return thing.id == id; });
  return found == std::end(things) ? nullptr : &*found;
}

}  // namespace baywright
