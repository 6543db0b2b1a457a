// SPDX-License-Identifier: Apache-2.0
#include "drawing/swing_zones.h"

#include <algorithm>

#include "drawing/marks.h"

namespace baywright::detail {
bool singledOut(const ViewOptions& options, Id golfer) {
  return options.shown.empty() ||
         std::find(options.shown.begin(), options.shown.end(), golfer) != options.shown.end();
}

bool isWorstOfGolfer(const std::vector<SwingZone>& zones, const SwingZone& zone) {
  const SwingZone* worst = &zone;
  for (const SwingZone& other : zones) {
    if (other.golfer != zone.golfer || !other.swing) continue;
    const bool earlier = &other < worst;
    if (other.verdict > worst->verdict || (other.verdict == worst->verdict && earlier)) worst = &other;
  }
  return worst == &zone;
}

void drawSwings(Board& board, const ViewInput& input, SwingSight sight,
                const std::function<std::vector<Ring>(const std::vector<Ring>&, const SwingZone&)>& place) {
  for (const SwingZone& zone : input.assessment.swings) {
    if (!zone.swing) continue;
    const SwingOutline& outline = input.outlines.of(zone.swing, sight, zone.clearance);
    const auto add = [&](Layer layer, const std::vector<Ring>& rings) {
      board.add(areaOf(layer, place(rings, zone), Fill::None, zone.golfer));
    };
    if (!singledOut(input.options, zone.golfer) || !isWorstOfGolfer(input.assessment.swings, zone)) {
      if (input.options.swing) add(Layer::Swing, outline.expected);
      continue;
    }
    if (input.options.swingBound) add(Layer::SwingBound, outline.fullExtension);
    if (!input.options.swing) continue;
    add(Layer::SwingClearance, outline.clearance);
    Path expected = areaOf(Layer::Swing, place(outline.expected, zone), Fill::Soft, zone.golfer);
    expected.verdict = zone.verdict;
    board.addHatched(std::move(expected));
  }
}

}  // namespace baywright::detail
