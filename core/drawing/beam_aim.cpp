// SPDX-License-Identifier: Apache-2.0
#include "drawing/beam_aim.h"

#include <cmath>

#include "job/edit_placement.h"
#include "optics/aim.h"
#include "optics/picture.h"

namespace baywright {
namespace {

/// Angle from one direction to the other, counter-clockwise in the drawing.
double turnBetween(const Vec2& from, const Vec2& to) {
  return std::atan2(cross(from, to), from.dot(to));
}

}  // namespace

std::optional<BeamHandles> beamHandles(ViewKind view, const Job& job) {
  const Option& option = job.option();
  if (!option.kit.hasProjector || view == ViewKind::Wall) return std::nullopt;
  const auto picture = pictureOf(option.kit.screen, option.kit.projector, option.placement.projector);
  if (!picture) return std::nullopt;
  const auto centre = mapped(picture->screenFromPanel, 0.5 * picture->lens.panel);
  if (!centre) return std::nullopt;
  const auto seen = [&](const Vec3& p) {
    return viewFromWorld(view, job, worldFromBay(option.placement.bay, p));
  };
  return BeamHandles{seen(picture->lens.centre), seen(bayFromScreen(picture->face, *centre)),
                     seen(bayFromScreen(picture->face, picture->face.middle()))};
}

Result<Job> beamTurned(ViewKind view, Job job, const Vec2& from, const Vec2& to) {
  const auto handles = beamHandles(view, job);
  if (!handles)
    return fail("There is no picture to turn.", "projector", "Point the projector at the screen first.");
  ProjectorMount mount = job.option().placement.projector;
  const Vec2 before = from - handles->lens;
  const Vec2 after = to - handles->lens;
  switch (view) {
    case ViewKind::Plan:
      mount.yaw -= turnBetween(before, after);  // yaw runs clockwise on the plan
      break;
    case ViewKind::Side:
      mount.pitch += turnBetween(before, after);
      break;
    case ViewKind::Wall:  // has no handles
      break;
    case ViewKind::DownRange:
    case ViewKind::ScreenFace: {
      const double away = -mount.lens.x();
      mount.yaw += std::atan2(after.x(), away) - std::atan2(before.x(), away);
      mount.pitch += std::atan2(after.y(), away) - std::atan2(before.y(), away);
      break;
    }
  }
  mount.yaw = std::remainder(mount.yaw, 2 * kPi);
  mount.pitch = std::remainder(mount.pitch, 2 * kPi);
  return setProjectorMount(std::move(job), mount);
}

Result<Job> beamAimedAtScreen(Job job) {
  const Option& option = job.option();
  const AimNeeds needs{job.requirements.coverage, job.requirements.spill};
  const auto aim = aimAt(option.kit.screen, option.kit.projector, option.placement.projector, needs);
  if (!aim) return tl::unexpected(aim.error());
  return setProjectorMount(std::move(job), aim->mount);
}

}  // namespace baywright
