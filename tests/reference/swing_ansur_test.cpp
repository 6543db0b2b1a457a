// SPDX-License-Identifier: Apache-2.0
// ANSUR II, the 2012 anthropometric survey of US Army personnel: Gordon et al. 2014, NATICK/TR-15/007; means
// and percentiles computed from the public data, 4,082 men and 1,986 women. The model takes everything from
// stature, so each value here checks a share that was not fitted to this survey.
#include <gtest/gtest.h>

#include "swing/body.h"

namespace baywright {
namespace {

struct Person {
  const char* who;
  double stature;
  double shoulder;  ///< acromial height
};
// Shoulder heights of the 5th, 50th and 95th percentile, beside the statures of the same percentile.
constexpr Person kPeople[] = {{"man 5", 1.648, 1.339},        {"man mean", 1.7562, 1.4407},
                              {"man 95", 1.870, 1.546},       {"woman 5", 1.525, 1.242},
                              {"woman mean", 1.6285, 1.3351}, {"woman 95", 1.740, 1.434}};

TEST(AnsurII, ShoulderHeightFollowsFromStature) {
  for (const Person& person : kPeople)
    EXPECT_NEAR(bodyOf(person.stature).shoulder, person.shoulder, 0.012 * person.shoulder) << person.who;
}

TEST(AnsurII, ArmFromShoulderToGrip) {
  EXPECT_NEAR(bodyOf(1.7562).arm(), 0.6843, 0.02 * 0.6843);  // men: acromion-radiale + forearm to grip
  EXPECT_NEAR(bodyOf(1.6285).arm(), 0.6289, 0.02 * 0.6289);  // women
}

TEST(AnsurII, UpperArm) {
  EXPECT_NEAR(bodyOf(1.7562).upperArm, 0.3352, 0.03 * 0.3352);
  EXPECT_NEAR(bodyOf(1.6285).upperArm, 0.3112, 0.03 * 0.3112);
}

TEST(AnsurII, BreadthBetweenTheShoulders) {
  EXPECT_NEAR(2 * bodyOf(1.7562).halfShoulders, 0.4157, 0.01 * 0.4157);  // men
  EXPECT_NEAR(2 * bodyOf(1.6285).halfShoulders, 0.3653, 0.06 * 0.3653);  // women are narrower
}

TEST(AnsurII, HeightOfTheHip) {
  EXPECT_NEAR(bodyOf(1.7562).hip, 0.9009, 0.04 * 0.9009);  // trochanterion is felt a little below the joint
  EXPECT_NEAR(bodyOf(1.6285).hip, 0.8454, 0.04 * 0.8454);
}

TEST(AnsurII, FootAheadOfTheAnkleIsShorterThanTheFoot) {
  EXPECT_LT(bodyOf(1.7562).footAhead, 0.2712);
  EXPECT_GT(bodyOf(1.7562).footAhead, 0.7 * 0.2712);
}

}  // namespace
}  // namespace baywright
