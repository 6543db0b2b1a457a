// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "drawing/views.h"
#include "job/job.h"

namespace baywright {

/// The world's plan direction of a view's horizontal: to the right of the bay looking down-range, down-range
/// from the side, from end to start of a wall that is looked at, world x on the plan and on the screen's face.
Vec2 horizontalOf(const DrawnView& view, const Job& job);

/// How drawing coordinates of a fixed point of the world change when the bay goes from one place to another
/// without turning: elevations are drawn about the bay. Zero on the plan and where a wall is looked at.
Vec2 viewShift(ViewKind view, const BayPose& from, const BayPose& to);

/// True for things that a drag moves in this view. Walls are not dragged with the rest, lest a room changes
/// by a slip of the hand; ceilings only rise and sink in elevations; a wall's own shows what belongs to the room, the kit is moved elsewhere; nothing
/// moves on the screen's face.
bool canMoveIn(const DrawnView& view, const Job& job, Id thing);

/// Moves the thing by metres of the drawing, as a drag in that view does: on the plan by translate(). In an
/// elevation sideways along the plan, and up and down what hangs: projector, monitor, fixtures, windows and
/// ceilings; the height of what stands on the floor is left alone. Refused as the verbs of job/edit.h.
Result<Job> moveInView(const DrawnView& view, Job job, Id thing, const Vec2& by);

}  // namespace baywright
