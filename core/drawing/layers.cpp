// SPDX-License-Identifier: Apache-2.0
#include "drawing/layers.h"

namespace baywright {

const std::array<LayerStyle, 19>& layerStyles() {
  using enum LineWeight;
  using enum LineDash;
  static constexpr std::array<LayerStyle, 19> styles{{
      {Layer::Floor, "Floor", "Floor", Thin, Continuous},
      {Layer::Standing, "Standing zone", "Where the ball may lie for the chosen swing", Thin, Dotted},
      {Layer::SwingBound, "Swing bound", "Farthest reach of a swing with straight wrists", Thin, Dashed},
      {Layer::SwingClearance, "Swing clearance", "Clearance asked for around the swing", Thin, Continuous},
      {Layer::Swing, "Swing", "Space that body and club sweep through", Thin, Continuous},
      {Layer::Capture, "Capture", "Shots that the screen catches", Thin, DashDot},
      {Layer::Rebound, "Rebound", "Where a ball may come back, and nobody may be", Thin, Dotted},
      {Layer::Beam, "Beam", "Light from the projector", Thin, DashDot},
      {Layer::Walls, "Walls", "Walls, cut", Thick, Continuous},
      {Layer::Openings, "Openings", "Doors and windows", Thin, Continuous},
      {Layer::Overhead, "Overhead", "Above the cut: ceiling edges, beams, tracks", Thin, Dashed},
      {Layer::Fixtures, "Fixtures", "What stands in the room", Thin, Continuous},
      {Layer::Ways, "Ways", "Way out, and where it is narrowest", Thin, DashDot},
      {Layer::Bay, "Bay", "Frame, screen, mat, projector", Thin, Continuous},
      {Layer::People, "People", "Where people stand", Thin, Continuous},
      {Layer::Survey, "Survey", "How sure corners are (95 %), 20 times enlarged", Thin, Continuous},
      {Layer::Tightest, "Tightest", "Where a finding is tightest", Thick, Continuous},
      {Layer::Dimensions, "Dimensions", "Dimensions", Thin, Continuous},
      {Layer::Labels, "Labels", "Names", Thin, Continuous},
  }};
  return styles;
}

const LayerStyle& styleOf(Layer layer) {
  return layerStyles()[static_cast<std::size_t>(layer)];
}

}  // namespace baywright
