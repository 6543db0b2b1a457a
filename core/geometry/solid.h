// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <variant>
#include <vector>

#include "base/problem.h"
#include "geometry/convex_polyhedron.h"

namespace baywright {

/// Whatever stands in a room and has an inside: each alternative is convex. A concave thing is several
/// solids.
using Solid = std::variant<ConvexPolyhedron, Cylinder>;

/// The cylinder, if it has a length of at least ConvexPolyhedron::kMinimumThickness and as large a diameter.
Result<Solid> solidFrom(const Cylinder& cylinder);

/// The prism over any simple outline, convex or not, as convex bodies that share faces and fill it (but for
/// slivers thinner than ConvexPolyhedron::kMinimumThickness). Refused with a sentence: outlines that cross or
/// touch themselves, planes that cross inside the outline.
Result<std::vector<ConvexPolyhedron>> prismPieces(const Prism& prism);

Aabb3 boundsOf(const Solid& solid);
Solid transformed(const Solid& solid, const RigidMap& map);

}  // namespace baywright
