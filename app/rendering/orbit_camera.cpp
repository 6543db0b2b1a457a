// SPDX-License-Identifier: Apache-2.0
#include "rendering/orbit_camera.h"

#include <algorithm>
#include <cmath>

namespace baywright {
namespace {

float radians(float degrees) {
  return degrees * static_cast<float>(kPi) / 180;
}

}  // namespace

QVector3D OrbitCamera::forward() const {
  const float level = std::cos(radians(pitch));
  return {level * std::cos(radians(yaw)), level * std::sin(radians(yaw)), std::sin(radians(pitch))};
}

QVector3D OrbitCamera::right() const {
  return {std::sin(radians(yaw)), -std::cos(radians(yaw)), 0};
}

QMatrix4x4 OrbitCamera::view() const {
  QMatrix4x4 matrix;
  matrix.lookAt(position(), target, QVector3D::crossProduct(right(), forward()));
  return matrix;
}

QMatrix4x4 OrbitCamera::projection(QSizeF size) const {
  QMatrix4x4 matrix;
  const double aspect = size.height() > 0 ? size.width() / size.height() : 1;
  matrix.perspective(fieldOfView, static_cast<float>(aspect), nearPlane(), farPlane());
  return matrix;
}

std::optional<QPointF> OrbitCamera::project(const Vec3& world, QSizeF size) const {
  const QVector4D point(static_cast<float>(world.x()), static_cast<float>(world.y()),
                        static_cast<float>(world.z()), 1);
  const QVector4D clip = projection(size) * (view() * point);
  if (clip.w() <= nearPlane()) return std::nullopt;
  return QPointF((clip.x() / clip.w() + 1) / 2 * size.width(), (1 - clip.y() / clip.w()) / 2 * size.height());
}

Vec3 OrbitCamera::rayThrough(QPointF pixel, QSizeF size) const {
  const auto x = static_cast<float>(2 * pixel.x() / size.width() - 1);
  const auto y = static_cast<float>(1 - 2 * pixel.y() / size.height());
  const QVector3D far = (projection(size) * view()).inverted().map(QVector3D(x, y, 1));
  const QVector3D along = (far - position()).normalized();
  return {along.x(), along.y(), along.z()};
}

void OrbitCamera::fit(const Eigen::AlignedBox3d& box, QSizeF size) {
  if (box.isEmpty()) return;
  const Vec3 centre = box.center();
  target = QVector3D(static_cast<float>(centre.x()), static_cast<float>(centre.y()),
                     static_cast<float>(centre.z()));
  const double aspect = size.height() > 0 ? size.width() / size.height() : 1;
  const double halfUp = radians(fieldOfView) / 2;
  const double half = aspect < 1 ? std::atan(std::tan(halfUp) * aspect) : halfUp;
  distance = static_cast<float>(std::max(0.5, box.diagonal().norm() / 2 / std::sin(half)));
}

}  // namespace baywright
