// SPDX-License-Identifier: Apache-2.0
#include "window/scan_preview.h"

#include <QPainter>

#include "painting/theme.h"
#include "painting/view_image.h"
#include "units/length_text.h"

namespace baywright {
namespace {

constexpr double kMargin = 12;  // pixels

QColor between(const QColor& low, const QColor& high, double share) {
  const auto mixed = [share](int a, int b) { return qRound(a + share * (b - a)); };
  return {mixed(low.red(), high.red()), mixed(low.green(), high.green()), mixed(low.blue(), high.blue())};
}

void drawPerson(QPainter& painter, const QLineF& feetToTop, const QColor& colour) {
  // A head is an eighth of the height.
  const double head = feetToTop.length() / 8;
  const QPointF neck = feetToTop.pointAt(7.0 / 8);
  const QPointF hip = feetToTop.pointAt(0.5);
  const QPointF shoulder = feetToTop.pointAt(0.8);
  painter.setPen(QPen(colour, std::clamp(head / 3, 1.5, 4.0), Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(neck, hip);
  for (const double side : {-1.0, 1.0}) {
    painter.drawLine(hip, feetToTop.p1() + QPointF(side * head, 0));
    painter.drawLine(shoulder, hip + QPointF(side * 1.4 * head, 0));
  }
  painter.setBrush(colour);
  painter.drawEllipse((feetToTop.p2() + neck) / 2, head / 2, head / 2);
}

}  // namespace

void ScanPreview::showGlance(const ScanGlance& glance) {
  glance_ = glance;
  update();
}

void ScanPreview::paintEvent(QPaintEvent*) {
  const Theme theme = Theme::forPalette(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), theme.background);
  if (glance_.dots.empty()) return;
  Eigen::AlignedBox2d box;
  for (const ScanGlance::Dot& dot : glance_.dots) box.extend(dot.at);
  const QTransform device =
      fitInto({box.min(), box.max()}, QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin));
  for (const ScanGlance::Dot& dot : glance_.dots) {
    QColor colour = between(theme.ink, theme.faint, dot.height);
    colour.setAlphaF(0.55F);
    painter.setPen(QPen(colour, 1.6));
    painter.drawPoint(device.map(QPointF(dot.at.x(), dot.at.y())));
  }
  if (!glance_.person) return;
  const Segment2& person = *glance_.person;
  drawPerson(painter, device.map(QLineF(person.a.x(), person.a.y(), person.b.x(), person.b.y())),
             theme.accent);
}

}  // namespace baywright
