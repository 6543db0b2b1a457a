// SPDX-License-Identifier: Apache-2.0
#include "rendering/solid_entity.h"

#include <Qt3DCore/QAttribute>
#include <Qt3DCore/QBuffer>
#include <Qt3DCore/QGeometry>
#include <Qt3DExtras/QPhongAlphaMaterial>
#include <Qt3DExtras/QPhongMaterial>
#include <Qt3DRender/QGeometryRenderer>
#include <Qt3DRender/QLayer>

namespace baywright {
namespace {

using Qt3DCore::QAttribute;
using Qt3DCore::QBuffer;

template <class T>
QByteArray bytesOf(const std::vector<T>& values) {
  return {reinterpret_cast<const char*>(values.data()), static_cast<qsizetype>(values.size() * sizeof(T))};
}

/// Sent to the graphics card only where something changed: most solids stay as they are while one is dragged.
void setBytes(QBuffer& buffer, const QByteArray& bytes) {
  if (buffer.data() != bytes) buffer.setData(bytes);
}

QAttribute* threeFloats(QBuffer* buffer, const QString& name) {
  auto* attribute = new QAttribute;
  attribute->setName(name);
  attribute->setAttributeType(QAttribute::VertexAttribute);
  attribute->setVertexBaseType(QAttribute::Float);
  attribute->setVertexSize(3);
  attribute->setByteStride(3 * sizeof(float));
  attribute->setBuffer(buffer);
  return attribute;
}

}  // namespace

SolidEntity::SolidEntity(Qt3DRender::QLayer* translucent)
    : translucent_(translucent),
      vertexBuffer_(new QBuffer),
      normalBuffer_(new QBuffer),
      indexBuffer_(new QBuffer),
      vertexAttribute_(threeFloats(vertexBuffer_, QAttribute::defaultPositionAttributeName())),
      normalAttribute_(threeFloats(normalBuffer_, QAttribute::defaultNormalAttributeName())),
      indexAttribute_(new QAttribute),
      renderer_(new Qt3DRender::QGeometryRenderer),
      opaque_(new Qt3DExtras::QPhongMaterial),
      seeThrough_(new Qt3DExtras::QPhongAlphaMaterial) {
  indexAttribute_->setAttributeType(QAttribute::IndexAttribute);
  indexAttribute_->setVertexBaseType(QAttribute::UnsignedInt);
  indexAttribute_->setBuffer(indexBuffer_);
  auto* geometry = new Qt3DCore::QGeometry;
  geometry->addAttribute(vertexAttribute_);
  geometry->addAttribute(normalAttribute_);
  geometry->addAttribute(indexAttribute_);
  geometry->setBoundingVolumePositionAttribute(vertexAttribute_);
  renderer_->setPrimitiveType(Qt3DRender::QGeometryRenderer::Triangles);
  renderer_->setGeometry(geometry);
  opaque_->setShininess(6);
  opaque_->setSpecular(QColor(12, 12, 12));
  seeThrough_->setShininess(4);
  seeThrough_->setSpecular(QColor(0, 0, 0));
  // A capture keeps the target's alpha: leave it as it is, or saved pictures get holes.
  seeThrough_->setSourceAlphaArg(Qt3DRender::QBlendEquationArguments::Zero);
  seeThrough_->setDestinationAlphaArg(Qt3DRender::QBlendEquationArguments::One);
  opaque_->setParent(this);
  seeThrough_->setParent(this);
  addComponent(renderer_);
  addComponent(opaque_);
}

void SolidEntity::setTriangles(const std::vector<Eigen::Vector3f>& vertices,
                               const std::vector<Eigen::Vector3f>& normals,
                               const std::vector<std::uint32_t>& indices) {
  setBytes(*vertexBuffer_, bytesOf(vertices));
  setBytes(*normalBuffer_, bytesOf(normals));
  setBytes(*indexBuffer_, bytesOf(indices));
  vertexAttribute_->setCount(static_cast<uint>(vertices.size()));
  normalAttribute_->setCount(static_cast<uint>(normals.size()));
  indexAttribute_->setCount(static_cast<uint>(indices.size()));
  renderer_->setVertexCount(static_cast<int>(indices.size()));
}

void SolidEntity::setColour(const QColor& colour, double opacity) {
  const bool translucent = opacity < 0.999;
  if (translucent != isTranslucent_) {
    isTranslucent_ = translucent;
    if (translucent) {
      removeComponent(opaque_);
      addComponent(seeThrough_);
      addComponent(translucent_);
    } else {
      removeComponent(translucent_);
      removeComponent(seeThrough_);
      addComponent(opaque_);
    }
  }
  // Qt's Phong multiplies the ambient colour by the diffuse one.
  opaque_->setAmbient(QColor(140, 140, 140));
  opaque_->setDiffuse(colour);
  seeThrough_->setAmbient(QColor(215, 215, 215));
  seeThrough_->setDiffuse(colour);
  seeThrough_->setAlpha(static_cast<float>(opacity));
}

}  // namespace baywright
