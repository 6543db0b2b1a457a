// SPDX-License-Identifier: Apache-2.0
#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

JobBuilder from(double back, double height) {
  return roomyHall()
      .strikingFrom(3.0)
      .withFrame(3.6, 2.6)
      .withScreen(3.2, 1.8, 0.3)
      .withProjector(back / 3.2, {-back, 0, height});
}

TEST(PictureShadow, IsNoneFromInFrontOfTheGolfer) {
  const Job job = from(2.0, 2.1).job();
  EXPECT_EQ(
      figureOf(assess(job), "picture.shadow." + std::to_string(job.golfers[0].id.value) + ".at_address"), 0);
}

TEST(PictureShadow, GrowsAsTheProjectorGoesBackAndDown) {
  const auto atAddress = [](double back, double height) {
    const Job job = from(back, height).uncheckedJob();
    return figureOf(assess(job), "picture.shadow." + std::to_string(job.golfers[0].id.value) + ".at_address");
  };
  EXPECT_GT(atAddress(6.0, 1.6), 0);
  EXPECT_GT(atAddress(6.0, 1.6), atAddress(6.0, 2.6));
}

TEST(PictureShadow, NamesWhatStandsInTheLight) {
  const Job job = from(4.0, 2.1).withBeam({8.4, 0}, {8.4, 9}, 0.2, 1.6, 1.9).job();
  const Finding fixed = findingOf(job, "picture_shadow/fixed");
  EXPECT_EQ(fixed.verdict, Verdict::Blocked);
  EXPECT_TRUE(contains(fixed.sentence, "the beam")) << fixed.sentence;
}

TEST(PictureShadow, IsClearWhereNothingStands) {
  const Job job = from(2.0, 2.1).job();
  EXPECT_EQ(findingOf(job, "picture_shadow/fixed").verdict, Verdict::Clear);
}

}  // namespace
}  // namespace baywright
