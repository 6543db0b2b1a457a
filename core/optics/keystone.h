// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>

#include "base/problem.h"
#include "job/kit.h"
#include "optics/light_spread.h"
#include "optics/picture.h"

namespace baywright {

/// What the four corners are moved to.
enum class CornerFill {
  Screen,       ///< the whole screen; stretches the image when the aspects differ
  PanelAspect,  ///< the largest rectangle of the panel's aspect in the middle of the screen; dark bars remain
};

/// How the projector's corners must be moved electronically so that its picture becomes an upright rectangle
/// on the screen. Corners run top left, top right, bottom right, bottom left; panel positions and moves in
/// native pixels, x right, y down.
struct CornerFit {
  CornerFill fill = CornerFill::Screen;
  std::array<Vec2, 4> target;   ///< the rectangle on the screen, (s, t) metres
  std::array<Vec2, 4> onPanel;  ///< where its corners lie on the panel
  std::array<Vec2, 4> moves;    ///< onPanel less the panel's own corners: what is typed into the projector
  double pixelLoss = 0;         ///< share of native pixels left dark by the moves, 0..1
  double lightLoss = 0;         ///< share of the light left dark; equals pixelLoss for an evenly lit panel
  /// Pixels by which the worst corner lies off the panel; zero or less when all lie on it. Positive: the
  /// picture does not reach the target there and no electronics can help.
  double overshoot = 0;
  bool reachable = false;    ///< overshoot <= kCornerTolerance
  bool withinRange = false;  ///< keystone angles on both axes <= the projector's keystoneMax (or no keystone)
};

/// A hundredth of a pixel: rounding of the map is far below, nobody sees it.
inline constexpr double kCornerTolerance = 0.01;
/// Turning the axis by less than this moves no corner by a tenth of a pixel of 4096: it is no keystone.
inline constexpr double kNoKeystone = 2e-5;
/// What the projector's correction has to undo: the worse of the picture's two angles, 0 under kNoKeystone.
double keystoneAngle(const Picture& picture);

/// pixelLoss counts what falls outside `onPanel` on the panel, also when a corner is not reachable. Refused:
/// a projector turned so far that a target corner lies behind it.
Result<CornerFit> fitCorners(const Picture& picture, const Projector& projector, CornerFill fill,
                             const LightSpread& spread = {});

/// The largest rectangle of `aspect` (width over height) in the middle of the face, corners as above.
std::array<Vec2, 4> largestInside(const ScreenFace& face, double aspect);

}  // namespace baywright
