// SPDX-License-Identifier: Apache-2.0
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "canvas/overlay.h"
#include "canvas/tool_words.h"
#include "canvas/view.h"
#include "drawing/round_length.h"
#include "painting/linework_painter.h"
#include "survey/plan_scan_fit.h"
#include "units/length_text.h"

namespace baywright {
namespace {

constexpr double kFinestGrid = 12;   // pixels between two lines
constexpr double kShortestBar = 70;  // pixels
constexpr double kBarInset = 12;     // from the view's corner
constexpr int kBarParts = 2;

QTransform transformFrom(const Mat3& map) {
  // Qt multiplies rows from the left: its matrix is ours turned over.
  return {map(0, 0), map(1, 0), map(2, 0), map(0, 1), map(1, 1), map(2, 1), map(0, 2), map(1, 2), map(2, 2)};
}

}  // namespace

bool View::coversFloor() const {
  const auto& scans = document_.job().planScans;
  return scans_.pictures().empty() &&
         (kind() != ViewKind::Plan ||
          std::none_of(scans.begin(), scans.end(), [](const PlanScan& scan) { return scan.visible; }));
}

void View::paintGrid(QPainter& painter) {
  const double step = roundLength(document_.job().units, kFinestGrid * map_.metresPerPixel());
  const double strong = roundLength(document_.job().units, 4 * step);
  const Eigen::AlignedBox2d shown = map_.shown();
  QColor faint = Theme::forPalette(palette()).faint;
  const auto lines = [&](double spacing, float strength) {
    faint.setAlphaF(strength);
    painter.setPen(QPen(faint, 1));
    for (double x = std::ceil(shown.min().x() / spacing) * spacing; x <= shown.max().x(); x += spacing) {
      const double pixel = std::round(map_.pixelFrom({x, 0}).x()) + 0.5;
      painter.drawLine(QPointF(pixel, 0), QPointF(pixel, height()));
    }
    for (double y = std::ceil(shown.min().y() / spacing) * spacing; y <= shown.max().y(); y += spacing) {
      const double pixel = std::round(map_.pixelFrom({0, y}).y()) + 0.5;
      painter.drawLine(QPointF(0, pixel), QPointF(width(), pixel));
    }
  };
  painter.setRenderHint(QPainter::Antialiasing, false);
  lines(step, 0.10F);
  lines(strong, 0.14F);
}

void View::paintPlans(QPainter& painter) {
  for (const PlanScan& scan : document_.job().planScans) {
    const auto pixels = pixelsOf(scan);
    if (!scan.visible || !pixels) continue;
    tracesOf(scan);  // looked for from now on, so that they are there when somebody traces
    const QTransform deviceFromPixel = transformFrom(scan.worldFromPixel) * map_.deviceFromDrawing();
    QPolygonF usable;
    for (const Vec2& p : usablePixels(scan, *pixels)) usable.push_back({p.x(), p.y()});
    if (usable.size() < 3) continue;
    const QRectF onScreen = deviceFromPixel.map(usable).boundingRect();
    const double across = std::max(onScreen.width(), onScreen.height()) * devicePixelRatioF();
    const QImage* copy = pictures_.copyFor(scan, across);
    if (!copy) continue;
    QPainterPath outline;
    outline.addPolygon(deviceFromPixel.map(usable));
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setOpacity(scan.opacity);
    painter.setClipPath(outline);
    painter.setTransform(deviceFromPixel, true);
    painter.drawImage(QRectF(0, 0, pixels->x(), pixels->y()), *copy);
    painter.restore();
  }
}

void View::paintScans(QPainter& painter) {
  constexpr double kStrength = 0.55;  // the drawing's own lines stay the darkest
  painter.save();
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.setOpacity(kStrength);
  const std::vector<QImage>& images = scans_.images(Theme::forPalette(palette()).ink);
  for (std::size_t i = 0; i < images.size(); ++i) {
    const ScanPicture& picture = scans_.pictures()[i];
    const QPointF corner = map_.pixelFrom(picture.upperLeft);
    const double scale = picture.pixel / map_.metresPerPixel();
    painter.drawImage(QRectF(corner, QSizeF(scale * picture.width, scale * picture.height)),
                      images[i]);
  }
  painter.restore();
}

void View::paintMissingPlans(QPainter& painter) {
  QStringList lines;
  for (const PlanScan& scan : document_.job().planScans) {
    if (!scan.visible || pixelsOf(scan)) continue;
    const QString name = QString::fromStdString(scan.name);
    const auto problem = pictures_.problemOf(scan);
    lines.push_back(problem ? name + QStringLiteral(": ") + sentenceOf(*problem)
                            : toolWords("%1 is being read …").arg(name));
  }
  painter.setPen(Theme::forPalette(palette()).ink);
  const QRectF room = QRectF(rect()).adjusted(kBarInset, kBarInset, -kBarInset, -kBarInset);
  painter.drawText(room, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, lines.join(QLatin1Char('\n')));
}

void View::paintGround() {
  ground_ = QPixmap(size() * devicePixelRatioF());
  ground_.setDevicePixelRatio(devicePixelRatioF());
  ground_.fill(Theme::forPalette(palette()).background);
  QPainter painter(&ground_);
  paintGrid(painter);
  paintScans(painter);
  if (kind() != ViewKind::Plan) return;
  paintPlans(painter);
  paintMissingPlans(painter);
}

void View::paintDrawing() {
  if (ground_.isNull()) paintGround();
  drawing_ = ground_;
  QPainter painter(&drawing_);
  PaintStyle style;
  style.deviceFromDrawing = map_.deviceFromDrawing();
  style.unitsPerMm = reach().unitsPerMm / map_.metresPerPixel();
  style.theme = Theme::forPalette(palette());
  style.selected = document_.selection().selected();
  style.hovered = document_.selection().hovered();
  if (coversFloor()) {
    paintLinework(painter, linework(), style);
    return;
  }
  // The floor's colour would hide the plan that lies under it.
  Linework bare = linework();
  std::erase_if(bare.paths, [](const Path& path) { return path.layer == Layer::Floor; });
  paintLinework(painter, bare, style);
}

void View::paintScaleBar(QPainter& painter) {
  const Theme theme = Theme::forPalette(palette());
  const double length = roundLength(document_.job().units, kShortestBar * map_.metresPerPixel());
  const double pixels = length / map_.metresPerPixel();
  const QString text = QString::fromStdString(formatLength(length, document_.job().units));
  const QFontMetricsF metrics(painter.font());
  const QPointF left(kBarInset, height() - kBarInset);
  QColor ground = theme.background;
  ground.setAlphaF(0.85F);
  painter.fillRect(QRectF(left.x() - 5, left.y() - metrics.height() - 9,
                          std::max(pixels, metrics.horizontalAdvance(text)) + 10, metrics.height() + 14),
                   ground);
  painter.setPen(QPen(theme.ink, 1));
  for (int part = 0; part < kBarParts; ++part) {
    const QRectF box(left.x() + part * pixels / kBarParts, left.y() - 4, pixels / kBarParts, 4);
    painter.setBrush(part % 2 == 0 ? QBrush(theme.ink) : QBrush(theme.background));
    painter.drawRect(box);
  }
  painter.drawText(QPointF(left.x(), left.y() - 8), text);
}

void View::paintOverlay(QPainter& painter) {
  const Theme theme = Theme::forPalette(palette());
  Overlay overlay(painter, map_, theme, document_.job().units);
  tool_->paint(overlay, *this);
  const bool typing = !entry_->isHidden();
  if (!tool_->isBusy() && !typing) return;
  const auto fields = tool_->fields(*this);
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (!typing || i != entryField_) overlay.dimension(fields[i]);
  }
}

void View::paintEvent(QPaintEvent*) {
  const QSize wanted = size() * devicePixelRatioF();
  if (ground_.size() != wanted) ground_ = {};
  if (ground_.isNull() || drawing_.isNull()) paintDrawing();
  QPainter painter(this);
  painter.drawPixmap(0, 0, drawing_);
  paintScaleBar(painter);
  paintOverlay(painter);
  if (!hasFocus()) return;
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setPen(QPen(Theme::forPalette(palette()).accent, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

}  // namespace baywright
