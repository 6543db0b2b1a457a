// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_entity.h"

#include <algorithm>
#include <cmath>

#include "exchange/dxf_mline.h"
#include "units/unit_constants.h"

namespace baywright::detail {

namespace {

constexpr std::size_t kLongestWords = 10000;  // bytes; more is no remark on a plan

using MaybeShape = std::optional<DxfShape>;

MaybeShape lineShape(DxfFields fields, const DxfEncoding&) {
  fields.need(10);
  fields.need(11);
  const DxfChain chain{{fields.point(10), fields.point(11)}};
  if (fields.bad() || chain.points[0] == chain.points[1]) return std::nullopt;
  return DxfPath{{chain}, false};
}

MaybeShape lwpolylineShape(DxfFields fields, const DxfEncoding&) {
  std::vector<DxfVertex> vertices;
  const double elevation = fields.number(38);
  for (const DxfTag& tag : fields.record().tags) {
    if (tag.code == 10) vertices.push_back({{fields.numberOf(tag), 0, elevation}, 0});
    if (vertices.empty()) continue;
    if (tag.code == 20) vertices.back().at.y() = fields.numberOf(tag);
    if (tag.code == 42) vertices.back().bulge = fields.numberOf(tag);
  }
  // One width for all of it, or that of its first piece.
  const double width = fields.has(43) ? fields.number(43) : fields.number(40);
  const bool closed = fields.flag(70, 1);
  const DxfMap axes = worldFromObject(fields.extrusion());
  if (fields.bad()) return std::nullopt;
  auto path = polylinePath(vertices, closed, axes);
  if (path) path->width = std::max(0.0, width);
  return path ? MaybeShape(std::move(*path)) : std::nullopt;
}

// Arcs run counter-clockwise from 50 to 51, seen against their extrusion.
MaybeShape roundShape(DxfFields fields, double start, double end) {
  fields.need(10);
  fields.need(40);
  const double radius = fields.number(40);
  DxfConic conic{fields.point(10), {radius, 0, 0}, {0, radius, 0}, start, end};
  const DxfMap axes = worldFromObject(fields.extrusion());
  if (fields.bad() || !(radius > 0)) return std::nullopt;
  return mapped(DxfPath{{conic}, false}, axes);
}

MaybeShape circleShape(DxfFields fields, const DxfEncoding&) {
  return roundShape(fields, 0, 2 * kPi);
}

// The end's angle made larger than the start's by at most one turn; equal angles make a whole one.
double endAfter(double start, double end) {
  const double turns = std::fmod(end - start, 2 * kPi);
  return start + (turns > 1e-12 ? turns : turns + 2 * kPi);
}

MaybeShape arcShape(DxfFields fields, const DxfEncoding&) {
  const double start = fields.number(50) * kRadiansPerDegree;
  const double end = fields.number(51, 360) * kRadiansPerDegree;
  return roundShape(fields, start, endAfter(start, end));
}

MaybeShape ellipseShape(DxfFields fields, const DxfEncoding&) {
  fields.need(10);
  fields.need(11);
  DxfConic conic;
  conic.centre = fields.point(10);
  conic.u = fields.point(11);
  const double ratio = fields.number(40, 1);
  conic.v = fields.extrusion().normalized().cross(conic.u) * ratio;
  conic.start = fields.number(41);
  conic.end = endAfter(conic.start, fields.number(42, 2 * kPi));
  if (fields.bad() || conic.u.isZero() || !(std::abs(ratio) > 0)) return std::nullopt;
  return DxfPath{{conic}, false};
}

// Points of a code whose y and z follow it.
std::vector<Vec3> pointsOf(DxfFields& fields, int code) {
  std::vector<Vec3> points;
  for (const DxfTag& tag : fields.record().tags) {
    if (tag.code == code) points.push_back({fields.numberOf(tag), 0, 0});
    if (points.empty()) continue;
    if (tag.code == code + 10) points.back().y() = fields.numberOf(tag);
    if (tag.code == code + 20) points.back().z() = fields.numberOf(tag);
  }
  return points;
}

// A spline that only says which points it passes: cubic pieces with the tangents of the parabola through each
// point and its neighbours (Catmull and Rom 1974, spaced by chords). No file says which curve the program
// that drew it took, so it may lie a little off.
DxfPath throughPoints(const std::vector<Vec3>& points, bool closed) {
  const std::size_t n = points.size();
  const auto at = [&](std::size_t i, int step) -> const Vec3& {
    if (closed) return points[(i + n + static_cast<std::size_t>(step + 1) - 1) % n];
    const auto last = static_cast<std::ptrdiff_t>(n) - 1;
    return points[static_cast<std::size_t>(
        std::clamp<std::ptrdiff_t>(static_cast<std::ptrdiff_t>(i) + step, 0, last))];
  };
  // Tangent at a point: the slopes of both chords, the shorter chord's the more.
  const auto tangent = [&](std::size_t i) -> Vec3 {
    const Vec3 before = at(i, 0) - at(i, -1), after = at(i, 1) - at(i, 0);
    const double b = before.norm(), a = after.norm();
    if (!(b > 0)) return a > 0 ? Vec3(after / a) : Vec3::Zero();
    if (!(a > 0)) return before / b;
    return (before / b * a + after / a * b) / (a + b);
  };
  DxfChain chain{{points.front()}};
  for (std::size_t i = 0; i + (closed ? 0 : 1) < n; ++i) {
    const std::size_t next = (i + 1) % n;
    const double length = (points[next] - points[i]).norm();
    const Vec3 from = length * tangent(i), to = length * tangent(next);
    for (int k = 1; k <= kChordsPerSpan; ++k) {
      const double t = static_cast<double>(k) / kChordsPerSpan;
      const double far = t * t * (3 - 2 * t);
      chain.points.push_back((1 - far) * points[i] + far * points[next] + t * (1 - t) * (1 - t) * from -
                             t * t * (1 - t) * to);
    }
  }
  return {{std::move(chain)}, closed};
}

MaybeShape splineShape(DxfFields fields, const DxfEncoding&) {
  DxfSpline spline;
  spline.degree = fields.integer(71, 3);
  for (const DxfTag& tag : fields.record().tags) {
    if (tag.code == 40) spline.knots.push_back(fields.numberOf(tag));
    if (tag.code == 41) spline.weights.push_back(fields.numberOf(tag));
  }
  spline.controls = pointsOf(fields, 10);
  const std::vector<Vec3> through = pointsOf(fields, 11);
  if (fields.bad()) return std::nullopt;
  if (spline.controls.empty() && through.size() > 1) return throughPoints(through, fields.flag(70, 1));
  if (splineFault(spline)) return std::nullopt;
  return DxfPath{{spline}, false};
}

DxfPath outline(std::vector<Vec3> corners) {
  return {{DxfChain{std::move(corners)}}, true};
}

// The third and fourth corner of these stand crosswise.
MaybeShape solidShape(DxfFields fields, const DxfEncoding&) {
  fields.need(10);
  fields.need(11);
  fields.need(12);
  const Vec3 third = fields.point(12);
  const Vec3 fourth = fields.has(13) ? fields.point(13) : third;
  const DxfPath path = outline({fields.point(10), fields.point(11), fourth, third});
  const DxfMap axes = worldFromObject(fields.extrusion());
  if (fields.bad()) return std::nullopt;
  return mapped(path, axes);
}

MaybeShape faceShape(DxfFields fields, const DxfEncoding&) {
  fields.need(10);
  fields.need(11);
  fields.need(12);
  const Vec3 third = fields.point(12);
  const Vec3 fourth = fields.has(13) ? fields.point(13) : third;
  const DxfPath path = outline({fields.point(10), fields.point(11), third, fourth});
  if (fields.bad()) return std::nullopt;
  return path;
}

MaybeShape textShape(DxfFields fields, const DxfEncoding& encoding) {
  DxfWords words;
  words.words = plainText(decoded(fields.text(1).substr(0, kLongestWords), encoding));
  const int across = fields.integer(72);
  // "Aligned" and "fit" lie between both points; for other justifications the second one counts.
  const bool between = across == 3 || across == 5;
  const bool justified = across != 0 || fields.integer(73) != 0 || fields.integer(74) != 0;
  words.at =
      worldFromObject(fields.extrusion()) * fields.point(justified && !between && fields.has(11) ? 11 : 10);
  words.height = fields.number(40);
  if (fields.bad()) return std::nullopt;
  return words;
}

MaybeShape mtextShape(DxfFields fields, const DxfEncoding& encoding) {
  std::string raw;
  for (const DxfTag& tag : fields.record().tags)
    if ((tag.code == 1 || tag.code == 3) && raw.size() < kLongestWords) raw += tag.value;
  DxfWords words;
  words.words = plainMtext(decoded(raw, encoding));
  words.at = fields.point(10);
  words.height = fields.number(40);
  if (fields.bad()) return std::nullopt;
  return words;
}

MaybeShape insertShape(DxfFields fields, const DxfEncoding& encoding) {
  fields.need(2);
  DxfPlacing placing;
  placing.block = decoded(trimmed(fields.text(2)), encoding);
  placing.objectAxes = worldFromObject(fields.extrusion());
  placing.at = fields.point(10);
  placing.scale = {fields.number(41, 1), fields.number(42, 1), fields.number(43, 1)};
  placing.rotation = fields.number(50) * kRadiansPerDegree;
  placing.columns = std::max(1, fields.integer(70, 1));
  placing.rows = std::max(1, fields.integer(71, 1));
  placing.columnStep = fields.number(44);
  placing.rowStep = fields.number(45);
  if (fields.bad()) return std::nullopt;
  return placing;
}

MaybeShape mlineShape(DxfFields fields, const DxfEncoding&) {
  DxfPaths paths = mlinePaths(fields);
  return paths.empty() ? std::nullopt : MaybeShape(std::move(paths));
}

using Maker = MaybeShape (*)(DxfFields, const DxfEncoding&);
constexpr Maker kMakers[] = {lineShape,   lwpolylineShape, arcShape,    circleShape, ellipseShape,
                             splineShape, textShape,       mtextShape,  textShape,   solidShape,
                             solidShape,  faceShape,       insertShape, mlineShape};

}  // namespace

std::string_view knownKind(std::string_view kind) {
  const auto found = std::find(std::begin(kDxfKinds), std::end(kDxfKinds), kind);
  return found == std::end(kDxfKinds) ? std::string_view() : *found;
}

std::optional<DxfShape> shapeOf(const DxfRecord& record, const DxfEncoding& encoding) {
  const auto found = std::find(std::begin(kDxfKinds), std::end(kDxfKinds), record.kind);
  const auto index = static_cast<std::size_t>(found - std::begin(kDxfKinds));
  if (index >= std::size(kMakers)) return std::nullopt;
  return kMakers[index](DxfFields(record), encoding);
}

std::optional<DxfPath> polylinePath(std::span<const DxfVertex> vertices, bool closed, const DxfMap& axes) {
  if (vertices.size() < 2) return std::nullopt;
  DxfPath path;
  path.closed = closed;
  const std::size_t pieces = closed ? vertices.size() : vertices.size() - 1;
  DxfChain straight;
  for (std::size_t i = 0; i < pieces; ++i) {
    const Vec3& from = vertices[i].at;
    const Vec3& to = vertices[(i + 1) % vertices.size()].at;
    DxfPiece piece = bulgedPiece(from, to, vertices[i].bulge);
    if (auto* chain = std::get_if<DxfChain>(&piece)) {
      if (straight.points.empty()) straight.points.push_back(chain->points.front());
      straight.points.push_back(chain->points.back());
      continue;
    }
    if (!straight.points.empty()) path.pieces.emplace_back(std::move(straight));
    straight = {};
    path.pieces.push_back(std::move(piece));
  }
  if (!straight.points.empty()) path.pieces.emplace_back(std::move(straight));
  return mapped(path, axes);
}

}  // namespace baywright::detail
