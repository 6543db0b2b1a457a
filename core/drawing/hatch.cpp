// SPDX-License-Identifier: Apache-2.0
#include "drawing/hatch.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace baywright {
namespace {

using Rings = std::vector<std::vector<Vec2>>;

// A polygon of a whole building at 1:1 would ask for more; nobody could read it, so it stays bare.
constexpr double kMostLines = 5000;

constexpr double kDotShare = 0.12;  // radius of a dot over the spacing

// Where the line y = level crosses the rings, from left to right. Each edge owns its lower end only, so a
// line through a corner counts it once or not at all, and the crossings are even in number.
std::vector<double> crossings(const Rings& rings, double level) {
  std::vector<double> xs;
  for (const auto& ring : rings) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Vec2& a = ring[i];
      const Vec2& b = ring[(i + 1) % ring.size()];
      if ((a.y() <= level) == (b.y() <= level)) continue;
      xs.push_back(a.x() + (level - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
    }
  }
  std::sort(xs.begin(), xs.end());
  return xs;
}

Rings turned(const Rings& rings, double angle) {
  const Eigen::Rotation2Dd turn(angle);
  Rings result = rings;
  for (auto& ring : result) {
    for (Vec2& p : ring) p = turn * p;
  }
  return result;
}

struct Rows {
  double first = 0;
  double count = 0;
};

Rows rowsOf(const Rings& rings, double spacing) {
  Eigen::AlignedBox2d box;
  for (const auto& ring : rings) {
    for (const Vec2& p : ring) box.extend(p);
  }
  if (box.isEmpty() || !(spacing > 0)) return {};
  const double first = std::ceil(box.min().y() / spacing);
  const double count = std::floor(box.max().y() / spacing) - first + 1;
  return count <= kMostLines ? Rows{first, std::max(count, 0.0)} : Rows{};
}

// The corners of a dot about the origin, level by level.
struct DotLevel {
  double y;
  std::vector<double> xs;
};
std::array<DotLevel, 5> dotLevels(double radius) {
  const double side = radius * std::numbers::sqrt2 / 2;
  return {
      {{-radius, {0}}, {-side, {-side, side}}, {0, {-radius, radius}}, {side, {-side, side}}, {radius, {0}}}};
}

std::vector<Vec2> dotRing(const Vec2& at, double radius) {
  std::vector<Vec2> ring;
  for (int i = 0; i < 8; ++i)
    ring.push_back(at + radius * Vec2(std::cos(kPi / 4 * i), std::sin(kPi / 4 * i)));
  return ring;
}

// Rows of dots, every other one moved by half a step; only dots that lie inside with all their corners.
Rings dots(const Rings& rings, double spacing) {
  const double radius = kDotShare * spacing;
  const auto levels = dotLevels(radius);
  const Rows rows = rowsOf(rings, spacing);
  Rings result;
  for (double row = rows.first; row < rows.first + rows.count; ++row) {
    const double y = row * spacing;
    const double shift = std::fmod(std::abs(row), 2) * 0.5 * spacing;
    std::array<std::vector<double>, 5> cuts;
    for (std::size_t i = 0; i < levels.size(); ++i) cuts[i] = crossings(rings, y + levels[i].y);
    const auto fits = [&](double x) {
      for (std::size_t i = 0; i < levels.size(); ++i) {
        for (const double step : levels[i].xs) {
          const auto left = std::upper_bound(cuts[i].begin(), cuts[i].end(), x + step) - cuts[i].begin();
          if (left % 2 == 0) return false;
        }
      }
      return true;
    };
    const std::vector<double>& middle = cuts[2];
    for (std::size_t i = 0; i + 1 < middle.size(); i += 2) {
      for (double k = std::ceil((middle[i] - shift) / spacing); k * spacing + shift < middle[i + 1]; ++k) {
        const double x = k * spacing + shift;
        if (fits(x)) result.push_back(dotRing({x, y}, radius));
      }
    }
  }
  return result;
}

}  // namespace

std::vector<std::vector<Vec2>> hatchLines(const std::vector<std::vector<Vec2>>& rings, double spacing,
                                          double angle) {
  const Rings level = turned(rings, -angle);
  const Rows rows = rowsOf(level, spacing);
  Rings lines;
  for (double row = rows.first; row < rows.first + rows.count; ++row) {
    const double y = row * spacing;
    const auto xs = crossings(level, y);
    for (std::size_t i = 0; i + 1 < xs.size(); i += 2) lines.push_back({{xs[i], y}, {xs[i + 1], y}});
  }
  return turned(lines, angle);
}

std::optional<Path> hatchOf(const Path& area, double spacing) {
  if (!area.verdict || *area.verdict == Verdict::Clear) return std::nullopt;
  Path hatch;
  hatch.layer = area.layer;
  hatch.verdict = area.verdict;
  hatch.id = area.id;
  hatch.weight = LineWeight::Thin;
  hatch.dash = LineDash::Continuous;
  if (*area.verdict == Verdict::Tight) {
    hatch.rings = dots(area.rings, spacing);
    hatch.closed = true;
    hatch.fill = Fill::Full;
  } else {
    hatch.rings = hatchLines(area.rings, spacing, kPi / 4);
    if (*area.verdict == Verdict::Unknown) {
      for (auto& line : hatchLines(area.rings, spacing, -kPi / 4)) hatch.rings.push_back(std::move(line));
    }
  }
  if (hatch.rings.empty()) return std::nullopt;
  return hatch;
}

}  // namespace baywright
