// SPDX-License-Identifier: Apache-2.0
#include "canvas/screen_map.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

ScreenMap mapOf(QSizeF size) {
  ScreenMap map;
  map.resize(size);
  map.fit({Vec2(-1, 2), Vec2(7, 6)}, {20, 20, 20, 20});
  return map;
}

TEST(ScreenMap, GoesThereAndBack) {
  const ScreenMap map = mapOf({640, 480});
  for (const Vec2& p : {Vec2(0, 0), Vec2(3.5, -2), Vec2(-8, 11)}) {
    EXPECT_TRUE(map.drawingFrom(map.pixelFrom(p)).isApprox(p, 1e-12));
    const QPointF same = map.deviceFromDrawing().map(QPointF(p.x(), p.y()));
    EXPECT_NEAR(same.x(), map.pixelFrom(p).x(), 1e-9);
    EXPECT_NEAR(same.y(), map.pixelFrom(p).y(), 1e-9);
  }
}

TEST(ScreenMap, FitsAllOfABoxInsideItsMargin) {
  const ScreenMap map = mapOf({640, 480});
  EXPECT_NEAR(map.pixelFrom({-1, 4}).x(), 20, 1e-9);
  EXPECT_NEAR(map.pixelFrom({7, 4}).x(), 620, 1e-9);
  EXPECT_NEAR(map.pixelFrom({3, 4}).y(), 240, 1e-9);
  EXPECT_GT(map.pixelFrom({3, 6}).y(), 20);
}

TEST(ScreenMap, LeavesTheMarginsFree) {
  ScreenMap map;
  map.resize({640, 480});
  map.fit({Vec2(0, 0), Vec2(1, 4)}, {10, 20, 50, 60});
  EXPECT_NEAR(map.pixelFrom({0.5, 4}).y(), 20, 1e-9);
  EXPECT_NEAR(map.pixelFrom({0.5, 0}).y(), 420, 1e-9);
  EXPECT_NEAR(map.pixelFrom({0.5, 2}).x(), 300, 1e-9);
}

TEST(ScreenMap, ZoomsAboutThePointer) {
  ScreenMap map = mapOf({640, 480});
  const QPointF pointer(111, 222);
  const Vec2 under = map.drawingFrom(pointer);
  const double before = map.metresPerPixel();
  map.zoom(pointer, 2.5);
  EXPECT_TRUE(map.drawingFrom(pointer).isApprox(under, 1e-12));
  EXPECT_NEAR(map.metresPerPixel(), before / 2.5, 1e-12);
  map.zoom(pointer, 1e9);
  EXPECT_EQ(map.metresPerPixel(), ScreenMap::kNearest);
  map.zoom(pointer, 1e-12);
  EXPECT_EQ(map.metresPerPixel(), ScreenMap::kFarthest);
}

TEST(ScreenMap, PansWithTheHand) {
  ScreenMap map = mapOf({640, 480});
  const Vec2 grabbed = map.drawingFrom({100, 100});
  map.pan({30, -12});
  EXPECT_TRUE(map.drawingFrom({130, 88}).isApprox(grabbed, 1e-12));
}

TEST(ScreenMap, KeepsItsMiddleWhenResized) {
  ScreenMap map = mapOf({640, 480});
  const Vec2 middle = map.drawingFrom({320, 240});
  map.resize({900, 300});
  EXPECT_TRUE(map.drawingFrom({450, 150}).isApprox(middle, 1e-12));
}

}  // namespace
}  // namespace baywright
