// SPDX-License-Identifier: Apache-2.0
// Novosel and Garrity, Tour Tempo (2004), second-hand: tour players take 21, 24 or 27 frames of film to the
// top and 7, 8 or 9 from there to the ball, at 30 frames a second; three to one, whoever swings.
#include <gtest/gtest.h>

#include "swing/moment.h"

namespace baywright {
namespace {

TEST(TourTempo, ThreeToOneToTheBall) {
  const double back = kTopMoment;
  const double down = kImpactMoment - kTopMoment;
  for (const auto& [framesBack, framesDown] : {std::pair{21.0, 7.0}, {24.0, 8.0}, {27.0, 9.0}})
    EXPECT_NEAR(back / down, framesBack / framesDown, 1e-9);
}

}  // namespace
}  // namespace baywright
