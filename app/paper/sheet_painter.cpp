// SPDX-License-Identifier: Apache-2.0
#include "paper/sheet_painter.h"

#include <algorithm>

#include "painting/linework_painter.h"

namespace baywright {
namespace {

/// Mat3 works on columns, QTransform on rows.
QTransform transformOf(const Mat3& m) {
  return {m(0, 0), m(1, 0), m(2, 0), m(0, 1), m(1, 1), m(2, 1), m(0, 2), m(1, 2), m(2, 2)};
}

void paintUnderlay(QPainter& painter, const PlacedImage& placed, const Job& job, PlanImages& images,
                   const QTransform& deviceFromPage) {
  const auto scan = std::find_if(job.planScans.begin(), job.planScans.end(),
                                 [&](const PlanScan& s) { return s.id == placed.scan; });
  if (scan == job.planScans.end()) return;
  const QImage& image = images.full(*scan);
  if (image.isNull()) return;
  painter.save();
  const Vec2 low = placed.clip.min();
  const Vec2 size = placed.clip.sizes();
  painter.setClipRect(deviceFromPage.mapRect(QRectF(low.x(), low.y(), size.x(), size.y())));
  painter.setOpacity(placed.opacity);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.setRenderHint(QPainter::LosslessImageRendering);
  painter.setTransform(transformOf(placed.pageMmFromPixel) * deviceFromPage);
  painter.drawImage(QPointF(0, 0), image);
  painter.restore();
}

}  // namespace

void paintSheetPage(QPainter& painter, const SheetPage& page, const Job& job, PlanImages& images,
                    const PageOnDevice& device) {
  PaintStyle style;
  style.deviceFromDrawing = QTransform(device.dotsPerMmX, 0, 0, -device.dotsPerMmY, device.topLeft.x(),
                                       device.topLeft.y() + page.heightMm * device.dotsPerMmY);
  style.unitsPerMm = device.dotsPerMmY;
  style.theme = Theme::light();
  for (const PlacedImage& placed : page.underlays)
    paintUnderlay(painter, placed, job, images, style.deviceFromDrawing);
  paintLinework(painter, page.marks, style);
}

}  // namespace baywright
