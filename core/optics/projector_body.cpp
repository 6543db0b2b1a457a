// SPDX-License-Identifier: Apache-2.0
#include "optics/projector_body.h"

#include "optics/lens.h"

namespace baywright {

Result<ConvexPolyhedron> projectorBody(const Projector& projector, const ProjectorMount& mount) {
  return lensOf(projector, mount).and_then([&](const ProjectorLens& lens) {
    const Vec3 half = 0.5 * projector.body;
    TiltedBox box;
    box.centre = lens.centre - half.x() * lens.axis;
    box.halfAxes << half.x() * lens.axis, half.y() * lens.right, half.z() * lens.up;
    return boxFrom(box);
  });
}

}  // namespace baywright
