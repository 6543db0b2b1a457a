// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>

#include "base/problem.h"
#include "geometry/homography.h"
#include "geometry/polygon.h"
#include "job/kit.h"
#include "job/placement.h"
#include "optics/lens.h"
#include "optics/screen_face.h"

namespace baywright {

/// Where a projector's whole panel falls on the screen's plane, before any corner is moved electronically.
/// Corners run top left, top right, bottom right, bottom left. Metres, radians, shares 0..1.
/// Exact for the pinhole; areas are of polygons, not sampled.
struct Picture {
  ProjectorLens lens;
  ScreenFace face;
  std::array<Vec2, 4> cornersOnScreen;  ///< (s, t), also off the screen
  std::array<Vec3, 4> cornersInBay;     ///< (d, r, u) with d = 0
  Homography screenFromPanel;
  Homography panelFromScreen;
  Ring lit;         ///< the part on the screen, (s, t), counter-clockwise; empty when the picture misses it
  Ring litOnPanel;  ///< the same in native pixels

  double throwDistance = 0;  ///< from the lens square to the screen's plane
  double width = 0;          ///< of the picture along the panel's middle row
  double height = 0;         ///< along its middle column
  double area = 0;           ///< m^2 on the plane
  double coverage = 0;       ///< share of the screen that the picture falls on
  double spill = 0;          ///< share of the picture's area that misses the screen
  /// Share that stays dark when the panel's and the screen's aspect differ and neither is stretched: of the
  /// screen, when the picture is fitted inside it; of the panel's pixels, when it is cut to the screen. 0:
  /// same aspect.
  double aspectLoss = 0;

  /// Angles between the optical axis and the screen's normal on the projector's own two axes: what its
  /// keystone correction has to undo. Across: positive when it looks to the right (yaw); up: positive when it
  /// looks up.
  double keystoneAcross = 0;
  double keystoneUp = 0;
  double edgeRatioAcross = 1;  ///< longer over shorter of the left and right edges, >= 1
  double edgeRatioUp = 1;      ///< longer over shorter of the top and bottom edges, >= 1
};

/// Refused with a sentence that says what to move: a lens at or behind the screen's plane, a corner of the
/// beam that does not reach the plane (or only at a grazing angle, see kSteepestRay), a screen without size,
/// and whatever lensOf refuses. A picture that reaches the plane but misses the screen is no error: its
/// coverage is 0.
Result<Picture> pictureOf(const Screen& screen, const Projector& projector, const ProjectorMount& mount);
Result<Picture> pictureOf(const ScreenFace& face, const ProjectorLens& lens);

/// Largest tangent of the angle between a ray and the screen's normal: about 87 degrees. Beyond it a corner
/// lies over 20 throw distances away, no fitter wants it and its position is all rounding.
inline constexpr double kSteepestRay = 20.0;

/// Picture::aspectLoss for two aspects (width over height), > 0.
double aspectLossOf(double panelAspect, double screenAspect);

}  // namespace baywright
