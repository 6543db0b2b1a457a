// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "base/progress.h"
#include "exchange/dxf_drawing.h"
#include "exchange/dxf_entity.h"
#include "exchange/dxf_read.h"

namespace baywright::detail {

using DxfKindCounts = std::map<std::string, DxfKindCount>;

/// Entities as they stand in the file: those of a block, or of the drawing itself.
struct DxfContents {
  std::vector<DxfEntity> entities;
  DxfKindCounts kinds;
};

struct DxfBlock {
  std::string name;
  Vec3 base = Vec3::Zero();
  bool external = false;  ///< its contents are in another file
  DxfContents contents;
};

/// A DXF file taken in, with its blocks still in one piece.
struct DxfDocument {
  std::string version;
  DrawingUnit unit = DrawingUnit::NotStated;
  std::optional<bool> metric;
  std::vector<DxfLayer> layers;
  std::map<std::string, DxfBlock> blocks;  ///< by name in lower case
  DxfContents model;
  std::vector<std::string> notes;
  bool hasSections = false;
};

/// Never fails: what cannot be read is noted. `hasSections` is false for a text that is no DXF at all.
DxfDocument readDocument(std::string_view bytes, const DxfLimits& limits, const Progress& progress);

/// ASCII letters in lower case: DXF names are the same in either.
std::string lowerName(std::string_view name);

}  // namespace baywright::detail
