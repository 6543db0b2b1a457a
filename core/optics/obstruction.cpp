// SPDX-License-Identifier: Apache-2.0
#include "optics/obstruction.h"

#include <algorithm>

#include "optics/detail/beam_window.h"
#include "optics/detail/convex.h"
#include "optics/detail/plane_map.h"

namespace baywright {
namespace {

/// `hidden(i)` is what thing i hides of the window.
template <class Hidden>
Obstructions gathered(const Picture& picture, const detail::BeamWindow& window, std::size_t count,
                      const Hidden& hidden) {
  const detail::PlaneMap toScreen(picture.screenFromPanel);
  Obstructions result;
  std::vector<Ring> rings;
  for (std::size_t i = 0; i < count; ++i) {
    Ring ring = hidden(i);
    if (ring.empty()) continue;
    const double share = std::min(1.0, signedArea(ring) / window.area());
    result.parts.push_back({i, share, toScreen.turnedOver(ring)});
    rings.push_back(std::move(ring));
  }
  if (!rings.empty()) result.share = std::min(1.0, detail::unionArea(rings) / window.area());
  return result;
}

}  // namespace

Obstructions obstructionBy(const Picture& picture, std::span<const Solid> solids) {
  const detail::BeamWindow window(picture);
  return gathered(picture, window, solids.size(), [&](std::size_t i) {
    return std::visit([&](const auto& body) { return window.hiddenBy(body); }, solids[i]);
  });
}

Obstructions obstructionBy(const Picture& picture, std::span<const Capsule> capsules) {
  const detail::BeamWindow window(picture);
  return gathered(picture, window, capsules.size(),
                  [&](std::size_t i) { return window.hiddenBy(capsules[i]); });
}

Result<ConvexPolyhedron> beamBody(const Picture& picture) {
  const Ring base = simplified(picture.lit, ConvexPolyhedron::kMinimumThickness);
  if (base.size() < 3)
    return fail("The picture does not fall on the screen.", "placement / projector",
                "Aim the projector at the screen.");
  const int apex = static_cast<int>(base.size());
  std::vector<Vec3> corners;
  std::vector<std::vector<int>> faces(1);
  for (int i = 0; i < apex; ++i) {
    corners.push_back(bayFromScreen(picture.face, base[static_cast<std::size_t>(i)]));
    faces.front().push_back(apex - 1 - i);
    faces.push_back({i, (i + 1) % apex, apex});
  }
  corners.push_back(picture.lens.centre);
  return ConvexPolyhedron::fromFaces(std::move(corners), faces);
}

}  // namespace baywright
