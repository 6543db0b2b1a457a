// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <vector>

#include "drawing/scene_parts.h"

namespace baywright::detail {

/// What a scan shows that the model of the room does not: cubes of 5 cm in which something was seen, inside the
/// room and off its walls, floor, ceiling and fixtures, with the faces that lie free. Everything, where there
/// are no walls yet. The cubes grow where a scan is so large that they would be too many.
MeshBuilder leftoverOf(const RoomScan& scan, const Room& room);

/// Leftovers of scans, kept while scan and room stay the same. One thread at a time. Internal to `drawing`.
class ScanLeftovers {
 public:
  ScanLeftovers();
  ~ScanLeftovers();
  const MeshBuilder& of(const RoomScan& scan, const Room& room);
  /// Forgets all others.
  void keepOnly(const std::vector<RoomScan>& scans);

 private:
  struct Entry;
  std::vector<std::unique_ptr<Entry>> entries_;
};

/// Solids of the visible scans.
std::vector<SceneSolid> scanSolids(const SceneInput& input, ScanLeftovers& leftovers);

}  // namespace baywright::detail
