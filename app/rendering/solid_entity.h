// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <Qt3DCore/QEntity>
#include <cstdint>
#include <vector>

#include "geometry/vec.h"

namespace Qt3DCore {
class QAttribute;
class QBuffer;
class QGeometry;
}  // namespace Qt3DCore
namespace Qt3DExtras {
class QPhongAlphaMaterial;
class QPhongMaterial;
}  // namespace Qt3DExtras
namespace Qt3DRender {
class QGeometryRenderer;
class QLayer;
}  // namespace Qt3DRender

namespace baywright {

/// Triangles of one solid as Qt3D shows them. It is made once and refilled: only buffers change, so that a
/// drag allocates no scene nodes.
class SolidEntity : public Qt3DCore::QEntity {
  Q_OBJECT

 public:
  /// `translucent` is the layer whose members are drawn last and sorted from back to front.
  explicit SolidEntity(Qt3DRender::QLayer* translucent);

  void setTriangles(const std::vector<Eigen::Vector3f>& vertices, const std::vector<Eigen::Vector3f>& normals,
                    const std::vector<std::uint32_t>& indices);
  void setColour(const QColor& colour, double opacity);

 private:
  Qt3DRender::QLayer* translucent_;
  Qt3DCore::QBuffer* vertexBuffer_;
  Qt3DCore::QBuffer* normalBuffer_;
  Qt3DCore::QBuffer* indexBuffer_;
  Qt3DCore::QAttribute* vertexAttribute_;
  Qt3DCore::QAttribute* normalAttribute_;
  Qt3DCore::QAttribute* indexAttribute_;
  Qt3DRender::QGeometryRenderer* renderer_;
  Qt3DExtras::QPhongMaterial* opaque_;
  Qt3DExtras::QPhongAlphaMaterial* seeThrough_;
  bool isTranslucent_ = false;
};

}  // namespace baywright
