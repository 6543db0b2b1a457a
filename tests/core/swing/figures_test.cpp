// SPDX-License-Identifier: Apache-2.0
#include "swing/figures.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

std::vector<SwingCapsule> three() {
  return {{{{0, -1, 1}, {0.5, -1, 2}, 0.1}, 0.2, BodyPart::Shaft},
          {{{-2, -0.5, 0}, {-2, -0.5, 0}, 0.2}, 0.4, BodyPart::ClubHead},
          {{{1, 0, 0.5}, {1, -1.2, 0.5}, 0.05}, 0.6, BodyPart::LeadArm}};
}

TEST(Figures, TellHowFarWhenAndWithWhat) {
  const std::vector<SwingCapsule> capsules = three();
  const EnvelopeFigures figures = figuresOf(capsules, Hand::Right);
  EXPECT_DOUBLE_EQ(figures.highest.value, 2.1);
  EXPECT_EQ(figures.highest.at, Vec3(0.5, -1, 2.1));
  EXPECT_EQ(figures.highest.part, BodyPart::Shaft);
  EXPECT_DOUBLE_EQ(figures.behindGolfer.value, 1.25);
  EXPECT_EQ(figures.behindGolfer.at, Vec3(1, -1.25, 0.5));
  EXPECT_EQ(figures.behindGolfer.moment, 0.6);
  EXPECT_DOUBLE_EQ(figures.towardTarget.value, 1.05);
  EXPECT_DOUBLE_EQ(figures.awayFromTarget.value, 2.2);
  EXPECT_EQ(figures.awayFromTarget.part, BodyPart::ClubHead);
  EXPECT_DOUBLE_EQ(figures.beyondBall.value, 0.05);
}

TEST(Figures, LookToTheOtherSideForALeftHander) {
  const EnvelopeFigures figures = figuresOf(three(), Hand::Left);
  EXPECT_DOUBLE_EQ(figures.behindGolfer.value, 0.05);
  EXPECT_DOUBLE_EQ(figures.beyondBall.value, 1.25);
}

TEST(Figures, OfNothingAreZero) {
  EXPECT_EQ(figuresOf({}, Hand::Right), EnvelopeFigures{});
}

}  // namespace
}  // namespace baywright
