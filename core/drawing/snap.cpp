// SPDX-License-Identifier: Apache-2.0
#include "drawing/snap.h"

#include <cmath>

namespace baywright {
namespace {

/// Sine between two rules below which their crossing runs away: six degrees.
constexpr double kCrossing = 0.1;
/// A crossing may lie this many reaches off the pointer: each of its lines is within one.
constexpr double kCrossingReach = 1.5;

double offness(const SnapRule& rule, const Vec2& by) {
  return rule.normal.dot(by) - rule.at;
}

bool holdsAt(const SnapRule& rule, const Vec2& by, double slack) {
  const double along = rule.along().dot(by);
  return along >= rule.low - slack && along <= rule.high + slack;
}

/// Where both rules hold.
Vec2 crossingOf(const SnapRule& a, const SnapRule& b) {
  const double determinant = cross(a.normal, b.normal);
  return {(a.at * b.normal.y() - b.at * a.normal.y()) / determinant,
          (b.at * a.normal.x() - a.at * b.normal.x()) / determinant};
}

const SnapRule* nearestRule(std::span<const SnapRule> rules, const Vec2& by, double reach) {
  const SnapRule* best = nullptr;
  double least = reach;
  for (const SnapRule& rule : rules) {
    const double off = std::abs(offness(rule, by));
    if (off > least || (best && off >= least) || !holdsAt(rule, by, reach)) continue;
    best = &rule;
    least = off;
  }
  return best;
}

const SnapRule* nearestCrossing(std::span<const SnapRule> rules, const SnapRule& first, const Vec2& by,
                                double reach) {
  const SnapRule* best = nullptr;
  double least = kCrossingReach * reach;
  for (const SnapRule& rule : rules) {
    if (std::abs(cross(first.normal, rule.normal)) < kCrossing) continue;
    const Vec2 at = crossingOf(first, rule);
    const double off = (at - by).norm();
    if (off > least || (best && off >= least) || !holdsAt(rule, at, reach) || !holdsAt(first, at, reach))
      continue;
    best = &rule;
    least = off;
  }
  return best;
}

}  // namespace

Snapped snapped(std::span<const SnapRule> rules, const Vec2& by, double reach) {
  const SnapRule* first = nearestRule(rules, by, reach);
  if (!first) return {by, {}};
  if (const SnapRule* second = nearestCrossing(rules, *first, by, reach))
    return {crossingOf(*first, *second), {first->mark, second->mark}};
  return {by - offness(*first, by) * first->normal, {first->mark}};
}

Snapped snapped(std::span<const SnapPoint> points, std::span<const SnapRule> rules, const Vec2& by,
                double reach) {
  const SnapPoint* best = nullptr;
  double least = reach;
  for (const SnapPoint& point : points) {
    const double off = (point.at - by).norm();
    if (off > least || (best && off >= least)) continue;
    best = &point;
    least = off;
  }
  if (best) return {best->at, {SnapMark{{best->at, best->at}, best->what}}};
  return snapped(rules, by, reach);
}

SnapRule onLine(const Vec2& through, const Vec2& along, SnapMark mark) {
  SnapRule rule;
  rule.normal = -leftOf(along);
  rule.at = rule.normal.dot(through);
  rule.mark = std::move(mark);
  return rule;
}

SnapRule onSegment(const Segment2& segment, std::string what) {
  const Vec2 along = (segment.b - segment.a).normalized();
  SnapRule rule = onLine(segment.a, along, {segment, std::move(what)});
  rule.low = along.dot(segment.a);
  rule.high = along.dot(segment.b);
  return rule;
}

}  // namespace baywright
