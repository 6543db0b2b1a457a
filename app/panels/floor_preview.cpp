// SPDX-License-Identifier: Apache-2.0
#include "panels/floor_preview.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <vector>

#include "drawing/fixture_outline.h"
#include "job/room_geometry.h"
#include "painting/theme.h"
#include "painting/view_image.h"
#include "units/length_text.h"

namespace baywright {
namespace {

constexpr double kMargin = 16;  // pixels
constexpr double kBeside = 8;   // likewise, from a corner to its height

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
  // Along walls that are nearly upright all read from the right, as on the sheets.
  constexpr double kUpright = 2;  // degrees
  const bool isUpsideDown = line.angle() > 90 + kUpright && line.angle() <= 270 + kUpright;
  painter.rotate(isUpsideDown ? angle + 180 : angle);
  const double beside = isUpsideDown ? painter.fontMetrics().ascent() + 4.0 : -6.0;
  painter.drawText(QPointF(-box.width() / 2, beside), text);
  painter.restore();
}

bool isLevel(const std::vector<CeilingPart>& ceiling) {
  return ceiling.size() == 1 && ceiling.front().slope == Vec2::Zero();
}

/// How high the ceiling is at a corner, a little inside it: at the corner itself parts may only touch.
QString heightText(const Room& room, const Vec2& corner, const Vec2& middle, const UnitSystem& units) {
  constexpr double kInside = 1e-4;  // of the way to the middle
  const auto height = ceilingHeightAt(room, corner + kInside * (middle - corner));
  return height ? QStringLiteral("h ") + QString::fromStdString(formatLength(*height, units)) : QString();
}

/// The edges of lower parts, and the heights at the corners: outside them, where no lengths stand.
void drawCeiling(QPainter& painter, const Room& room, const QTransform& device, const UnitSystem& units,
                 const QColor& colour) {
  painter.setPen(QPen(colour, 1, Qt::DashLine));
  painter.setBrush(Qt::NoBrush);
  for (const CeilingPart& part : room.ceiling) painter.drawPolygon(polygonOf(part.region, device));
  painter.setPen(colour);
  const Ring floor = outline(room);
  const Vec2 middle = centroid({floor, {}});
  std::vector<QRectF> taken;
  for (const Vec2& corner : floor) {
    const QString text = heightText(room, corner, middle, units);
    const QPointF at = device.map(QPointF(corner.x(), corner.y()));
    const QPointF away = at - device.map(QPointF(middle.x(), middle.y()));
    QRectF box = painter.fontMetrics().boundingRect(text);
    box.moveCenter(at + QPointF(std::copysign(box.width() / 2 + kBeside, away.x()),
                                std::copysign(box.height() / 2 - 2, away.y())));
    const bool isTaken =
        std::any_of(taken.begin(), taken.end(), [&](const QRectF& other) { return other.intersects(box); });
    if (isTaken) continue;
    taken.push_back(box);
    painter.drawText(box, Qt::AlignCenter | Qt::TextDontClip, text);
  }
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

void FloorPreview::showUnits(const UnitSystem& units) {
  units_ = units;
  update();
}

void FloorPreview::paintEvent(QPaintEvent*) {
  const Theme theme = Theme::forPalette(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), theme.background);
  const auto box = planBox(room_);
  if (!box) return;
  const bool hasHeights = !isLevel(room_.ceiling);
  const double beside =
      hasHeights ? kBeside + painter.fontMetrics().horizontalAdvance(
                                 heightText(room_, box->low, box->centre(), units_) + QStringLiteral("00"))
                 : kMargin;
  const QTransform device =
      fitInto({box->low, box->high}, QRectF(rect()).adjusted(beside, kMargin, -beside, -kMargin));
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
  if (hasHeights) drawCeiling(painter, room_, device, units_, theme.accent);
  painter.setPen(theme.ink);
  for (const WallLine& wall : wallLines(room_)) drawLength(painter, wall, device, units_);
}

}  // namespace baywright
