// SPDX-License-Identifier: Apache-2.0
#include "survey/line_detect.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "survey/line_regions.h"

namespace baywright {

namespace {

using detail::EdgeLine;

Result<void> check(const GrayImage& image) {
  if (image.width < 1 || image.height < 1) return fail("The picture has no pixels.");
  const std::size_t count = static_cast<std::size_t>(image.width) * static_cast<std::size_t>(image.height);
  if (count != image.pixels.size()) return fail("The picture's size does not fit its pixels.");
  if (count > kMostDetectPixels)
    return fail("The picture has " + std::to_string(count / 1'000'000) +
                    " million pixels; lines are looked for in at most " +
                    std::to_string(kMostDetectPixels / 1'000'000) + " million.",
                {}, "Scale it down.");
  return {};
}

/// Both edges of a pen line, as seen along the first.
struct Stroke {
  std::size_t other = 0;
  double width = 0;
  double low = 0, high = 0;  // where both run side by side, from the first's start
};

// Ink is dark: seen from each edge the other lies on the dark side, away from its normal.
std::optional<Stroke> strokeOf(const EdgeLine& edge, const EdgeLine& other, double widest) {
  constexpr double kAntiparallel = -0.9994;  // 2 degrees
  if (edge.normal.dot(other.normal) > kAntiparallel) return std::nullopt;
  const Vec2 along = edge.along();
  const double width = -edge.normal.dot(0.5 * (other.segment.a + other.segment.b) - edge.segment.a);
  if (width <= 0 || width > widest) return std::nullopt;
  const double a = along.dot(other.segment.a - edge.segment.a);
  const double b = along.dot(other.segment.b - edge.segment.a);
  Stroke stroke{0, width, std::max(0.0, std::min(a, b)), std::min(edge.length(), std::max(a, b))};
  const double shorter = std::min(edge.length(), other.length());
  return stroke.high - stroke.low > 0.6 * shorter ? std::optional(stroke) : std::nullopt;
}

DetectedLine middleLine(const EdgeLine& edge, const EdgeLine& other, double width) {
  // Along the mean direction, from the first end of either to the last.
  const Vec2 turned = edge.along().dot(other.along()) < 0 ? Vec2(-other.along()) : other.along();
  const double first = edge.length(), second = other.length();
  const Vec2 along = (first * edge.along() + second * turned).normalized();
  const Vec2 middle = 0.25 * (edge.segment.a + edge.segment.b + other.segment.a + other.segment.b);
  const Vec2 across = leftOf(along);
  const double offset = 0.5 * (across.dot(edge.segment.a - middle) + across.dot(edge.segment.b - middle)) +
                        0.5 * (across.dot(other.segment.a - middle) + across.dot(other.segment.b - middle));
  double low = 1e300, high = -1e300;
  for (const Vec2& end : {edge.segment.a, edge.segment.b, other.segment.a, other.segment.b}) {
    low = std::min(low, along.dot(end - middle));
    high = std::max(high, along.dot(end - middle));
  }
  const Vec2 centre = middle + 0.5 * offset * across;
  DetectedLine line;
  line.segment = {centre + low * along, centre + high * along};
  line.strength = line.length() * std::min(1.0, std::max(edge.filled, other.filled));
  line.stroke = width;
  return line;
}

DetectedLine edgeLine(const EdgeLine& edge) {
  return {edge.segment, edge.length() * std::min(1.0, edge.filled), 0};
}

// Longest edges choose their partner first; each edge is part of one stroke at most.
std::vector<DetectedLine> paired(const std::vector<EdgeLine>& edges, double widest) {
  std::vector<bool> taken(edges.size(), false);
  std::vector<DetectedLine> lines;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    if (taken[i]) continue;
    std::optional<Stroke> best;
    for (std::size_t j = i + 1; j < edges.size(); ++j) {
      if (taken[j]) continue;
      auto stroke = strokeOf(edges[i], edges[j], widest);
      if (!stroke || (best && stroke->width >= best->width)) continue;
      stroke->other = j;
      best = stroke;
    }
    if (best) taken[best->other] = true;
    lines.push_back(best ? middleLine(edges[i], edges[best->other], best->width) : edgeLine(edges[i]));
  }
  return lines;
}

}  // namespace

Result<std::vector<DetectedLine>> detectLines(const GrayImage& image, const LineDetectOptions& options,
                                              const Progress& progress) {
  if (const auto checked = check(image); !checked) return tl::unexpected(checked.error());
  if (image.width < 8 || image.height < 8) return std::vector<DetectedLine>{};
  const detail::GradientField field = detail::gradientsOf(image);
  auto edges = detail::edgeLines(field, options.shortest, progress);
  if (!edges) return tl::unexpected(edges.error());
  std::stable_sort(edges->begin(), edges->end(),
                   [](const EdgeLine& a, const EdgeLine& b) { return a.length() > b.length(); });
  // Pairing compares all with all; nobody snaps to the ten thousandth line.
  edges->resize(std::min(edges->size(), 4 * options.most));
  std::vector<DetectedLine> lines = paired(*edges, options.widestStroke);
  std::stable_sort(lines.begin(), lines.end(),
                   [](const DetectedLine& a, const DetectedLine& b) { return a.strength > b.strength; });
  lines.resize(std::min(lines.size(), options.most));
  return lines;
}

std::vector<DominantDirection> dominantDirections(std::span<const DetectedLine> lines) {
  constexpr int kBins = 180;
  constexpr double kNear = 2 * kPi / 180;
  constexpr double kLeastShare = 0.1;
  double total = 0;
  std::vector<double> bins(kBins, 0);
  std::vector<double> angles;
  for (const DetectedLine& line : lines) {
    const Vec2 along = line.segment.b - line.segment.a;
    double angle = std::atan2(along.y(), along.x());
    if (angle < 0) angle += kPi;
    if (angle >= kPi) angle -= kPi;
    angles.push_back(angle);
    total += line.length();
    bins[static_cast<std::size_t>(angle / kPi * kBins) % kBins] += line.length();
  }
  std::vector<DominantDirection> directions;
  std::vector<bool> counted(lines.size(), false);
  while (total > 0) {
    const auto peak = static_cast<double>(std::max_element(bins.begin(), bins.end()) - bins.begin());
    const double centre = (peak + 0.5) / kBins * kPi;
    double length = 0, sum = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const double apart = std::remainder(angles[i] - centre, kPi);
      if (counted[i] || std::abs(apart) > kNear) continue;
      counted[i] = true;
      length += lines[i].length();
      sum += lines[i].length() * apart;
      bins[static_cast<std::size_t>(angles[i] / kPi * kBins) % kBins] -= lines[i].length();
    }
    if (length < kLeastShare * total) break;
    double angle = std::fmod(centre + sum / length + kPi, kPi);
    directions.push_back({angle, length / total});
  }
  std::stable_sort(directions.begin(), directions.end(),
                   [](const DominantDirection& a, const DominantDirection& b) { return a.share > b.share; });
  return directions;
}

}  // namespace baywright
