// SPDX-License-Identifier: Apache-2.0
#include "drawing/beam_aim.h"

#include <gtest/gtest.h>

#include "optics/picture.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

Job withBeam() {
  return garage(10, 8).withCeiling(3).bayAt(8, 4, 0.3).withProjector(1.0, {-3, 0.2, 2.3}).job();
}

TEST(BeamAim, PutsThePicturesMiddleWhereItIsDragged) {
  const Job job = withBeam();
  const ViewKind view = ViewKind::Plan;
  const auto before = beamHandles(view, job);
  ASSERT_TRUE(before);
  const auto turned = beamTurned(view, job, before->centre, before->screenMiddle);
  ASSERT_TRUE(turned) << turned.error().sentence();
  const auto after = beamHandles(view, *turned);
  EXPECT_TRUE(after->lens.isApprox(before->lens, 1e-12));
  // On the plan the picture's middle lies on the line that was pointed along.
  const Vec2 wanted = before->screenMiddle - before->lens;
  EXPECT_NEAR(cross(wanted.normalized(), (after->centre - after->lens).normalized()), 0, 1e-9);
}

TEST(BeamAim, TiltsFromTheSide) {
  const Job job = withBeam();
  const auto before = beamHandles(ViewKind::Side, job);
  const Vec2 wanted = before->centre + Vec2(0, 0.3);
  const auto turned = beamTurned(ViewKind::Side, job, before->centre, wanted);
  ASSERT_TRUE(turned);
  EXPECT_GT(turned->option().placement.projector.pitch, job.option().placement.projector.pitch);
  EXPECT_EQ(turned->option().placement.projector.yaw, job.option().placement.projector.yaw);
  EXPECT_NEAR(beamHandles(ViewKind::Side, *turned)->centre.y(), wanted.y(), 0.02);
}

TEST(BeamAim, TurnsBothWaysDownRange) {
  const Job job = withBeam();
  const auto before = beamHandles(ViewKind::DownRange, job);
  const Vec2 wanted = before->centre + Vec2(0.3, -0.2);
  const auto turned = beamTurned(ViewKind::DownRange, job, before->centre, wanted);
  ASSERT_TRUE(turned);
  EXPECT_TRUE((beamHandles(ViewKind::DownRange, *turned)->centre - wanted).norm() < 0.05);
}

TEST(BeamAim, FillsTheScreenOnRequest) {
  const auto aimed = beamAimedAtScreen(withBeam());
  ASSERT_TRUE(aimed) << aimed.error().sentence();
  const auto handles = beamHandles(ViewKind::ScreenFace, *aimed);
  EXPECT_LT((handles->centre - handles->screenMiddle).norm(), 0.1);
}

TEST(BeamAim, HasNothingToHoldWithoutAPicture) {
  EXPECT_FALSE(beamHandles(ViewKind::Plan, garage(10, 8).withoutProjector().job()));
  EXPECT_FALSE(beamTurned(ViewKind::Plan, garage(10, 8).withoutProjector().job(), {0, 0}, {1, 1}));
}

}  // namespace
}  // namespace baywright
