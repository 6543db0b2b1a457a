// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "job/golfer.h"

namespace baywright {

enum class BodyPart { Head, Torso, LeadArm, TrailArm, Legs, Shaft, ClubHead };

/// One motion from address to finish.
struct SwingPath {
  Hand hand = Hand::Right;

  bool operator==(const SwingPath&) const = default;
};

}  // namespace baywright
