// SPDX-License-Identifier: Apache-2.0
#include "scene/scene_view.h"

#include <gtest/gtest.h>

#include <QTest>

#include "support/job_builder.h"

namespace baywright {
namespace {

TEST(SceneView, SaysWhyThereIsNo3DAndGoesOn) {
  Document document;
  document.startWith(testing::garage(7.0, 6.0).job());
  GlInfo none;
  none.reason = QStringLiteral("This machine offers no OpenGL.");
  SceneView view(document, none);
  view.resize(300, 200);
  view.show();
  EXPECT_FALSE(view.isWorking());
  const QImage seen = view.grab().toImage();
  // Something is written on the empty ground.
  bool written = false;
  for (int x = 0; x < seen.width(); ++x) {
    for (int y = 0; y < seen.height(); ++y) written = written || seen.pixel(x, y) != seen.pixel(0, 0);
  }
  EXPECT_TRUE(written);
  QTest::mouseClick(&view, Qt::LeftButton);
  view.fitToRoom();
  view.standAt(SceneView::Standpoint::Above);
}

}  // namespace
}  // namespace baywright
