// SPDX-License-Identifier: Apache-2.0
#include "optics/picture.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "optics/detail/convex.h"
#include "optics/detail/plane_map.h"

namespace baywright {
namespace {

constexpr std::array<const char*, 4> kCornerNames{"top left", "top right", "bottom right", "bottom left"};

double tangentToNormal(const Vec3& ray) {
  return std::hypot(ray.y(), ray.z()) / ray.x();
}

/// Every corner must come down on the plane, and not in the next street.
Result<void> beamReaches(const ProjectorLens& lens) {
  const auto corners = lens.panelCorners();
  for (std::size_t i = 0; i < 4; ++i) {
    const Vec3 ray = bayRayFromPanel(lens, corners[i]);
    if (ray.x() > 0 && tangentToNormal(ray) <= kSteepestRay) continue;
    return fail("The beam's " + std::string(kCornerNames[i]) + " corner does not reach the screen's plane.",
                "placement / projector", "Turn the projector toward the screen or use less lens shift.");
  }
  return {};
}

/// The ray through pixel (x, y) is M (x, y, 1); it meets d = 0 after -lens.d / ray.d. Everything over ray.d >
/// 0.
Mat3 screenFromPanelMatrix(const ProjectorLens& lens, const ScreenFace& face) {
  Mat3 ray;
  ray.col(2) = bayRayFromPanel(lens, Vec2::Zero());
  ray.col(0) = lens.extent.x() / lens.panel.x() * lens.right;
  ray.col(1) = -lens.extent.y() / lens.panel.y() * lens.up;
  const double reach = -lens.centre.x();
  const Vec2 under = screenFromBay(face, lens.centre);
  Mat3 map;
  map.row(0) = under.x() * ray.row(0) + reach * ray.row(1);
  map.row(1) = under.y() * ray.row(0) + reach * ray.row(2);
  map.row(2) = ray.row(0);
  return map;
}

double ratio(double a, double b) {
  return std::max(a, b) / std::min(a, b);
}

void measure(Picture& picture) {
  const auto& c = picture.cornersOnScreen;
  picture.edgeRatioAcross = ratio((c[0] - c[3]).norm(), (c[1] - c[2]).norm());
  picture.edgeRatioUp = ratio((c[0] - c[1]).norm(), (c[3] - c[2]).norm());
  const Vec2 size = picture.lens.panel;
  const detail::PlaneMap toScreen(picture.screenFromPanel);
  picture.width = (toScreen({size.x(), 0.5 * size.y()}) - toScreen({0, 0.5 * size.y()})).norm();
  picture.height = (toScreen({0.5 * size.x(), size.y()}) - toScreen({0.5 * size.x(), 0})).norm();
  // The screen's normal in the projector's own axes.
  const double ahead = picture.lens.axis.x();
  picture.keystoneAcross = std::atan2(-picture.lens.right.x(), ahead);
  picture.keystoneUp = std::atan2(-picture.lens.up.x(), ahead);
}

void cover(Picture& picture) {
  const Ring whole(picture.cornersOnScreen.rbegin(), picture.cornersOnScreen.rend());
  const auto corners = picture.face.corners();
  const Ring screen(corners.rbegin(), corners.rend());
  picture.area = signedArea(whole);
  picture.lit = detail::clipped(whole, screen);
  const double lit = signedArea(picture.lit);
  picture.coverage = std::clamp(lit / picture.face.area(), 0.0, 1.0);
  picture.spill = std::clamp(1 - lit / picture.area, 0.0, 1.0);
  picture.litOnPanel = detail::PlaneMap(picture.panelFromScreen).turnedOver(picture.lit);
  const Vec2& panel = picture.lens.panel;
  picture.aspectLoss = aspectLossOf(panel.x() / panel.y(), picture.face.size.x() / picture.face.size.y());
}

}  // namespace

double aspectLossOf(double panelAspect, double screenAspect) {
  return 1 - std::min(panelAspect, screenAspect) / std::max(panelAspect, screenAspect);
}

Result<Picture> pictureOf(const ScreenFace& face, const ProjectorLens& lens) {
  if (!(face.size.minCoeff() > 0) || !face.size.allFinite() || !std::isfinite(face.bottom))
    return fail("The screen has no width or no height.", "kit / screen", "Give its size.");
  if (!(lens.centre.x() < 0))
    return fail("The projector's lens is not in front of the screen.", "placement / projector",
                "Move it to the golfer's side of the screen.");
  if (const auto reached = beamReaches(lens); !reached) return tl::unexpected(reached.error());

  Picture picture;
  picture.lens = lens;
  picture.face = face;
  picture.throwDistance = -lens.centre.x();
  const Mat3 map = screenFromPanelMatrix(lens, face);
  picture.screenFromPanel.matrix = map / map.cwiseAbs().maxCoeff();
  const Mat3 back = map.inverse();
  picture.panelFromScreen.matrix = back / back.cwiseAbs().maxCoeff();
  const auto corners = lens.panelCorners();
  const detail::PlaneMap toScreen(picture.screenFromPanel);
  for (std::size_t i = 0; i < 4; ++i) {
    picture.cornersOnScreen[i] = toScreen(corners[i]);
    picture.cornersInBay[i] = bayFromScreen(face, picture.cornersOnScreen[i]);
  }
  measure(picture);
  cover(picture);
  return picture;
}

Result<Picture> pictureOf(const Screen& screen, const Projector& projector, const ProjectorMount& mount) {
  return lensOf(projector, mount).and_then([&](const ProjectorLens& lens) {
    return pictureOf(faceOf(screen), lens);
  });
}

}  // namespace baywright
