// SPDX-License-Identifier: Apache-2.0
#include "clearance/kit_bodies.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(KitBodies, FrameFillsWhatItsSizesSay) {
  Frame frame;
  frame.width = 3.2;
  frame.height = 2.5;
  frame.depth = 1.5;
  frame.behindScreen = 0.1;
  const auto box = frameBox(frame);
  ASSERT_TRUE(box);
  EXPECT_NEAR((box->bounds().low - Vec3(-1.4, -1.6, 0)).norm(), 0, 1e-12);
  EXPECT_NEAR((box->bounds().high - Vec3(0.1, 1.6, 2.5)).norm(), 0, 1e-12);
}

TEST(KitBodies, PanelsStayInsideTheFrame) {
  const Frame frame;
  const Aabb3 whole = frameBox(frame)->bounds();
  const auto panels = framePanels(frame);
  ASSERT_EQ(panels.size(), 4u);
  for (const FramePanel& panel : panels) {
    EXPECT_TRUE((panel.body.bounds().low.array() >= whole.low.array() - 1e-12).all()) << panel.name;
    EXPECT_TRUE((panel.body.bounds().high.array() <= whole.high.array() + 1e-12).all()) << panel.name;
  }
}

TEST(KitBodies, ScreenNeedsItsTravelBehindIt) {
  Frame frame;
  Screen screen;
  screen.travel = 0.3;
  EXPECT_NEAR(screenTravelBox(frame, screen, 0.05)->bounds().high.x(), 0.35, 1e-12);
  frame.behindScreen = 0.6;
  EXPECT_NEAR(screenTravelBox(frame, screen, 0.05)->bounds().high.x(), 0.6, 1e-12);
}

TEST(KitBodies, MountReachesCeilingOrFloor) {
  const auto body = *boxFrom(UprightBox{{0, 0}, 0, {0.3, 0.4}, 2.2, 2.3});
  const auto hung = mountDrop(body, MountKind::Ceiling, 2.7);
  ASSERT_TRUE(hung);
  EXPECT_DOUBLE_EQ(hung->b.z(), 2.7);
  EXPECT_DOUBLE_EQ(mountDrop(body, MountKind::Floor, 2.7)->b.z(), 0);
  EXPECT_FALSE(mountDrop(body, MountKind::Wall, 2.7));
  EXPECT_FALSE(mountDrop(body, MountKind::Ceiling, 2.25));  // the ceiling is lower than the body's top
}

TEST(KitBodies, AreNothingWithoutASize) {
  Frame frame;
  frame.width = 0;
  EXPECT_FALSE(frameBox(frame));
  EXPECT_TRUE(framePanels(frame).empty());
}

}  // namespace
}  // namespace baywright
