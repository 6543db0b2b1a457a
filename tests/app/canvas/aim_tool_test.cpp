// SPDX-License-Identifier: Apache-2.0
#include "canvas/aim_tool.h"

#include <gtest/gtest.h>

#include "support/fake_tool_host.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

Job withBeam() {
  return garage(10, 8).withCeiling(3).bayAt(8, 4, 0).withProjector(1.0, {-3, 0.6, 2.3}).job();
}

TEST(AimTool, DragsTheLens) {
  FakeToolHost host(withBeam());
  AimTool tool;
  const Vec2 lens = beamHandles(ViewKind::Plan, host.job())->lens;
  host.drag(tool, lens, lens + Vec2(0.3, 0.2), Qt::ControlModifier);
  EXPECT_TRUE(host.job().option().placement.projector.lens.isApprox(Vec3(-2.7, 0.4, 2.3), 1e-9));
  EXPECT_EQ(host.document().undoStack().count(), 1);
}

TEST(AimTool, TurnsTheBeamOntoTheScreensMiddle) {
  FakeToolHost host(withBeam());
  AimTool tool;
  const BeamHandles handles = *beamHandles(ViewKind::Plan, host.job());
  host.drag(tool, handles.centre, handles.screenMiddle + Vec2(0.03, 0.03));
  const auto& mount = host.job().option().placement.projector;
  EXPECT_NEAR(mount.yaw, -std::atan2(0.6, 3.0), 1e-9);
  EXPECT_EQ(mount.pitch, 0);
  EXPECT_EQ(host.document().undoStack().count(), 1);
}

TEST(AimTool, RollsBackOnEscape) {
  FakeToolHost host(withBeam(), ViewKind::Side);
  AimTool tool;
  const Job before = host.job();
  const BeamHandles handles = *beamHandles(ViewKind::Side, host.job());
  host.hold(tool, handles.centre, handles.centre + Vec2(0, -0.4), Qt::ControlModifier);
  EXPECT_NE(host.job(), before);
  tool.cancel(host);
  EXPECT_EQ(host.job(), before);
}

TEST(AimTool, FillsTheScreenOnADoubleClick) {
  FakeToolHost host(withBeam());
  AimTool tool;
  const Job before = host.job();
  tool.doubleClick(host, host.at({1, 1}, Qt::LeftButton));
  EXPECT_NE(host.job().option().placement.projector, before.option().placement.projector);
  EXPECT_EQ(host.document().undoStack().count(), 1);
}

TEST(AimTool, SaysWhenThereIsNothingToAim) {
  FakeToolHost host(garage(10, 8).withoutProjector().job());
  AimTool tool;
  host.click(tool, {1, 1});
  EXPECT_FALSE(host.said.isEmpty());
}

}  // namespace
}  // namespace baywright
