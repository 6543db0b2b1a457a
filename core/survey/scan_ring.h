// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <vector>

#include "survey/scan_faces.h"

namespace baywright {

/// A ring whose side i runs along line `lines[i]` from corner i.
struct SideRing {
  std::vector<int> lines;
  Ring corners;
};

/// The boundary of the faces that are inside, counter-clockwise: of several rings the one round most. Sides
/// that go on along one line are one. Empty where nothing is inside or the frame itself bounds it.
SideRing largestRing(const PlanFaces& plan, const std::vector<bool>& inside);

/// Without sides shorter than `leastLength` says of them: a jog between two walls that are nearly in line
/// goes to the longer one, any other short side gives way to the corner of its neighbours.
using LeastLength = std::function<double(const SideRing& ring, std::size_t side)>;
SideRing tidied(SideRing ring, const std::vector<ScanLine>& lines, const LeastLength& leastLength);

}  // namespace baywright
