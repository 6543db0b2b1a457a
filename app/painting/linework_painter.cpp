// SPDX-License-Identifier: Apache-2.0
#include "painting/linework_painter.h"

#include <QPainterPath>
#include <cmath>

#include "drawing/mark_shapes.h"

namespace baywright {
namespace {

constexpr float kSoftVerdict = 0.14F;  // of an area in a verdict's colour; its hatch says the rest
constexpr float kGround = 0.85F;       // of the patch under a text: what it covers still shows through
constexpr double kGroundMargin_mm = 0.4;

class LineworkPainter {
 public:
  LineworkPainter(QPainter& painter, const PaintStyle& style) : painter_(painter), style_(style) {}

  void draw(const Path& path);
  void draw(const Text& text);

 private:
  QPointF device(const Vec2& p) const { return style_.deviceFromDrawing.map(QPointF(p.x(), p.y())); }
  double mm(double value) const { return value * style_.unitsPerMm; }
  bool isLit(Id id) const { return id && (id == style_.selected || id == style_.hovered); }
  QColor ink(const Path& path) const;
  QBrush brush(const Path& path) const;
  QPen pen(const Path& path) const;
  QPainterPath outline(const Path& path) const;

  QPainter& painter_;
  const PaintStyle& style_;
};

QColor LineworkPainter::ink(const Path& path) const {
  if (path.verdict) return style_.theme.verdict(*path.verdict);
  return isLit(path.id) ? style_.theme.accent : style_.theme.line(path.layer);
}

QBrush LineworkPainter::brush(const Path& path) const {
  switch (path.fill) {
    case Fill::None:
      return Qt::NoBrush;
    case Fill::Full:
      return ink(path);
    case Fill::Poche:
      return isLit(path.id) ? style_.theme.accent : style_.theme.poche;
    case Fill::Soft:
      break;
  }
  if (!path.verdict) return style_.theme.fill(path.layer);
  QColor soft = style_.theme.verdict(*path.verdict);
  soft.setAlphaF(kSoftVerdict);
  return soft;
}

QPen LineworkPainter::pen(const Path& path) const {
  if (!path.stroked) return Qt::NoPen;
  const LayerStyle& layer = styleOf(path.layer);
  LineWeight weight = path.weight.value_or(layer.weight);
  // Hatches are open paths: thick they would hide what they lie on.
  if (path.closed && path.id && path.id == style_.selected) weight = LineWeight::Thick;
  const double width = mm(lineWidthMm(weight));
  QPen result(ink(path), width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
  // Qt counts dashes in pen widths; ours are millimetres.
  const auto pattern = [&](std::initializer_list<double> lengthsMm) {
    QList<qreal> inWidths;
    for (const double length : lengthsMm) inWidths.push_back(mm(length) / width);
    result.setDashPattern(inWidths);
  };
  switch (path.dash.value_or(layer.dash)) {
    case LineDash::Continuous:
      break;
    case LineDash::Dashed:
      pattern({2.0, 1.0});
      break;
    case LineDash::DashDot:
      pattern({4.0, 1.0, 0.5, 1.0});
      break;
    case LineDash::Dotted:
      pattern({0.4, 0.9});
      break;
  }
  return result;
}

QPainterPath LineworkPainter::outline(const Path& path) const {
  QPainterPath shape;
  shape.setFillRule(Qt::OddEvenFill);
  for (const std::vector<Vec2>& ring : path.rings) {
    QPolygonF points;
    for (const Vec2& p : ring) points.push_back(device(p));
    shape.addPolygon(points);
    if (path.closed) shape.closeSubpath();
  }
  return shape;
}

void LineworkPainter::draw(const Path& path) {
  painter_.setPen(pen(path));
  painter_.setBrush(brush(path));
  painter_.drawPath(outline(path));
}

void LineworkPainter::draw(const Text& text) {
  const QFont font = drawingFont(mm(text.heightMm), text.bold);
  const QString words = QString::fromStdString(text.text);
  const double width = QFontMetricsF(font, painter_.device()).horizontalAdvance(words);
  const double start = text.anchor == TextAnchor::Left     ? 0
                       : text.anchor == TextAnchor::Centre ? -width / 2
                                                           : -width;
  painter_.save();
  painter_.translate(device(text.at));
  painter_.rotate(-text.angle * 180 / kPi);
  if (text.onGround) {
    QColor ground = style_.theme.background;
    ground.setAlphaF(kGround);
    const double margin = mm(kGroundMargin_mm);
    const double height = mm(text.heightMm);
    painter_.fillRect(QRectF(start - margin, -height - margin, width + 2 * margin, height * 4 / 3 + margin),
                      ground);
  }
  painter_.setFont(font);
  if (text.verdict)
    painter_.setPen(style_.theme.verdictText(*text.verdict));
  else
    painter_.setPen(isLit(text.id) ? style_.theme.accent : style_.theme.line(text.layer));
  painter_.drawText(QPointF(start, 0), words);
  painter_.restore();
}

}  // namespace

void paintLinework(QPainter& painter, const Linework& linework, const PaintStyle& style) {
  const double devicePerDrawing = std::hypot(style.deviceFromDrawing.m11(), style.deviceFromDrawing.m12());
  if (!(devicePerDrawing > 0)) return;
  const Linework marks = exploded(linework, style.unitsPerMm / devicePerDrawing);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  LineworkPainter artist(painter, style);
  for (const LayerStyle& row : layerStyles()) {
    for (const Path& path : marks.paths) {
      if (path.layer == row.layer) artist.draw(path);
    }
    for (const Text& text : marks.texts) {
      if (text.layer == row.layer) artist.draw(text);
    }
  }
  painter.restore();
}

}  // namespace baywright
