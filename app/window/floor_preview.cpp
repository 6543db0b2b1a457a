// SPDX-License-Identifier: Apache-2.0
#include "window/floor_preview.h"

#include <QPainter>

#include "drawing/fixture_outline.h"
#include "job/room_geometry.h"
#include "painting/theme.h"
#include "painting/view_image.h"
#include "units/length_text.h"

namespace baywright {
namespace {

constexpr double kMargin = 30;  // pixels, for the lengths beside the walls

QPolygonF polygonOf(const Ring& ring, const QTransform& device) {
  QPolygonF polygon;
  for (const Vec2& corner : ring) polygon << device.map(QPointF(corner.x(), corner.y()));
  return polygon;
}

QLineF lineOf(const Segment2& segment, const QTransform& device) {
  return device.map(QLineF(segment.a.x(), segment.a.y(), segment.b.x(), segment.b.y()));
}

/// Beside the wall, inside the room; nothing where the wall is too short for it.
void drawLength(QPainter& painter, const WallLine& wall, const QTransform& device, const UnitSystem& units) {
  const QString text = QString::fromStdString(wall.name + "  " + formatLength(wall.length, units));
  const QRectF box = painter.fontMetrics().boundingRect(text);
  const QLineF line = lineOf(wall.segment(), device);
  if (line.length() < box.width() + 8) return;
  painter.save();
  painter.translate(line.center());
  const double angle = -line.angle();
  const bool isUpsideDown = line.angle() > 90 && line.angle() <= 270;
  painter.rotate(isUpsideDown ? angle + 180 : angle);
  const double beside = isUpsideDown ? painter.fontMetrics().ascent() + 4.0 : -6.0;
  painter.drawText(QPointF(-box.width() / 2, beside), text);
  painter.restore();
}

}  // namespace

FloorPreview::FloorPreview(const UnitSystem& units, QWidget* parent) : QWidget(parent), units_(units) {
  setMinimumSize(260, 240);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void FloorPreview::showRoom(const Room& room) {
  room_ = room;
  update();
}

void FloorPreview::paintEvent(QPaintEvent*) {
  const Theme theme = Theme::forPalette(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), theme.background);
  const auto box = planBox(room_);
  if (!box) return;
  const QTransform device =
      fitInto({box->low, box->high}, QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin));
  painter.setPen(QPen(theme.ink, 3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
  painter.setBrush(theme.floor);
  painter.drawPolygon(polygonOf(outline(room_), device));
  painter.setPen(QPen(theme.ink, 1));
  painter.setBrush(theme.faint);
  for (const Fixture& fixture : room_.fixtures)
    painter.drawPolygon(polygonOf(outlineOf(fixture.shape), device));
  painter.setPen(QPen(theme.accent, 5, Qt::SolidLine, Qt::FlatCap));
  for (const Opening& opening : room_.openings)
    if (const auto place = openingPlace(room_, opening.id))
      painter.drawLine(lineOf(place->segment(), device));
  painter.setPen(theme.ink);
  for (const WallLine& wall : wallLines(room_)) drawLength(painter, wall, device, units_);
}

}  // namespace baywright
