// SPDX-License-Identifier: Apache-2.0
#include "drawing/layers.h"

namespace baywright {

const std::array<LayerStyle, 18>& layerStyles() {
  using enum LineWeight;
  using enum LineDash;
  static constexpr std::array<LayerStyle, 18> styles{{
      {Layer::Floor, "Floor", "Floor", Thin, Solid},
      {Layer::SwingBound, "Swing bound", "Farthest reach of a swing with straight wrists", Thin, Dashed},
      {Layer::SwingClearance, "Swing clearance", "Clearance asked for around the swing", Thin, Solid},
      {Layer::Swing, "Swing", "Space that body and club sweep through", Thin, Solid},
      {Layer::Capture, "Capture", "Shots that the screen catches", Thin, DashDot},
      {Layer::Rebound, "Rebound", "Where a ball may come back", Thin, Dotted},
      {Layer::Beam, "Beam", "Light from the projector", Thin, DashDot},
      {Layer::Walls, "Walls", "Walls, cut", Thick, Solid},
      {Layer::Openings, "Openings", "Doors and windows", Thin, Solid},
      {Layer::Overhead, "Overhead", "Above the cut: ceiling edges, beams, tracks", Thin, Dashed},
      {Layer::Fixtures, "Fixtures", "What stands in the room", Thin, Solid},
      {Layer::Ways, "Ways", "Way out, and where it is narrowest", Thin, DashDot},
      {Layer::Bay, "Bay", "Frame, screen, mat, projector", Thin, Solid},
      {Layer::People, "People", "Where people stand", Thin, Solid},
      {Layer::Survey, "Survey", "Readings and how sure the corners are", Thin, Solid},
      {Layer::Tightest, "Tightest", "Where a finding is tightest", Thick, Solid},
      {Layer::Dimensions, "Dimensions", "Dimensions", Thin, Solid},
      {Layer::Labels, "Labels", "Names", Thin, Solid},
  }};
  return styles;
}

const LayerStyle& styleOf(Layer layer) {
  return layerStyles()[static_cast<std::size_t>(layer)];
}

}  // namespace baywright
