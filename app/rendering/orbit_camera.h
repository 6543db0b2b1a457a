// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QMatrix4x4>
#include <QPointF>
#include <QSize>
#include <QVector3D>
#include <optional>

#include "geometry/vec.h"

namespace baywright {

/// A camera that looks at a point from a distance. z is up. yaw turns around z, 0 looks along +x; pitch is 0
/// level and negative looking down. Degrees, as Qt's matrices take them; metres.
struct OrbitCamera {
  QVector3D target;
  float distance = 8;
  float yaw = 60;
  float pitch = -35;
  float fieldOfView = 45;  ///< upright

  bool operator==(const OrbitCamera&) const = default;

  QVector3D forward() const;
  QVector3D right() const;
  QVector3D position() const { return target - distance * forward(); }
  QMatrix4x4 view() const;
  QMatrix4x4 projection(QSizeF size) const;
  float nearPlane() const { return std::max(0.02F, distance / 200); }
  float farPlane() const { return distance * 6 + 40; }

  /// Where a world point falls in a picture of this size; nothing when it lies behind the camera.
  std::optional<QPointF> project(const Vec3& world, QSizeF size) const;
  /// Unit direction in the world through a pixel of the picture.
  Vec3 rayThrough(QPointF pixel, QSizeF size) const;

  /// Keeps its angles and moves so that the ball around the box fills the picture.
  void fit(const Eigen::AlignedBox3d& box, QSizeF size);
};

}  // namespace baywright
