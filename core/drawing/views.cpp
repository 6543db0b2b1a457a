// SPDX-License-Identifier: Apache-2.0
#include "drawing/views.h"

#include "drawing/elevation.h"
#include "drawing/plan.h"
#include "drawing/screen_view.h"
#include "optics/screen_face.h"

namespace baywright {

Vec2 viewFromWorld(ViewKind view, const Job& job, const Vec3& world) {
  if (view == ViewKind::Plan) return flat(world);
  const Vec3 p = bayFromWorld(job.option().placement.bay, world);
  switch (view) {
    case ViewKind::DownRange:
      return {p.y(), p.z()};
    case ViewKind::Side:
      return {p.x(), p.z()};
    case ViewKind::ScreenFace:
      return screenFromBay(faceOf(job.option().kit.screen), p);
    case ViewKind::Plan:
      break;
  }
  return flat(world);
}

Linework viewLinework(ViewKind view, const Job& job, const Assessment& assessment,
                      const ViewOptions& options) {
  return ViewDrawer().draw(view, job, assessment, options);
}

Linework ViewDrawer::draw(ViewKind view, const Job& job, const Assessment& assessment,
                          const ViewOptions& options) {
  const detail::ViewInput input{job, assessment, options, outlines_};
  switch (view) {
    case ViewKind::Plan:
      return detail::planOf(input);
    case ViewKind::DownRange:
    case ViewKind::Side:
      return detail::elevationOf(input, view);
    case ViewKind::ScreenFace:
      return detail::screenViewOf(input);
  }
  return {};
}

}  // namespace baywright
