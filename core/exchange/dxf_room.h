// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/problem.h"
#include "exchange/dxf_drawing.h"
#include "survey/recognised_room.h"

namespace baywright {

/// What the person who brings a drawing says of it.
struct DxfChoices {
  std::vector<std::string> layers;            ///< those of the walls; empty: as viewLayers() suggests
  DrawingUnit unit = DrawingUnit::NotStated;  ///< wins over what the drawing states
  double tolerance = 0.005;                   ///< metres, for joining lines; more where ends miss each other
  double widestGap = 5.5;                     ///< metres
  std::size_t room = 0;  ///< which closed room, by size, frames of sheets last: 0 is the largest
};

/// "It measures 6400 by 7400 drawing units: 6.40 by 7.40 m in millimetres, ...", for all usual units: so that
/// a person can tell which it must be. A sentence that says so where nothing is drawn.
std::string extentInUnits(const DxfDrawing& drawing);

/// The room that a drawing shows: the largest region its walls enclose becomes the floor, gaps become
/// openings, arcs of leaves tell hinged doors. The other regions are named in the notes, as are the unit and
/// what is drawn measured in it, the layers and why they were taken. Coordinates are the drawing's own in
/// metres, moved only where they lie farther than kFarAway from its origin (a note says by how much). Corners
/// have the accuracy of Instrument::Drawing; nothing on a plan tells heights, so those are not measured.
///
/// Refused with a sentence: a unit that neither the drawing nor the choices state (with the extent in each
/// usual unit), a layer or a room that is not there, an extent that in this unit is no room, nothing that
/// closes.
Result<RecognisedRoom> recogniseDrawing(const DxfDrawing& drawing, const DxfChoices& choices);
inline constexpr double kFarAway = 100;  // metres

}  // namespace baywright
