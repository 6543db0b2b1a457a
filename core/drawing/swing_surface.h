// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <vector>

#include "drawing/mesh_builder.h"
#include "swing/envelope.h"

namespace baywright::detail {

/// Edge of the cells of the grid on which a swing's surface is found, metres.
inline constexpr double kSurfaceCell = 0.07;

/// The outer surface of all capsules together, for showing: the zero of their common distance on a grid,
/// found by surface nets (Gibson 1998), so that a see-through envelope has one skin instead of hundreds. Off
/// the true surface by less than one cell. In the frame of the capsules; empty without capsules.
MeshBuilder surfaceOf(const std::vector<SwingCapsule>& capsules);

/// Surfaces of swings, kept while the swing is the same object; see SwingOutlines.
class SwingSurfaces {
 public:
  struct Surface {
    MeshBuilder expected;
    MeshBuilder fullExtension;
  };
  const Surface& of(const std::shared_ptr<const Swing>& swing);

 private:
  struct Entry {
    std::weak_ptr<const Swing> swing;
    Surface surface;
  };
  std::vector<std::unique_ptr<Entry>> entries_;
};

}  // namespace baywright::detail
