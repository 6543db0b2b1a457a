// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "base/problem.h"
#include "drawing/views.h"
#include "job/job.h"

namespace baywright {

/// What one takes hold of to aim a projector, drawing coordinates of a view.
struct BeamHandles {
  Vec2 lens = Vec2::Zero();
  Vec2 centre = Vec2::Zero();        ///< of the picture, where it falls on the screen's plane
  Vec2 screenMiddle = Vec2::Zero();  ///< where the picture's centre should be
};
/// Nothing without a projector, when it throws no picture on the screen's plane, and where a wall is looked at.
std::optional<BeamHandles> beamHandles(ViewKind view, const Job& job);

/// Turns the projector so that the middle of its picture goes from one point of the view to the other: yaw on
/// the plan, pitch from the side, both down-range, where the points are taken on the screen's plane.
Result<Job> beamTurned(ViewKind view, Job job, const Vec2& from, const Vec2& to);

/// Lens shift, turn and zoom as a fitter would set them from where the lens is (aimAt of optics/aim.h).
/// Refused with its sentence.
Result<Job> beamAimedAtScreen(Job job);

}  // namespace baywright
