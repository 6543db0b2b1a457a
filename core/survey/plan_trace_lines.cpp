// SPDX-License-Identifier: Apache-2.0
#include "survey/plan_trace_lines.h"

#include <algorithm>
#include <optional>

#include "geometry/homography.h"

namespace baywright {
namespace {

bool isBorder(const Segment2& line, const GrayImage& image) {
  const auto along = [](double a, double b, double size) {
    return (a < kMargin && b < kMargin) || (a > size - kMargin && b > size - kMargin);
  };
  return along(line.a.x(), line.b.x(), image.width) || along(line.a.y(), line.b.y(), image.height);
}

}  // namespace

Result<PictureTraces> picturedTraces(const GrayImage& image, double shrunk, const Progress& progress) {
  const auto lines = detectLines(image, {}, progress);
  if (!lines) return tl::unexpected(lines.error());
  PictureTraces traces;
  for (const DetectedLine& line : *lines) {
    if (isBorder(line.segment, image)) continue;
    const Vec2 beyond = kOverTheEnd * (line.segment.b - line.segment.a).normalized();
    traces.lines.push_back({shrunk * (line.segment.a - beyond), shrunk * (line.segment.b + beyond)});
    traces.ends.push_back(shrunk * line.segment.a);
    traces.ends.push_back(shrunk * line.segment.b);
  }
  return traces;
}

PictureTraces tracesOnPlan(const PlanScan& scan, const PictureTraces& traces) {
  const Homography map{scan.worldFromPixel};
  // A picture's y runs down and the plan's up: beyond the horizon of a photograph that is the other way
  // round.
  const double turned = scan.worldFromPixel.determinant();
  const auto onPlan = [&](const Vec2& pixel) -> std::optional<Vec2> {
    const double w = scan.worldFromPixel.row(2).dot(Vec3(pixel.x(), pixel.y(), 1));
    if (!(turned * w < 0)) return std::nullopt;
    const auto at = mapped(map, pixel);
    return at ? std::optional(*at) : std::nullopt;
  };
  PictureTraces seen;
  for (const Segment2& line : traces.lines) {
    const auto a = onPlan(line.a), b = onPlan(line.b);
    if (a && b && (*b - *a).norm() > 0) seen.lines.push_back({*a, *b});
  }
  for (const Vec2& end : traces.ends)
    if (const auto at = onPlan(end)) seen.ends.push_back(*at);
  return seen;
}

}  // namespace baywright
