// SPDX-License-Identifier: Apache-2.0
#include "clearance/wording.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

const UnitSystem kMillimetres{LengthUnit::Millimetres, 16, '.'};

TEST(Wording, GivesCommonNounsAnArticle) {
  EXPECT_EQ(inSentence("Beam"), "the beam");
  EXPECT_EQ(inSentence("Garage door"), "the garage door");
}

TEST(Wording, LeavesNamesAlone) {
  EXPECT_EQ(inSentence("Beam 2"), "Beam 2");
  EXPECT_EQ(inSentence("LED panel"), "LED panel");
  EXPECT_EQ(inSentence("Robin's shelf"), "Robin's shelf");
  EXPECT_EQ(inSentence("Über"), "Über");
  EXPECT_EQ(inSentence(""), "");
}

TEST(Wording, StartsSentencesWithACapital) {
  EXPECT_EQ(startingSentence("the beam"), "The beam");
  EXPECT_EQ(startingSentence("Beam 2"), "Beam 2");
}

TEST(Wording, SaysWhatIsMissingLeftOrDoubtful) {
  EXPECT_EQ(marginText({-0.064, 0.01}, "at wall A", kMillimetres), "64 mm short at wall A.");
  EXPECT_EQ(marginText({0.412, 0.01}, "at wall A", kMillimetres), "412 mm to spare at wall A.");
  EXPECT_EQ(marginText({0.012, 0.05}, "at wall A", kMillimetres),
            "12 mm to spare at wall A, but only known to ± 98 mm.");
}

TEST(Wording, NeverSaysThatNothingIsMissing) {
  EXPECT_EQ(missingText({-0.0001, 0}, kMillimetres), "under 1 mm");
}

}  // namespace
}  // namespace baywright
