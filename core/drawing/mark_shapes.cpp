// SPDX-License-Identifier: Apache-2.0
#include "drawing/mark_shapes.h"

#include <cmath>

#include "drawing/marks.h"
#include "drawing/text_width.h"

namespace baywright {
namespace {

// Sizes on paper, millimetres; proportions after ISO 129-1 (values from memory).
constexpr double kTextHeight = 2.5;
constexpr double kTextGap = 1.0;
constexpr double kExtensionGap = 1.0;
constexpr double kOvershoot = 1.5;
constexpr double kStroke = 3.0;
constexpr double kArrowLength = 3.0;
constexpr double kArrowHalfWidth = 0.5;
constexpr double kBeyond = 2.0;  // from an end to a text that has no room inside

Vec2 along(double angle) {
  return {std::cos(angle), std::sin(angle)};
}

// One dimension, worked out in drawing units.
struct Frame {
  const DimensionMark& mark;
  double mm;  // drawing units for a millimetre
  Vec2 dir, a, b;
  double length, textWidth;

  Frame(const DimensionMark& dimension, double unitsPerMm) : mark(dimension), mm(unitsPerMm) {
    length = (mark.to - mark.from).norm();
    dir = length > 0 ? Vec2((mark.to - mark.from) / length) : Vec2(1, 0);
    a = mark.from + mark.offset * leftOf(dir);
    b = mark.to + mark.offset * leftOf(dir);
    textWidth = textWidthMm(mark.text, kTextHeight, FontFace::Regular) * mm;
  }

  double needed() const { return textWidth + (mark.arrows ? 2 * kArrowLength : kTextGap) * mm; }
  bool textInside() const { return needed() <= length; }
  bool arrowsInside() const { return length > (2 * kArrowLength + kTextGap) * mm; }

