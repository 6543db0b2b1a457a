// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "base/id.h"
#include "geometry/vec.h"

namespace baywright {

/// The free-standing structure that carries the screen. In the bay frame it fills r in [-width/2, width/2],
/// u in [0, height], and d in [-(depth - behindScreen), behindScreen]: the screen's face is at d = 0 and
/// the side fabric comes toward the golfer. Metres.
struct Frame {
  Id id;
  std::string name;
  double width = 3.2;
  double height = 2.5;
  double depth = 1.5;
  double behindScreen = 0.10;
  double tube = 0.05;        ///< diameter or side of the frame's members
  double tolerance = 0.005;  ///< standard uncertainty of its outer sizes

  bool operator==(const Frame&) const = default;
};

/// The impact screen's face, centred on r = 0 at d = 0. Metres.
struct Screen {
  Id id;
  std::string name;
  double width = 3.0;
  double height = 2.25;
  double bottom = 0.05;  ///< lower edge above the floor
  double travel = 0.30;  ///< how far a hard shot pushes it back
  double gain = 1.0;     ///< luminance relative to a perfect diffuser
  /// Ball speed after over before, along the normal. No published figure, to be measured.
  double restitution = 0.04;

  bool operator==(const Screen&) const = default;
};

/// What the ball is struck from. Strike points are in the Placement.
struct Mat {
  Id id;
  std::string name;
  double width = 1.5;   ///< across, along r
  double length = 1.5;  ///< along d
  double thickness = 0.03;

  bool operator==(const Mat&) const = default;
};

/// A box that watches ball or club. Its place is in the Placement.
struct LaunchMonitor {
  Id id;
  std::string name;
  Vec3 size{0.25, 0.15, 0.30};  ///< along d, r, u

  bool operator==(const LaunchMonitor&) const = default;
};

/// Projector as its maker states it. Throw ratio = distance from lens to picture / picture width (IEC 62471-5
/// set-up).
struct Projector {
  Id id;
  std::string name;
  double throwMin = 1.1;  ///< widest zoom
  double throwMax = 1.4;  ///< longest zoom; equal to throwMin for a fixed lens
  int panelWidth = 1920;  ///< native pixels
  int panelHeight = 1080;
  double lumens = 3500;
  double contrast = 2000;  ///< native full-on to full-off
  /// Height of the picture's centre above the lens axis at rest, as a share of picture height, for a
  /// projector that stands upright; 0.5 puts the picture's lower edge on the axis. A ceiling mount hangs it
  /// upside down.
  double offset = 0.5;
  double shiftUpMax = 0;     ///< further lens shift, share of picture height, both ways
  double shiftSideMax = 0;   ///< share of picture width, both ways
  double distanceMin = 1.0;  ///< focus range, metres
  double distanceMax = 8.0;
  double keystoneMax = 0.52;    ///< radians, the range of its own correction on either axis; 0: none
  Vec3 body{0.30, 0.40, 0.12};  ///< along the axis, across, up; the lens is in the middle of the front face
  double mass = 4.0;            ///< kilograms

  bool operator==(const Projector&) const = default;
};

struct Kit {
  Frame frame;
  Screen screen;
  Mat mat;
  LaunchMonitor monitor;
  Projector projector;
  bool hasMonitor = true;
  bool hasProjector = true;

  bool operator==(const Kit&) const = default;
};

}  // namespace baywright
