// SPDX-License-Identifier: Apache-2.0
#include "drawing/views.h"

#include "drawing/elevation.h"
#include "drawing/plan.h"
#include "drawing/screen_view.h"
#include "drawing/wall_elevation.h"
#include "drawing/wall_face.h"
#include "job/room_geometry.h"
#include "optics/screen_face.h"

namespace baywright {

Vec2 viewFromWorld(const DrawnView& view, const Job& job, const Vec3& world) {
  if (view.kind == ViewKind::Plan) return flat(world);
  if (view.kind == ViewKind::Wall) {
    const auto wall = wallLine(job.room, view.wall);
    return wall ? onFace(*wall, world) : Vec2::Zero();
  }
  const Vec3 p = bayFromWorld(job.option().placement.bay, world);
  switch (view.kind) {
    case ViewKind::DownRange:
      return {p.y(), p.z()};
    case ViewKind::Side:
      return {p.x(), p.z()};
    case ViewKind::ScreenFace:
      return screenFromBay(faceOf(job.option().kit.screen), p);
    case ViewKind::Plan:
    case ViewKind::Wall:
      break;
  }
  return flat(world);
}

Linework viewLinework(const DrawnView& view, const Job& job, const Assessment& assessment,
                      const ViewOptions& options) {
  return ViewDrawer().draw(view, job, assessment, options);
}

Linework ViewDrawer::draw(const DrawnView& view, const Job& job, const Assessment& assessment,
                          const ViewOptions& options) {
  const detail::ViewInput input{job, assessment, options, outlines_};
  switch (view.kind) {
    case ViewKind::Plan:
      return detail::planOf(input);
    case ViewKind::DownRange:
    case ViewKind::Side:
      return detail::elevationOf(input, view.kind);
    case ViewKind::ScreenFace:
      return detail::screenViewOf(input);
    case ViewKind::Wall:
      return detail::wallElevationOf(input, view.wall);
  }
  return {};
}

}  // namespace baywright
