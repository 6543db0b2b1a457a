// SPDX-License-Identifier: Apache-2.0
#include "panels/margin_bar.h"

#include <algorithm>

namespace baywright {
namespace {

double spanOf(MarginUnit unit) {
  switch (unit) {
    case MarginUnit::Length:
      return 0.5;
    case MarginUnit::Speed:
      return 5;
    case MarginUnit::Ratio:
      return 25;
    default:
      return 0.25;
  }
}

}  // namespace

void paintMarginBar(QPainter& painter, const QRectF& box, const Finding& finding, const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const double middle = box.center().x();
  const double half = box.width() / 2;
  QColor track = theme.faint;
  track.setAlphaF(0.25F);
  painter.fillRect(box, track);
  if (finding.margin) {
    const double span = spanOf(finding.unit);
    const auto at = [&](double value) { return middle + std::clamp(value / span, -1.0, 1.0) * half; };
    const double end = at(finding.margin->value);
    painter.fillRect(
        QRectF(QPointF(std::min(middle, end), box.top()), QPointF(std::max(middle, end), box.bottom())),
        theme.verdict(finding.verdict));
    const double reach = finding.margin->halfWidth95();
    painter.setPen(QPen(theme.ink, 1.2));
    const double y = box.center().y();
    painter.drawLine(QPointF(at(finding.margin->value - reach), y),
                     QPointF(at(finding.margin->value + reach), y));
  }
  painter.setPen(QPen(theme.ink, 1.5));
  painter.drawLine(QPointF(middle, box.top() - 2), QPointF(middle, box.bottom() + 2));
  painter.restore();
}

}  // namespace baywright
