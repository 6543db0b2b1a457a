// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>
#include <vector>

#include "exchange/dxf_drawing.h"

namespace baywright {

/// A drawing with some of its layers standing out, and one that is pointed at: for whoever looks for the
/// walls among them.
class DrawingPreview : public QWidget {
  Q_OBJECT

 public:
  /// The drawing must outlive the widget.
  explicit DrawingPreview(const DxfDrawing& drawing, QWidget* parent = nullptr);

  /// Indices into DxfDrawing::layers.
  void showLayers(std::vector<int> chosen);
  /// -1: none.
  void pointAt(int layer);
  QSize sizeHint() const override { return {420, 360}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void paintCurves(QPainter& painter, const QTransform& device, int strength) const;
  int strengthOf(const DxfCurve& curve) const;

  const DxfDrawing& drawing_;
  std::vector<int> chosen_;
  int pointed_ = -1;
};

}  // namespace baywright
