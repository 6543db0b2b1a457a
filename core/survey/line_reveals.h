// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/line_faces.h"

namespace baywright::detail {

/// A window's lines close its opening some way into the wall, so that the room reaches into it. Takes such
/// recesses, no deeper than kThickestWall, out of the outline of a face and gives the ways over them. What
/// makes one an opening and no niche is that behind its back lies something else than behind its jambs: the
/// window's own lines, or nothing.
std::vector<Segment2> closeReveals(Ring& ring, const GraphFace& face, const LineGraph& graph,
                                   const std::vector<GraphFace>& faces);

}  // namespace baywright::detail
