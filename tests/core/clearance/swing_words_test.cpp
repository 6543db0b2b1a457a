// SPDX-License-Identifier: Apache-2.0
#include "clearance/swing_words.h"

#include <gtest/gtest.h>

#include "swing/moment.h"

namespace baywright {
namespace {

const UnitSystem kMillimetres{LengthUnit::Millimetres, 16, '.'};

SwingMargin marginOf(double distance, double clearance, double sigma) {
  SwingMargin margin;
  margin.capsule.moment = kTopMoment;
  margin.capsule.part = BodyPart::ClubHead;
  margin.closest.distance = distance;
  margin.closest.onFirst = {0, 0, 2.31};
  margin.margin = {distance - clearance, sigma};
  return margin;
}

std::string said(double distance, double boundDistance) {
  const SwingMargin expected = marginOf(distance, 0.15, 0.02);
  const SwingMargin bound = marginOf(boundDistance, 0.15, 0.02);
  const std::string subject = "Driver, Robin";
  const std::string obstacle = "the beam";
  return swingSentence({subject, obstacle, Hand::Right, 0.15, expected, bound}, kMillimetres);
}

TEST(SwingSentence, SaysWhatIsShortOfTheClearance) {
  EXPECT_EQ(
      said(0.086, 0.05),
      "Driver, Robin: the club head comes within 86 mm of the beam at the top of the backswing, 2310 mm "
      "above the floor; with the 150 mm to keep it is 64 mm short.");
}

TEST(SwingSentence, SaysWhatHits) {
  EXPECT_EQ(
      said(-0.05, -0.1),
      "Driver, Robin: the club head hits the beam at the top of the backswing, 2310 mm above the floor; "
      "with the 150 mm to keep it is 200 mm short.");
}

TEST(SwingSentence, MentionsFullExtensionWhereItIsWorse) {
  EXPECT_EQ(said(0.55, 0.5), "Driver, Robin: 400 mm to spare at the beam at the top of the backswing.");
  EXPECT_EQ(said(0.55, 0.1),
            "Driver, Robin: 400 mm to spare at the beam at the top of the backswing. At full extension 50 mm "
            "short.");
  EXPECT_EQ(said(0.55, -0.1),
            "Driver, Robin: 400 mm to spare at the beam at the top of the backswing. A swing at full "
            "extension would hit it.");
}

}  // namespace
}  // namespace baywright
