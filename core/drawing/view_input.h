// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "clearance/assessment.h"
#include "drawing/swing_outline.h"
#include "drawing/views.h"
#include "job/job.h"

namespace baywright::detail {

/// What every view is drawn from. Internal to `drawing`.
struct ViewInput {
  const Job& job;
  const Assessment& assessment;
  const ViewOptions& options;
  SwingOutlines& outlines;  ///< kept from view to view

  const Kit& kit() const { return job.option().kit; }
  const Placement& placement() const { return job.option().placement; }
};

/// The height of the horizontal cut that makes the plan, metres above the floor: common practice, no source.
inline constexpr double kPlanCut = 1.2;

}  // namespace baywright::detail
