// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <vector>

#include "geometry/polygon.h"
#include "swing/envelope.h"

namespace baywright {

/// Along which axis of the swing frame (d, r, u) a swing is looked at.
enum class SwingSight { FromAbove, DownRange, FromTheSide };

/// A swing seen along one axis, as regions in the two other coordinates of the swing frame: (d, r) from
/// above, (r, u) down-range, (d, u) from the side, these two cut off at the floor; metres. Outer rings
/// counter-clockwise, holes clockwise.
struct SwingOutline {
  std::vector<Ring> expected;
  std::vector<Ring> clearance;      ///< the expected one grown by the required clearance
  std::vector<Ring> fullExtension;  ///< the bound
  std::vector<Ring> address;        ///< the golfer and the club before the swing
};

/// Corners are kept within this of the true outline, metres: a quarter of a thin line at 1:20.
inline constexpr double kOutlineTolerance = 2e-3;

SwingOutline outlineOf(const Swing& swing, SwingSight sight, double clearance);

/// Outlines of swings, kept while the swing is the same object: merging some hundred capsules takes
/// milliseconds, moving the result with the bay takes none. Swings are shared and never change, so an outline
/// stays right as long as its swing lives. One thread at a time.
class SwingOutlines {
 public:
  const SwingOutline& of(const std::shared_ptr<const Swing>& swing, SwingSight sight, double clearance);

 private:
  struct Entry {
    std::weak_ptr<const Swing> swing;
    SwingSight sight;
    double clearance;
    SwingOutline outline;
  };
  std::vector<std::unique_ptr<Entry>> entries_;
};

}  // namespace baywright
