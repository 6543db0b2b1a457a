// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

TEST(SwingHeadroom, UnderAFlatCeilingIsHeightLessHighestPoint) {
  const Job job = roomyHall().withCeiling(3.6).job();
  const Assessment assessment = assess(job);
  const Finding ceiling = findingOf(job, assessment, "swing_headroom/<driver>/ceiling");
  const double highest = assessment.swings[0].swing->expected.figures.highest.value;
  const double expected = 3.6 - job.option().kit.mat.thickness - highest - job.requirements.swingClearance;
  EXPECT_NEAR(ceiling.margin->value, expected, 1e-9);
}

TEST(SwingHeadroom, UnderASlopeIsMeasuredSquareToIt) {
  for (const double slope : {0.3, -0.2}) {
    const Job job = roomyHall()
                        .with([](Job& j) { j.room.ceiling.clear(); })
                        .withCeilingPart({}, 3.9 - 4.5 * slope, {0, slope})
                        .job();
    const Assessment assessment = assess(job);
    // z = 3.9 + slope (y - 4.5), as a plane with a unit normal that points down.
    const Vec3 down = Vec3(0, slope, -1).normalized();
    double nearest = 1e9;
    for (const SwingCapsule& part : assessment.swings[0].swing->expected.capsules) {
      for (const Vec3& end : {part.capsule.a, part.capsule.b}) {
        const Vec3 p = worldFromSwing(assessment.swings[0], end) - Vec3(0, 4.5, 3.9);
        nearest = std::min(nearest, down.dot(p) - part.capsule.radius);
      }
    }
    const Finding ceiling = findingOf(job, assessment, "swing_headroom/<driver>/ceiling");
    EXPECT_NEAR(ceiling.margin->value, nearest - job.requirements.swingClearance, 1e-6);
  }
}

TEST(SwingHeadroom, BlocksALowBeam) {
  const Job job = roomyHall().withBeam({5, 0}, {5, 9}, 0.2, 2.2, 2.5).job();
  const Finding beam = findingOf(job, "swing_headroom/<driver>/beam");
  EXPECT_EQ(beam.verdict, Verdict::Blocked);
  EXPECT_TRUE(contains(beam.sentence, "the beam")) << beam.sentence;
}

TEST(SwingHeadroom, FollowsTheInstrument) {
  const auto sigma = [](Instrument how) {
    const Job job = roomyHall().with([&](Job& j) { j.room.ceiling[0].height.how = how; }).job();
    return findingOf(job, "swing_headroom/<driver>/ceiling").margin->sigma;
  };
  EXPECT_GT(sigma(Instrument::Guess), sigma(Instrument::Laser));
}

TEST(SwingHeadroom, AsksForACeilingThatMatters) {
  const Job job = roomyHall().with([](Job& j) { j.room.ceiling[0].height = notMeasured(2.5); }).job();
  const Finding asked =
      findingOf(job, "swing_headroom/<driver>/missing/" + std::to_string(job.room.ceiling[0].id.value));
  EXPECT_EQ(asked.verdict, Verdict::Unknown);
  EXPECT_TRUE(contains(asked.sentence, "Measure the height of the ceiling")) << asked.sentence;
}

TEST(SwingHeadroom, AsksNothingAboutABeamOutOfReach) {
  const Job job = roomyHall()
                      .withBeam({11.8, 0}, {11.8, 9}, 0.2, 2.2, 2.5)
                      .with([](Job& j) { j.room.fixtures[0].bottom = notMeasured(2.2); })
                      .job();
  for (const Finding& finding : assess(job).findings) {
    EXPECT_FALSE(finding.check == "swing_headroom" && contains(finding.key, "missing")) << finding.key;
  }
}

TEST(SwingHeadroom, ListensToAMeasuredSwing) {
  const Job model = roomyHall().withCeiling(3.6).job();
  const Job taped = roomyHall().withCeiling(3.6).withMeasuredReach(2.75, 2.0).job();
  const Assessment assessment = assess(taped);
  EXPECT_TRUE(assessment.swings[0].swing->measured);
  const Finding ceiling = findingOf(taped, assessment, "swing_headroom/<driver>/ceiling");
  EXPECT_NEAR(ceiling.margin->value, 3.6 - taped.option().kit.mat.thickness - 2.75 - 0.15, 0.01);
  EXPECT_LT(ceiling.margin->sigma, findingOf(model, "swing_headroom/<driver>/ceiling").margin->sigma);
  EXPECT_TRUE(contains(ceiling.source, "taped"));
}

}  // namespace
}  // namespace baywright
