// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

// Where the active option's kit goes. Points called (d, r) or (d, r, u) are in the bay frame
// (geometry/frames.h).

/// `by` in world metres. Everything in the bay goes along: mat, strike points, monitor, projector.
Result<Job> moveBay(Job job, const Vec2& by);
Result<Job> setBayPose(Job job, const BayPose& pose);
/// Turns the bay about a point of the world, radians, counter-clockwise. The heading is kept within [-pi,
/// pi].
Result<Job> turnBay(Job job, double angle, const Vec2& pivot);

/// The mat takes the strike points and the launch monitor along: they belong to the place one stands at.
/// `by` is (d, r).
Result<Job> moveMat(Job job, const Vec2& by);
/// One hand's strike point alone. Both hands share the distance to the screen, so the d part moves both.
Result<Job> moveStrikePoint(Job job, Hand hand, const Vec2& by);
/// From the screen's face back to the strike points, > 0; mat and monitor go along.
Result<Job> setStrikeDistance(Job job, double distance);
/// r of one hand's strike point.
Result<Job> setStrikeOffset(Job job, Hand hand, double offset);

/// `by` is (d, r, u).
Result<Job> moveMonitor(Job job, const Vec3& by);
Result<Job> setMonitorPlace(Job job, const Vec3& place);

/// Moves the lens; `by` is (d, r, u). It must stay on the golfer's side of the screen.
Result<Job> moveProjector(Job job, const Vec3& by);
Result<Job> setProjectorMount(Job job, const ProjectorMount& mount);

/// All of it at once.
Result<Job> setPlacement(Job job, const Placement& placement);

}  // namespace baywright
