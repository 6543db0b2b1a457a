// SPDX-License-Identifier: Apache-2.0
#include "painting/linework_painter.h"

#include <QPainterPath>
#include <cmath>

namespace baywright {
namespace {

class LineworkPainter {
 public:
  LineworkPainter(QPainter& painter, const PaintStyle& style) : painter_(painter), style_(style) {}

  void draw(const Path& path);
  void draw(const Text& text);
  void draw(const DimensionMark& dimension);
  void draw(const Symbol& symbol);

 private:
  QPointF device(const Vec2& p) const { return style_.deviceFromDrawing.map(QPointF(p.x(), p.y())); }
  double mm(double value) const { return value * style_.unitsPerMm; }
  QColor colour(Layer layer, const std::optional<Verdict>& verdict, Id id) const;
  QPen pen(const QColor& colour, LineWeight weight, LineDash dash) const;
  void arrowhead(QPointF tip, QPointF from);
  void oblique(QPointF at, QPointF along);
  void label(QPointF at, double degrees, const QString& text, const QFont& font, TextAnchor anchor);

  QPainter& painter_;
  const PaintStyle& style_;
};

QColor LineworkPainter::colour(Layer layer, const std::optional<Verdict>& verdict, Id id) const {
  if (id && (id == style_.selected || id == style_.hovered)) return style_.theme.accent;
  return verdict ? style_.theme.verdict(*verdict) : style_.theme.line(layer);
}

QPen LineworkPainter::pen(const QColor& colour, LineWeight weight, LineDash dash) const {
  const double width = mm(weight == LineWeight::Thick ? style_.thickMm : style_.thinMm);
  QPen result(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
  // Qt counts dashes in pen widths; ours are millimetres.
  const auto pattern = [&](std::initializer_list<double> lengthsMm) {
    QList<qreal> inWidths;
    for (const double length : lengthsMm) inWidths.push_back(mm(length) / width);
    result.setDashPattern(inWidths);
  };
  if (dash == LineDash::Dashed) pattern({2.0, 1.0});
  if (dash == LineDash::DashDot) pattern({4.0, 1.0, 0.5, 1.0});
  if (dash == LineDash::Dotted) pattern({0.4, 0.9});
  return result;
}

void LineworkPainter::draw(const Path& path) {
  QPainterPath shape;
  shape.setFillRule(Qt::OddEvenFill);
  for (const std::vector<Vec2>& ring : path.rings) {
    QPolygonF points;
    for (const Vec2& p : ring) points.push_back(device(p));
    shape.addPolygon(points);
    if (path.closed) shape.closeSubpath();
  }
  const LayerStyle& layer = styleOf(path.layer);
  const bool lit = path.id && (path.id == style_.selected || path.id == style_.hovered);
  const QColor ink = colour(path.layer, path.verdict, path.id);
  QBrush brush = Qt::NoBrush;
  if (path.fill == Fill::Soft) {
    QColor soft = path.verdict ? style_.theme.verdict(*path.verdict) : style_.theme.fill(path.layer);
    if (path.verdict) soft.setAlphaF(0.14F);
    brush = soft;
  } else if (path.fill == Fill::Full) {
    brush = path.layer == Layer::Floor ? style_.theme.floor : ink;
  } else if (path.fill == Fill::Poche) {
    brush = lit ? ink : style_.theme.poche;
  }
  LineWeight weight = path.weight.value_or(layer.weight);
  if (path.id && path.id == style_.selected) weight = LineWeight::Thick;
  painter_.setPen(pen(ink, weight, path.dash.value_or(layer.dash)));
  painter_.setBrush(brush);
  painter_.drawPath(shape);
}

void LineworkPainter::label(QPointF at, double degrees, const QString& text, const QFont& font,
                            TextAnchor anchor) {
  painter_.setFont(font);
  const double width = QFontMetricsF(font, painter_.device()).horizontalAdvance(text);
  const double shift = anchor == TextAnchor::Left ? 0 : anchor == TextAnchor::Centre ? -width / 2 : -width;
  painter_.save();
  painter_.translate(at);
  painter_.rotate(degrees);
  painter_.drawText(QPointF(shift, 0), text);
  painter_.restore();
}

void LineworkPainter::draw(const Text& text) {
  painter_.setPen(text.verdict ? style_.theme.verdictText(*text.verdict)
                               : colour(text.layer, std::nullopt, text.id));
  label(device(text.at), -text.angle * 180 / kPi, QString::fromStdString(text.text),
        drawingFont(mm(text.heightMm), text.bold), text.anchor);
}

void LineworkPainter::arrowhead(QPointF tip, QPointF from) {
  const QPointF along = from - tip;
  const double length = std::hypot(along.x(), along.y());
  if (length <= 0) return;
  const QPointF unit = along / length;
  const QPointF across(-unit.y(), unit.x());
  const double size = mm(2.0);
  painter_.drawPolygon(
      QPolygonF{tip, tip + size * unit + 0.3 * size * across, tip + size * unit - 0.3 * size * across});
}

void LineworkPainter::oblique(QPointF at, QPointF along) {
  const QPointF across(-along.y(), along.x());
  const QPointF half = (along + across) * mm(0.9);
  painter_.drawLine(at - half, at + half);
}

void LineworkPainter::draw(const DimensionMark& dimension) {
  const Vec2 span = dimension.to - dimension.from;
  const double length = span.norm();
  if (length <= 0) return;
  const Vec2 shift = dimension.offset * leftOf(span / length);
  const QPointF a = device(dimension.from + shift);
  const QPointF b = device(dimension.to + shift);
  const double deviceLength = std::hypot(b.x() - a.x(), b.y() - a.y());
  if (deviceLength <= 0) return;
  const QPointF along = (b - a) / deviceLength;
  const QColor ink = colour(dimension.layer, dimension.verdict, dimension.id);
  painter_.setPen(pen(ink, LineWeight::Thin, LineDash::Continuous));
  if (dimension.offset != 0) {
    painter_.drawLine(device(dimension.from), a);
    painter_.drawLine(device(dimension.to), b);
  }
  painter_.drawLine(a, b);
  if (dimension.arrows) {
    painter_.setBrush(ink);
    arrowhead(a, b);
    arrowhead(b, a);
  } else {
    painter_.setPen(pen(ink, LineWeight::Thick, LineDash::Continuous));
    oblique(a, along);
    oblique(b, along);
  }

  // Text stands above its line and is read from below or from the right (ISO 129-1).
  double degrees = std::atan2(along.y(), along.x()) * 180 / kPi;
  if (degrees > 90 - 1e-6) degrees -= 180;
  if (degrees <= -90 - 1e-6) degrees += 180;
  const double radians = degrees * kPi / 180;
  const QPointF up(std::sin(radians), -std::cos(radians));
  painter_.setPen(dimension.verdict ? style_.theme.verdictText(*dimension.verdict) : ink);
  label((a + b) / 2 + up * mm(0.8), degrees, QString::fromStdString(dimension.text),
        drawingFont(mm(2.0), dimension.verdict.has_value()), TextAnchor::Centre);
}

void LineworkPainter::draw(const Symbol& symbol) {
  const QColor ink = colour(symbol.layer, symbol.verdict, symbol.id);
  const double half = mm(symbol.sizeMm) / 2;
  painter_.save();
  painter_.translate(device(symbol.at));
  painter_.rotate(-symbol.angle * 180 / kPi);
  painter_.setPen(pen(ink, LineWeight::Thick, LineDash::Continuous));
  painter_.setBrush(Qt::NoBrush);
  switch (symbol.kind) {
    case SymbolKind::StrikePoint:
      painter_.drawEllipse(QPointF(0, 0), half * 0.6, half * 0.6);
      painter_.drawLine(QPointF(-half, 0), QPointF(half, 0));
      painter_.drawLine(QPointF(0, -half), QPointF(0, half));
      break;
    case SymbolKind::Lens:
      painter_.setBrush(ink);
      painter_.drawEllipse(QPointF(0, 0), half * 0.5, half * 0.5);
      break;
    case SymbolKind::Corner:
      painter_.drawRect(QRectF(-half * 0.5, -half * 0.5, half, half));
      break;
    case SymbolKind::Tick:
      painter_.drawPolyline(QPolygonF{{-half, 0}, {-half * 0.3, half * 0.7}, {half, -half * 0.7}});
      break;
    case SymbolKind::Tilde:
      painter_.drawPolyline(QPolygonF{
          {-half, half * 0.2}, {-half * 0.4, -half * 0.3}, {half * 0.4, half * 0.3}, {half, -half * 0.2}});
      break;
    case SymbolKind::Bar:
      painter_.setBrush(ink);
      painter_.drawRect(QRectF(-half, -half * 0.3, 2 * half, half * 0.6));
      break;
    case SymbolKind::Question: {
      const QFont font = drawingFont(half * 1.4, true);
      painter_.setFont(font);
      painter_.drawText(QRectF(-half * 2, -half * 2, half * 4, half * 4), Qt::AlignCenter,
                        QStringLiteral("?"));
      break;
    }
  }
  painter_.restore();
}

}  // namespace

void paintLinework(QPainter& painter, const Linework& linework, const PaintStyle& style) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  LineworkPainter artist(painter, style);
  for (const LayerStyle& row : layerStyles()) {
    const auto drawAll = [&](const auto& marks) {
      for (const auto& mark : marks) {
        if (mark.layer == row.layer) artist.draw(mark);
      }
    };
    drawAll(linework.paths);
    drawAll(linework.symbols);
    drawAll(linework.dimensions);
    drawAll(linework.texts);
  }
  painter.restore();
}

}  // namespace baywright
