// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

Result<Job> addFixture(Job job, Fixture fixture);
Result<Job> setFixture(Job job, const Fixture& fixture);
/// `by` in world metres.
Result<Job> moveFixture(Job job, Id fixture, const Vec2& by);
/// About its own middle, radians, counter-clockwise.
Result<Job> turnFixture(Job job, Id fixture, double angle);

/// The shape's middle on the plan: a prism's centre of area.
Vec2 middleOf(const FixtureShape& shape);
FixtureShape translated(FixtureShape shape, const Vec2& by);
FixtureShape turned(FixtureShape shape, double angle, const Vec2& pivot);

}  // namespace baywright
