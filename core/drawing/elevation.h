// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "drawing/view_input.h"

namespace baywright::detail {

/// An elevation: an upright cut, through the strike points for DownRange and along the bay's axis for Side,
/// seen as ViewKind says. What the cut goes through is thick and filled, what is beyond is thin, what is on
/// the viewer's side is left out unless a finding that is shown speaks of it: then it is dashed. Internal to
/// `drawing`; ask viewLinework.
Linework elevationOf(const ViewInput& input, ViewKind view);

}  // namespace baywright::detail
