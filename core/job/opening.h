// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "base/id.h"
#include "job/dimension.h"

namespace baywright {

enum class OpeningKind { HingedDoor, SectionalDoor, Window, Passage };
enum class HingeSide { Start, End };  ///< which end of the opening, walking along the wall from its start
enum class LeafSwing { IntoRoom, OutOfRoom };

/// A hole in a wall. Along the wall it reaches from `offset` to `offset + width`, measured on the inner face
/// from the wall's start; upward from `sill` to `sill + height`.
struct Opening {
  Id id;
  Id wall;
  std::string name;
  OpeningKind kind = OpeningKind::HingedDoor;
  Dimension offset;
  Dimension width = guessed(0.9);
  Dimension sill = taped(0);
  Dimension height = guessed(2.03);
  bool isExit = false;  ///< people count on it to leave

  // Hinged doors.
  HingeSide hinge = HingeSide::Start;
  LeafSwing swing = LeafSwing::IntoRoom;
  double leafThickness = 0.04;
  double openAngle = kDefaultOpenAngle;  ///< radians, how far the leaf must open; > 0, at most pi

  // Sectional overhead doors: two tracks run up beside the opening, bend, and run into the room under the
  // ceiling.
  double trackHeadroom = 0.30;  ///< from the top of the opening to the top of the horizontal track
  double trackDepth = 0;        ///< into the room from the wall's face; 0: opening height + 0.45 m
  double panelThickness = 0.05;
  bool staysOpen = false;  ///< the door may be open while someone swings (else only its tracks count)

  bool operator==(const Opening&) const = default;

  static constexpr double kDefaultOpenAngle = 1.5707963267948966;
};

}  // namespace baywright
