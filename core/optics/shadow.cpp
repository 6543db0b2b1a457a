// SPDX-License-Identifier: Apache-2.0
#include "optics/shadow.h"

#include <utility>

namespace baywright {
namespace {

std::vector<std::vector<Vec2>> outlinesOf(Obstructions&& obstructions) {
  std::vector<std::vector<Vec2>> outlines;
  for (Obstruction& part : obstructions.parts) outlines.push_back(std::move(part.outlineOnScreen));
  return outlines;
}

}  // namespace

Shadow shadowOf(const Picture& picture, std::span<const Capsule> address,
                std::span<const BodyAtMoment> swing) {
  Shadow shadow;
  Obstructions standing = obstructionBy(picture, address);
  shadow.atAddress = standing.share;
  shadow.outlinesAtAddress = outlinesOf(std::move(standing));
  if (swing.empty()) {
    shadow.worst = shadow.mean = shadow.atAddress;
    shadow.outlinesAtWorst = shadow.outlinesAtAddress;
    return shadow;
  }
  Obstructions worst;
  for (std::size_t i = 0; i < swing.size(); ++i) {
    Obstructions now = obstructionBy(picture, swing[i].capsules);
    shadow.mean += now.share / static_cast<double>(swing.size());
    if (i > 0 && now.share <= worst.share) continue;
    shadow.worstMoment = i;
    worst = std::move(now);
  }
  shadow.worst = worst.share;
  shadow.outlinesAtWorst = outlinesOf(std::move(worst));
  return shadow;
}

}  // namespace baywright
