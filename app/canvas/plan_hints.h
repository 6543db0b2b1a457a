// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "canvas/tool.h"
#include "canvas/tool_host.h"
#include "drawing/snap.h"
#include "survey/plan_trace_lines.h"

namespace baywright {

class Overlay;

/// Where the lines of these plans are found to be, world metres, all together; those that are hidden show
/// none.
PictureTraces planHints(const ToolHost& host, const std::vector<const PlanScan*>& scans);
/// Of all plans.
PictureTraces planHints(const ToolHost& host);

/// Their lines as what attracts a point; where two cross, a point holds to both.
std::vector<SnapRule> hintRules(const PictureTraces& hints);
std::vector<SnapPoint> hintPoints(const PictureTraces& hints);

/// Calls a point that holds to two lines of a plan what it is.
void nameCrossing(Snapped& point);

/// A point that is clicked on a plan: on the end of a line or where lines cross, unless snapping is held off.
Snapped onHints(const ToolHost& host, const PictureTraces& hints, const PointerEvent& event);

/// Faint lines over the picture.
void paintHints(Overlay& overlay, const PictureTraces& hints);

}  // namespace baywright
