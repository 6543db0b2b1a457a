// SPDX-License-Identifier: Apache-2.0
#include "window/drawing_preview.h"

#include <QPainter>
#include <algorithm>

#include "painting/theme.h"
#include "painting/view_image.h"

namespace baywright {
namespace {

constexpr double kMargin = 12;  // pixels

// From what lies below to what lies on top.
enum Strength { kNotShown = -1, kFaint, kChosen, kPointedAt, kStrengths };

QPen penOf(int strength, const Theme& theme) {
  if (strength == kPointedAt) return {theme.accent, 2};
  if (strength == kChosen) return {theme.ink, 1.5};
  QColor faint = theme.faint;
  faint.setAlphaF(0.6F);
  return {faint, 1};
}

}  // namespace

DrawingPreview::DrawingPreview(const DxfDrawing& drawing, QWidget* parent)
    : QWidget(parent), drawing_(drawing) {
  setMinimumSize(220, 200);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void DrawingPreview::showLayers(std::vector<int> chosen) {
  chosen_ = std::move(chosen);
  update();
}

void DrawingPreview::pointAt(int layer) {
  pointed_ = layer;
  update();
}

int DrawingPreview::strengthOf(const DxfCurve& curve) const {
  if (curve.layer == pointed_) return kPointedAt;
  if (std::find(chosen_.begin(), chosen_.end(), curve.layer) != chosen_.end()) return kChosen;
  return curve.hidden ? kNotShown : kFaint;
}

void DrawingPreview::paintCurves(QPainter& painter, const QTransform& device, int strength) const {
  QPolygonF line;
  for (const DxfCurve& curve : drawing_.curves) {
    if (strengthOf(curve) != strength) continue;
    line.clear();
    for (const Vec2& point : curve.points) line << device.map(QPointF(point.x(), point.y()));
    if (curve.closed && !line.empty()) line << line.front();
    painter.drawPolyline(line);
  }
}

void DrawingPreview::paintEvent(QPaintEvent*) {
  const Theme theme = Theme::forPalette(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), theme.background);
  const auto extent = drawnExtent(drawing_);
  if (!extent) return;
  const QTransform device =
      fitInto({extent->low, extent->high}, QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin));
  for (int strength = kFaint; strength < kStrengths; ++strength) {
    painter.setPen(penOf(strength, theme));
    paintCurves(painter, device, strength);
  }
}

}  // namespace baywright
