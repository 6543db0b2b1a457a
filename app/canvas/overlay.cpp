// SPDX-License-Identifier: Apache-2.0
#include "canvas/overlay.h"

#include <QFontMetricsF>
#include <QPolygonF>
#include <cmath>

#include "drawing/verdict_look.h"
#include "units/angle_text.h"
#include "units/length_text.h"

namespace baywright {
namespace {

constexpr double kHandle = 5;       // half a handle's side, pixels
constexpr double kNoteOffset = 14;  // from the pointer, pixels: clear of the arrow
constexpr double kPadding = 4;

}  // namespace

QString fieldText(const TypedField& field, const UnitSystem& units) {
  if (!std::isfinite(field.value)) return QStringLiteral("?");
  return QString::fromStdString(field.kind == FieldKind::Angle ? formatAngle(field.value, units)
                                                               : formatLength(field.value, units));
}

Overlay::Overlay(QPainter& painter, const ScreenMap& map, const Theme& theme, const UnitSystem& units)
    : painter_(painter), map_(map), theme_(theme), units_(units) {
  painter_.setRenderHint(QPainter::Antialiasing);
}

QPen Overlay::pen(Stroke stroke) const {
  QPen pen(theme_.accent, 1.5);
  pen.setCapStyle(Qt::FlatCap);
  if (stroke == Stroke::Guide) {
    pen.setWidthF(1);
    pen.setStyle(Qt::DashLine);
  }
  if (stroke == Stroke::Strong) pen.setWidthF(3);
  return pen;
}

void Overlay::line(const Vec2& a, const Vec2& b, Stroke stroke) {
  painter_.setPen(pen(stroke));
  painter_.drawLine(map_.pixelFrom(a), map_.pixelFrom(b));
}

void Overlay::polyline(const std::vector<Vec2>& points, Stroke stroke) {
  QPolygonF pixels;
  for (const Vec2& p : points) pixels.push_back(map_.pixelFrom(p));
  painter_.setPen(pen(stroke));
  painter_.setBrush(Qt::NoBrush);
  painter_.drawPolyline(pixels);
}

void Overlay::area(const std::vector<Vec2>& ring) {
  QPolygonF pixels;
  for (const Vec2& p : ring) pixels.push_back(map_.pixelFrom(p));
  QColor soft = theme_.accent;
  soft.setAlphaF(0.12F);
  painter_.setPen(pen(Stroke::Draft));
  painter_.setBrush(soft);
  painter_.drawPolygon(pixels);
}

void Overlay::circle(const Vec2& centre, double radius, Stroke stroke) {
  painter_.setPen(pen(stroke));
  painter_.setBrush(Qt::NoBrush);
  const double pixels = radius / map_.metresPerPixel();
  painter_.drawEllipse(map_.pixelFrom(centre), pixels, pixels);
}

void Overlay::handle(const Vec2& at, Handle shape) {
  const QPointF centre = map_.pixelFrom(at);
  painter_.setPen(QPen(theme_.accent, 1.5));
  painter_.setBrush(theme_.background);
  if (shape == Handle::Round)
    painter_.drawEllipse(centre, kHandle + 1, kHandle + 1);
  else
    painter_.drawRect(QRectF(centre - QPointF(kHandle, kHandle), QSizeF(2 * kHandle, 2 * kHandle)));
}

void Overlay::cross(const Vec2& at) {
  const QPointF centre = map_.pixelFrom(at);
  const double arm = 2 * kHandle;
  painter_.setPen(QPen(theme_.accent, 1.5));
  painter_.drawLine(centre - QPointF(arm, 0), centre + QPointF(arm, 0));
  painter_.drawLine(centre - QPointF(0, arm), centre + QPointF(0, arm));
}

double Overlay::em() const {
  return QFontMetricsF(painter_.font()).height();
}

QRectF Overlay::box(QPointF at, const QString& text, Qt::Alignment alignment) const {
  const QFontMetricsF metrics(painter_.font());
  const QSizeF size(metrics.horizontalAdvance(text) + 2 * kPadding, metrics.height() + kPadding);
  QRectF box(at, size);
  if (alignment & Qt::AlignHCenter) box.moveLeft(at.x() - size.width() / 2);
  if (alignment & Qt::AlignVCenter) box.moveTop(at.y() - size.height() / 2);
  // A note must not leave the view.
  const QSizeF view = map_.size();
  box.moveLeft(std::max(0.0, std::min(box.left(), view.width() - size.width())));
  box.moveTop(std::max(0.0, std::min(box.top(), view.height() - size.height())));
  return box;
}

void Overlay::label(const QRectF& box, const QString& text, const QColor& ink) {
  QColor ground = theme_.background;
  ground.setAlphaF(0.92F);
  painter_.setPen(QPen(ink, 1));
  painter_.setBrush(ground);
  painter_.drawRoundedRect(box, 3, 3);
  painter_.drawText(box, Qt::AlignCenter, text);
}

void Overlay::marks(std::span<const SnapMark> marks, const Vec2& pointer) {
  QStringList words;
  for (const SnapMark& mark : marks) {
    if (mark.line.a == mark.line.b)
      cross(mark.line.a);
    else
      line(mark.line.a, mark.line.b, Stroke::Guide);
    const QString what = QString::fromStdString(mark.what);
    if (!words.contains(what)) words.push_back(what);
  }
  if (!words.empty()) note(pointer, words.join(QStringLiteral(", ")));
}

void Overlay::dimension(const TypedField& field) {
  const QPointF a = map_.pixelFrom(field.from);
  const QPointF b = map_.pixelFrom(field.to);
  painter_.setPen(QPen(theme_.accent, 1));
  const QPointF way = b - a;
  const double length = std::hypot(way.x(), way.y());
  if (length > 1 && field.kind != FieldKind::Angle) {
    painter_.drawLine(a, b);
    const QPointF across = QPointF(-way.y(), way.x()) / length * kHandle;
    painter_.drawLine(a - across, a + across);
    painter_.drawLine(b - across, b + across);
  }
  const QString text = fieldText(field, units_);
  label(box((a + b) / 2, text, Qt::AlignCenter), text, theme_.accent);
}

void Overlay::note(const Vec2& at, const QString& text) {
  const QPointF corner = map_.pixelFrom(at) + QPointF(kNoteOffset, kNoteOffset);
  label(box(corner, text, {}), text, theme_.accent);
}

void Overlay::finding(const Vec2& at, const Finding& finding) {
  const QString text = verdictSymbol(finding.verdict) + QLatin1Char(' ') + verdictWord(finding.verdict) +
                       QStringLiteral(": ") + QString::fromStdString(finding.subject) + QStringLiteral(", ") +
                       QString::fromStdString(marginText(finding, units_));
  const QPointF corner = map_.pixelFrom(at) + QPointF(kNoteOffset, kNoteOffset + 1.6 * em());
  label(box(corner, text, {}), text, theme_.verdictText(finding.verdict));
}

}  // namespace baywright
