// SPDX-License-Identifier: Apache-2.0
#include "painting/view_image.h"

#include <QPainter>
#include <algorithm>

#include "painting/linework_painter.h"

namespace baywright {
namespace {

constexpr double kMarginShare = 0.04;  // of the picture's smaller side
constexpr double kPixelsPerMm = 5;     // a picture is looked at from nearer than paper

}  // namespace

QTransform fitInto(const Eigen::AlignedBox2d& drawing, const QRectF& device) {
  const Vec2 size = drawing.sizes().cwiseMax(1e-3);
  const double scale = std::min(device.width() / size.x(), device.height() / size.y());
  const Vec2 middle = drawing.center();
  return {scale,
          0,
          0,
          -scale,
          device.center().x() - scale * middle.x(),
          device.center().y() + scale * middle.y()};
}

QImage viewImage(const Linework& linework, QSize size, const Theme& theme) {
  QImage image(size, QImage::Format_RGB32);
  image.fill(theme.background);
  const auto extent = linework.extent();
  if (!extent) return image;
  const double margin = kMarginShare * std::min(size.width(), size.height());
  PaintStyle style;
  style.deviceFromDrawing =
      fitInto(*extent, QRectF(QPointF(0, 0), size).adjusted(margin, margin, -margin, -margin));
  style.unitsPerMm = kPixelsPerMm;
  style.theme = theme;
  QPainter painter(&image);
  paintLinework(painter, linework, style);
  return image;
}

}  // namespace baywright
