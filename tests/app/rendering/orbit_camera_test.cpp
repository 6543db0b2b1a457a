// SPDX-License-Identifier: Apache-2.0
#include "rendering/orbit_camera.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

const QSizeF kSize(800, 600);

TEST(OrbitCamera, ShowsItsTargetInTheMiddle) {
  OrbitCamera camera;
  camera.target = QVector3D(1, 2, 1);
  const auto at = camera.project(Vec3(1, 2, 1), kSize);
  ASSERT_TRUE(at.has_value());
  EXPECT_NEAR(at->x(), 400, 0.01);
  EXPECT_NEAR(at->y(), 300, 0.01);
}

TEST(OrbitCamera, SeesNothingBehindItself) {
  OrbitCamera camera;
  const QVector3D behind = camera.position() - 2 * camera.forward();
  EXPECT_FALSE(camera.project(Vec3(behind.x(), behind.y(), behind.z()), kSize).has_value());
}

TEST(OrbitCamera, RayAndProjectionAgree) {
  OrbitCamera camera;
  const QPointF pixel(123, 456);
  const QVector3D eye = camera.position();
  const Vec3 point = Vec3(eye.x(), eye.y(), eye.z()) + 5 * camera.rayThrough(pixel, kSize);
  const auto back = camera.project(point, kSize);
  ASSERT_TRUE(back.has_value());
  EXPECT_NEAR(back->x(), pixel.x(), 0.1);
  EXPECT_NEAR(back->y(), pixel.y(), 0.1);
}

TEST(OrbitCamera, FitsABoxIntoThePicture) {
  OrbitCamera camera;
  const Eigen::AlignedBox3d box(Vec3(0, 0, 0), Vec3(6, 4, 3));
  camera.fit(box, kSize);
  for (int corner = 0; corner < 8; ++corner) {
    const auto at = camera.project(box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(corner)), kSize);
    ASSERT_TRUE(at.has_value());
    EXPECT_TRUE(QRectF(0, 0, 800, 600).contains(*at)) << corner;
  }
}

}  // namespace
}  // namespace baywright
