// SPDX-License-Identifier: Apache-2.0
#include "optics/keystone.h"

#include <algorithm>
#include <cmath>

#include "optics/detail/convex.h"
#include "optics/detail/plane_map.h"

namespace baywright {
namespace {

/// A projector turned by exactly its range is inside it.
constexpr double kAngleRounding = 1e-9;

std::array<Vec2, 4> targetOf(const Picture& picture, CornerFill fill) {
  if (fill == CornerFill::Screen) return picture.face.corners();
  return largestInside(picture.face, picture.lens.panel.x() / picture.lens.panel.y());
}

double overshootOf(const std::array<Vec2, 4>& onPanel, const Vec2& panel) {
  double worst = -panel.maxCoeff();
  for (const Vec2& p : onPanel) worst = std::max({worst, -p.minCoeff(), (p - panel).maxCoeff()});
  return worst;
}

}  // namespace

double keystoneAngle(const Picture& picture) {
  const double angle = std::max(std::abs(picture.keystoneAcross), std::abs(picture.keystoneUp));
  return angle > kNoKeystone ? angle : 0;
}

std::array<Vec2, 4> largestInside(const ScreenFace& face, double aspect) {
  const double width = std::min(face.size.x(), aspect * face.size.y());
  const Vec2 half{0.5 * width, 0.5 * width / aspect};
  const Vec2 m = face.middle();
  return {Vec2{m.x() - half.x(), m.y() + half.y()}, Vec2{m + half}, Vec2{m.x() + half.x(), m.y() - half.y()},
          Vec2{m - half}};
}

Result<CornerFit> fitCorners(const Picture& picture, const Projector& projector, CornerFill fill,
                             const LightSpread& spread) {
  const detail::PlaneMap toPanel(picture.panelFromScreen);
  CornerFit fit;
  fit.fill = fill;
  fit.target = targetOf(picture, fill);
  const auto own = picture.lens.panelCorners();
  for (std::size_t i = 0; i < 4; ++i) {
    if (!(toPanel.depth(fit.target[i]) > 0))
      return fail("The projector looks so far past the screen that one of its corners lies behind the lens.",
                  "placement / projector", "Turn the projector toward the screen.");
    fit.onPanel[i] = toPanel(fit.target[i]);
    fit.moves[i] = fit.onPanel[i] - own[i];
  }
  const Vec2& panel = picture.lens.panel;
  const Ring used =
      detail::clipped(Ring(fit.onPanel.begin(), fit.onPanel.end()), Ring(own.begin(), own.end()));
  fit.pixelLoss = std::clamp(1 - signedArea(used) / (panel.x() * panel.y()), 0.0, 1.0);
  fit.lightLoss = 1 - lightShare(picture.lens, spread, used);
  fit.overshoot = overshootOf(fit.onPanel, panel);
  fit.reachable = fit.overshoot <= kCornerTolerance;
  fit.withinRange = keystoneAngle(picture) <= projector.keystoneMax + kAngleRounding;
  return fit;
}

}  // namespace baywright
