// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <string_view>

namespace baywright {

/// The layers of a drawing, from what lies at the bottom to what lies on top; drawn in this order.
enum class Layer {
  Floor,           ///< the room's floor as an area
  Standing,        ///< where on the floor the ball may lie for a swing
  SwingBound,      ///< full-extension envelope, dashed
  SwingClearance,  ///< required clearance around the expected envelope, thin outline
  Swing,           ///< expected envelope, soft fill
  Capture,         ///< fan of shots that the screen catches
  Rebound,         ///< where a ball comes back, and where nobody may stand
  Beam,            ///< light from lens to screen
  Walls,           ///< cut by the section: thick, poched
  Openings,        ///< leaves, windows, door arcs
  Overhead,        ///< above the cut: dashed (beams, tracks, ceiling edges)
  Fixtures,        ///< below the cut: thin
  Ways,            ///< ways to the exits
  Bay,             ///< frame, screen, mat, strike points, monitor, projector
  People,          ///< stance of golfers, bystanders
  Survey,          ///< readings, corner error ellipses
  Tightest,        ///< the two tightest points of findings
  Dimensions,
  Labels,
};

enum class LineWeight { Thin, Thick };

/// Two widths only, one to two (ISO 128-2 series).
constexpr double lineWidthMm(LineWeight weight) {
  return weight == LineWeight::Thick ? 0.5 : 0.25;
}

enum class LineDash { Continuous, Dashed, DashDot, Dotted };

struct LayerStyle {
  Layer layer;
  std::string_view name;     ///< for people and for exported files
  std::string_view meaning;  ///< one line for the legend
  LineWeight weight;
  LineDash dash;
};

/// One row a layer, in the order of the enumeration.
const std::array<LayerStyle, 19>& layerStyles();
const LayerStyle& styleOf(Layer layer);

}  // namespace baywright