  Path path() const {
    Path result;
    result.layer = mark.layer;
    result.verdict = mark.verdict;
    result.id = mark.id;
    result.weight = LineWeight::Thin;
    result.dash = LineDash::Continuous;
    return result;
  }
};

Path linesOf(const Frame& f) {
  Path lines = f.path();
  Vec2 start = f.a;
  Vec2 end = f.b;
  if (f.mark.arrows && !f.arrowsInside()) {
    start -= 2 * kArrowLength * f.mm * f.dir;
    end += 2 * kArrowLength * f.mm * f.dir;
  }
  if (!f.textInside()) end = f.b + (kBeyond * f.mm + f.textWidth) * f.dir;
  lines.rings.push_back({start, end});

  const double gap = kExtensionGap * f.mm;
  if (std::abs(f.mark.offset) > gap) {
    const Vec2 aside = (f.mark.offset > 0 ? 1 : -1) * leftOf(f.dir);
    lines.rings.push_back({f.mark.from + gap * aside, f.a + kOvershoot * f.mm * aside});
    lines.rings.push_back({f.mark.to + gap * aside, f.b + kOvershoot * f.mm * aside});
  }
  return lines;
}

Path arrowsOf(const Frame& f) {
  Path arrows = f.path();
  arrows.closed = true;
  arrows.fill = Fill::Full;
  const double inward = f.arrowsInside() ? 1 : -1;
  for (const auto& [tip, side] : {std::pair{f.a, 1.0}, std::pair{f.b, -1.0}}) {
    const Vec2 base = tip + inward * side * kArrowLength * f.mm * f.dir;
    const Vec2 half = kArrowHalfWidth * f.mm * leftOf(f.dir);
    arrows.rings.push_back({tip, base + half, base - half});
  }
  return arrows;
}

Path strokesOf(const Frame& f) {
  Path strokes = f.path();
  strokes.weight = LineWeight::Thick;
  const Vec2 half = kStroke / 2 * f.mm * (Eigen::Rotation2Dd(kPi / 4) * f.dir);
  for (const Vec2& end : {f.a, f.b}) strokes.rings.push_back({end - half, end + half});
  return strokes;
}

Text textOf(const Frame& f) {
  Text text;
  text.layer = f.mark.layer;
  text.text = f.mark.text;
  text.heightMm = kTextHeight;
  text.verdict = f.mark.verdict;
  text.id = f.mark.id;
  text.onGround = true;
  const double lineAngle = std::atan2(f.dir.y(), f.dir.x());
  text.angle = detail::readableAngle(lineAngle);
  const Vec2 up = leftOf(along(text.angle));
  if (f.textInside()) {
    text.anchor = TextAnchor::Centre;
    text.at = (f.a + f.b) / 2;
  } else {
    text.anchor = text.angle == lineAngle ? TextAnchor::Left : TextAnchor::Right;
    text.at = f.b + kBeyond * f.mm * f.dir;
  }
  text.at += kTextGap * f.mm * up;
  return text;
}

// Lines of a symbol in a square from (-1, -1) to (1, 1).
struct Glyph {
  std::vector<std::vector<Vec2>> lines;
  std::vector<std::vector<Vec2>> areas;
};

Glyph glyphOf(SymbolKind kind) {
  switch (kind) {
    case SymbolKind::StrikePoint: {
      const auto ring = detail::circleRing({0, 0}, 0.6);
      auto outline = ring;
      outline.push_back(ring.front());
      return {{outline, {{-1, 0}, {1, 0}}, {{0, -1}, {0, 1}}}, {detail::circleRing({0, 0}, 0.2)}};
    }
    case SymbolKind::Lens:
      return {{}, {{{-0.5, 0.7}, {1, 0}, {-0.5, -0.7}}}};
    case SymbolKind::Tick:
      return {{{{-0.8, 0.0}, {-0.2, -0.7}, {0.9, 0.8}}}, {}};
    case SymbolKind::Tilde:
      return {{{{-0.9, -0.25}, {-0.6, 0.2}, {-0.3, 0.25}, {0.3, -0.25}, {0.6, -0.2}, {0.9, 0.25}}}, {}};
    case SymbolKind::Bar:
      return {{}, {{{-0.9, -0.3}, {0.9, -0.3}, {0.9, 0.3}, {-0.9, 0.3}}}};
    case SymbolKind::Question:
      return {{{{-0.5, 0.5}, {-0.3, 0.85}, {0.1, 0.95}, {0.5, 0.7}, {0.5, 0.35}, {0.05, -0.05}, {0.0, -0.4}}},
              {detail::circleRing({0, -0.8}, 0.17)}};
    case SymbolKind::Corner:
      return {{}, {{{-0.6, -0.6}, {0.6, -0.6}, {0.6, 0.6}, {-0.6, 0.6}}}};
  }
  return {};
}

}  // namespace

Linework shapeOf(const DimensionMark& dimension, double unitsPerMm) {
  const Frame frame(dimension, unitsPerMm);
  Linework shape;
  shape.paths = {linesOf(frame), dimension.arrows ? arrowsOf(frame) : strokesOf(frame)};
  if (!dimension.text.empty()) shape.texts = {textOf(frame)};
  return shape;
}

Linework shapeOf(const Symbol& symbol, double unitsPerMm) {
  Glyph glyph = glyphOf(symbol.kind);
  const Eigen::Rotation2Dd turn(symbol.angle);
  const double half = symbol.sizeMm / 2 * unitsPerMm;
  for (auto* rings : {&glyph.lines, &glyph.areas}) {
    for (auto& ring : *rings) {
      for (Vec2& p : ring) p = symbol.at + half * (turn * p);
    }
  }
  Path path;
  path.layer = symbol.layer;
  path.verdict = symbol.verdict;
  path.id = symbol.id;
  path.dash = LineDash::Continuous;

  Linework shape;
  if (!glyph.lines.empty()) {
    path.rings = std::move(glyph.lines);
    path.weight = symbol.verdict ? LineWeight::Thick : LineWeight::Thin;
    shape.paths.push_back(path);
  }
  if (!glyph.areas.empty()) {
    path.rings = std::move(glyph.areas);
    path.weight = LineWeight::Thin;
    path.closed = true;
    path.fill = Fill::Full;
    shape.paths.push_back(path);
  }
  return shape;
}

Linework exploded(const Linework& linework, double unitsPerMm) {
  Linework result;
  result.paths = linework.paths;
  result.texts = linework.texts;
  for (const DimensionMark& mark : linework.dimensions) result.append(shapeOf(mark, unitsPerMm));
  for (const Symbol& symbol : linework.symbols) result.append(shapeOf(symbol, unitsPerMm));
  return result;
}

}  // namespace baywright
