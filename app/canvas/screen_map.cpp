// SPDX-License-Identifier: Apache-2.0
#include "canvas/screen_map.h"

#include <algorithm>

namespace baywright {

QPointF ScreenMap::pixelFrom(const Vec2& drawing) const {
  return {size_.width() / 2 + (drawing.x() - middle_.x()) / metresPerPixel_,
          size_.height() / 2 - (drawing.y() - middle_.y()) / metresPerPixel_};
}

Vec2 ScreenMap::drawingFrom(QPointF pixel) const {
  return {middle_.x() + (pixel.x() - size_.width() / 2) * metresPerPixel_,
          middle_.y() - (pixel.y() - size_.height() / 2) * metresPerPixel_};
}

QTransform ScreenMap::deviceFromDrawing() const {
  const double scale = 1 / metresPerPixel_;
  return {
      scale, 0, 0, -scale, size_.width() / 2 - middle_.x() * scale, size_.height() / 2 + middle_.y() * scale};
}

Eigen::AlignedBox2d ScreenMap::shown() const {
  const Vec2 half = metresPerPixel_ / 2 * Vec2(size_.width(), size_.height());
  return {Vec2(middle_ - half), Vec2(middle_ + half)};
}

void ScreenMap::pan(QPointF pixels) {
  middle_ += metresPerPixel_ * Vec2(-pixels.x(), pixels.y());
}

void ScreenMap::zoom(QPointF at, double factor) {
  const Vec2 fixed = drawingFrom(at);
  metresPerPixel_ = std::clamp(metresPerPixel_ / factor, kNearest, kFarthest);
  middle_ += fixed - drawingFrom(at);
}

void ScreenMap::fit(const Eigen::AlignedBox2d& box, QMarginsF margins) {
  if (box.isEmpty()) return;
  const double across = std::max(size_.width() - margins.left() - margins.right(), 1.0);
  const double down = std::max(size_.height() - margins.top() - margins.bottom(), 1.0);
  const Vec2 extent = box.sizes();
  metresPerPixel_ = std::clamp(std::max(extent.x() / across, extent.y() / down), kNearest, kFarthest);
  middle_ = box.center();
  pan(QPointF(margins.left() - margins.right(), margins.top() - margins.bottom()) / 2);
}

}  // namespace baywright
