// SPDX-License-Identifier: Apache-2.0
#include "geometry/solid.h"

#include <cmath>

#include "geometry/triangulation.h"

namespace baywright {

Result<Solid> solidFrom(const Cylinder& cylinder) {
  constexpr double kLeast = ConvexPolyhedron::kMinimumThickness;
  if (!cylinder.a.allFinite() || !cylinder.b.allFinite())
    return fail("An end of the cylinder is not a finite point.");
  if (!((cylinder.b - cylinder.a).norm() >= kLeast) || !(2 * cylinder.radius >= kLeast) ||
      !std::isfinite(cylinder.radius)) {
    return fail("A cylinder needs a length and a diameter of at least 0.001 mm.");
  }
  return cylinder;
}

Result<std::vector<ConvexPolyhedron>> prismPieces(const Prism& prism) {
  const auto rings = convexPieces(Polygon{prism.outline, {}});
  if (!rings) return tl::unexpected(rings.error());
  std::vector<ConvexPolyhedron> pieces;
  for (const Ring& ring : *rings) {
    // Beside an almost straight corner a piece may be a sliver that is no body.
    if (simplified(ring, ConvexPolyhedron::kMinimumThickness).empty()) continue;
    auto piece = convexPrismFrom({ring, prism.bottom, prism.top});
    if (!piece) return tl::unexpected(piece.error());
    pieces.push_back(std::move(*piece));
  }
  return pieces;
}

Aabb3 boundsOf(const Solid& solid) {
  return std::visit([](const auto& body) -> Aabb3 { return boundsOf(body); }, solid);
}

Solid transformed(const Solid& solid, const RigidMap& map) {
  return std::visit([&](const auto& body) -> Solid { return transformed(body, map); }, solid);
}

}  // namespace baywright
