// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "geometry/shapes.h"
#include "optics/obstruction.h"

namespace baywright {

/// A person at one moment, as capsules in the bay frame.
struct BodyAtMoment {
  double time = 0;  ///< seconds, any zero
  std::span<const Capsule> capsules;
};

/// What a golfer takes from the picture. Shares as in Obstruction; limbs that shade the same place count
/// once.
struct Shadow {
  double atAddress = 0;
  double worst = 0;  ///< largest share at one moment of the swing; atAddress when there are no moments
  std::size_t worstMoment = 0;                       ///< its index in the swing, the first of equals
  double mean = 0;                                   ///< average over the moments given
  std::vector<std::vector<Vec2>> outlinesAtAddress;  ///< one a capsule that shades, on the screen, (s, t)
  std::vector<std::vector<Vec2>> outlinesAtWorst;
};

Shadow shadowOf(const Picture& picture, std::span<const Capsule> address,
                std::span<const BodyAtMoment> swing);

}  // namespace baywright
