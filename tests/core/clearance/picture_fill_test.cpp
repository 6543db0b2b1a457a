// SPDX-License-Identifier: Apache-2.0
#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

/// A picture of 3.6 m by 2.025 m on a screen of its own aspect: throw ratio 1, 3.6 m away, offset matched by
/// the height.
JobBuilder filled() {
  return roomyHall().withScreen(3.2, 1.8, 0.3).withProjector(1.0, {-3.2, 0, 2.1}).with([](Job& j) {
    j.options[0].kit.projector.offset = 0.5;
    j.options[0].kit.projector.throwMin = 0.9;
    j.options[0].kit.projector.throwMax = 1.1;
  });
}

TEST(PictureFill, IsClearWhenThePictureIsTheScreen) {
  const Job job = filled().job();
  const Assessment assessment = assess(job);
  EXPECT_NEAR(figureOf(assessment, "picture.width"), 3.2, 1e-9);
  EXPECT_NEAR(figureOf(assessment, "picture.throw_distance"), 3.2, 1e-9);
  EXPECT_NEAR(figureOf(assessment, "picture.coverage"), 1.0, 1e-6);
  for (const char* aspect : {"zoom", "focus", "shift", "keystone"}) {
    EXPECT_EQ(findingOf(job, assessment, std::string("picture_fill/") + aspect).verdict, Verdict::Clear)
        << aspect;
  }
}

TEST(PictureFill, LosesCoverageNearer) {
  const Job job = filled().with([](Job& j) { j.options[0].placement.projector.lens.x() = -2.8; }).job();
  const Finding coverage = findingOf(job, "picture_fill/coverage");
  EXPECT_EQ(coverage.verdict, Verdict::Blocked);
  // 2.8 m wide of 3.2 m, top edges together: 2.8 * 1.575 of 3.2 * 1.8.
  EXPECT_NEAR(coverage.margin->value, 2.8 * 1.575 / (3.2 * 1.8) - 0.98, 1e-9);
  EXPECT_GT(coverage.margin->sigma, 0);
}

TEST(PictureFill, BlocksAZoomThatTheLensDoesNotHave) {
  const Job job =
      filled().with([](Job& j) { j.options[0].placement.projector.throwRatio = 1.3; }).uncheckedJob();
  const Finding zoom = findingOf(job, "picture_fill/zoom");
  EXPECT_EQ(zoom.verdict, Verdict::Blocked);
  EXPECT_NEAR(zoom.margin->value, -0.2, 1e-9);
}

TEST(PictureFill, SigmaOfCoverageFollowsFromThePlacing) {
  // Moving the lens by s along d changes a picture that is cut at two sides by about 2 s / width.
  const Job job = filled().with([](Job& j) { j.options[0].placement.projector.lens.x() = -2.8; }).job();
  const double sigma = job.option().placement.sigma;
  const double d = 2 * 2.8 * 0.5625 / (3.2 * 1.8) * sigma;
  const Finding coverage = findingOf(job, "picture_fill/coverage");
  EXPECT_GE(coverage.margin->sigma, 0.95 * d);
  EXPECT_LE(coverage.margin->sigma, 2 * d);
}

TEST(PictureFill, SaysNothingWithoutAProjector) {
  for (const Finding& finding : assess(roomyHall().withoutProjector().job()).findings) {
    EXPECT_FALSE(finding.check.starts_with("picture_")) << finding.key;
  }
}

TEST(PictureFill, TellsWhyThereIsNoPicture) {
  const Job job = filled().with([](Job& j) { j.options[0].placement.projector.yaw = 89_deg; }).uncheckedJob();
  const Assessment assessment = assess(job);
  EXPECT_FALSE(assessment.picture);
  EXPECT_EQ(findingOf(job, assessment, "picture_fill/none").verdict, Verdict::Blocked);
}

TEST(PictureFill, SaysWhatWouldDo) {
  // Near enough, but zoomed in: another zoom does from where it hangs.
  const Finding zoomed =
      findingOf(filled().with([](Job& j) { j.options[0].placement.projector.throwRatio = 1.1; }).job(),
                "picture_fill/coverage");
  EXPECT_TRUE(contains(zoomed.sentence, "From where it hangs it does with a throw ratio of 1.0"))
      << zoomed.sentence;
  // Too near for any zoom: from 0.9 times 3.2 m on.
  const Finding near =
      findingOf(filled().with([](Job& j) { j.options[0].placement.projector.lens.x() = -2.0; }).job(),
                "picture_fill/coverage");
  EXPECT_TRUE(contains(near.sentence, "At this height it does from 2.8")) << near.sentence;
  EXPECT_FALSE(contains(findingOf(filled().job(), "picture_fill/zoom").sentence, " does from "));
}

}  // namespace
}  // namespace baywright
