// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "exchange/dxf_drawing.h"

namespace baywright {

/// How a layer looks to somebody who wonders which ones hold the walls.
struct LayerView {
  int layer = 0;  ///< index into DxfDrawing::layers
  std::string name;
  std::size_t curves = 0;  ///< shown or not
  double length = 0;       ///< of its lines, drawing units
  double closedArea =
      0;  ///< within the largest of its curves that are closed by themselves, drawing units squared
  bool suggested = false;  ///< may hold walls
  std::string reason;      ///< a sentence: why it is suggested, or why not
};

/// Every layer that has lines, those that may hold walls first, then by length of lines. Suggested are layers
/// whose name speaks of walls; where none does, all whose name speaks of nothing else. Layers that are not
/// shown are never suggested. Only ever a suggestion: names are free.
std::vector<LayerView> viewLayers(const DxfDrawing& drawing);

}  // namespace baywright
