// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPainter>
#include <QString>
#include <span>
#include <vector>

#include "canvas/screen_map.h"
#include "canvas/tool.h"
#include "clearance/finding.h"
#include "drawing/snap.h"
#include "painting/theme.h"
#include "units/unit_system.h"

namespace baywright {

/// Draws what tools show over a drawing: handles, guides, live dimensions, notes. Points are metres of the
/// drawing; widths and sizes are of the screen.
class Overlay {
 public:
  Overlay(QPainter& painter, const ScreenMap& map, const Theme& theme, const UnitSystem& units);

  enum class Stroke { Guide, Draft, Strong };
  void line(const Vec2& a, const Vec2& b, Stroke stroke);
  void polyline(const std::vector<Vec2>& points, Stroke stroke);
  /// Closed, with a soft fill.
  void area(const std::vector<Vec2>& ring);
  void circle(const Vec2& centre, double radius, Stroke stroke);

  enum class Handle { Square, Round };
  void handle(const Vec2& at, Handle shape);
  void cross(const Vec2& at);

  /// What something snapped to: its line and its word at the pointer.
  void marks(std::span<const SnapMark> marks, const Vec2& pointer);
  /// A dimension with its figure in a box that can be typed into.
  void dimension(const TypedField& field);
  /// A line of text below and to the right of a point, on its own ground.
  void note(const Vec2& at, const QString& text);
  /// The same in a verdict's colour with its symbol, one line farther down.
  void finding(const Vec2& at, const Finding& finding);

  QPainter& painter() { return painter_; }
  const ScreenMap& map() const { return map_; }
  const Theme& theme() const { return theme_; }

 private:
  QPen pen(Stroke stroke) const;
  QRectF box(QPointF at, const QString& text, Qt::Alignment alignment) const;
  void label(const QRectF& box, const QString& text, const QColor& ink);
  double em() const;

  QPainter& painter_;
  const ScreenMap& map_;
  const Theme& theme_;
  const UnitSystem& units_;
};

/// The figure of a field as the job writes it.
QString fieldText(const TypedField& field, const UnitSystem& units);

}  // namespace baywright
