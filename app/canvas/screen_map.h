// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QMarginsF>
#include <QPointF>
#include <QSizeF>
#include <QTransform>

#include "geometry/vec.h"

namespace baywright {

/// Where a drawing (metres, y up) lies in a widget (logical pixels, y down). A value.
class ScreenMap {
 public:
  QPointF pixelFrom(const Vec2& drawing) const;
  Vec2 drawingFrom(QPointF pixel) const;
  QTransform deviceFromDrawing() const;

  double metresPerPixel() const { return metresPerPixel_; }
  QSizeF size() const { return size_; }
  Eigen::AlignedBox2d shown() const;

  /// Keeps the middle of the drawing in the middle of the widget.
  void resize(QSizeF size) { size_ = size; }
  void pan(QPointF pixels);
  /// The point of the drawing under `at` stays there. Stops at kNearest and kFarthest.
  void zoom(QPointF at, double factor);
  /// All of the box, as large as it goes with these margins in pixels.
  void fit(const Eigen::AlignedBox2d& box, QMarginsF margins);

  bool operator==(const ScreenMap&) const = default;

  // Metres in a pixel: a tenth of a millimetre, and a town.
  static constexpr double kNearest = 1e-4;
  static constexpr double kFarthest = 1.0;

 private:
  QSizeF size_{1, 1};
  Vec2 middle_{0, 0};
  double metresPerPixel_ = 0.02;
};

}  // namespace baywright
