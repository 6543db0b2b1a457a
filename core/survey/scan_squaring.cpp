// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_squaring.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace baywright {
namespace {

constexpr double kNoDirection = 0.80;  ///< metres: a shorter side has no direction of its own,
constexpr double kMostTurned = 0.35;   ///< radians, 20 degrees, that it may be off
constexpr double kDrawnAside = 0.010;  ///< metres that what stands beside a wall may draw one of its ends
constexpr double kDrawnHidden = 0.030;  ///< metres more where next to nothing of it was seen
constexpr double kLongWall = 1.50;     ///< metres: others are square to it, not it to others
constexpr double kLongSeen = 0.60;     ///< share of it
constexpr double kAgree = 0.009;    ///< radians, half a degree, within which long walls are of one direction
constexpr double kTooFar = 3.0;     ///< standard deviations off square that are plainly askew
constexpr double kWellSeen = 0.85;  ///< share of a wall
constexpr double kMostBuilt =
    0.006;  ///< radians off square that a well seen wall may be, a third of a degree
constexpr double kMostHidden =
    0.06;  ///< radians off square that is taken for a fault of the scan, 3.4 degrees
constexpr double kMostMoved = 0.50;  ///< metres that a corner may move when sides are squared

double lengthOf(const ScanOutline& outline, std::size_t side) {
  return (outline.corners[(side + 1) % outline.corners.size()] - outline.corners[side]).norm();
}

/// About the middle of what was seen of it.
void turnTo(ScanLine& side, const Vec2& normal) {
  const Vec2 middle = side.offset * side.normal + side.middle * side.along();
  side.normal = normal;
  side.offset = normal.dot(middle);
  side.middle = side.along().dot(middle);
}

double angleOf(const ScanLine& side) {
  return std::atan2(side.normal.y(), side.normal.x());
}

/// Between two directions, quarter turns aside: from -45 to 45 degrees.
double offSquare(double from, double to) {
  return std::remainder(to - from, kPi / 2);
}

/// Standard deviation of a side's own direction, radians.
double directionSigma(const ScanOutline& outline, std::size_t index) {
  constexpr double kLeastSeen = 0.1;
  const ScanLine& side = outline.sides[index];
  const double length = lengthOf(outline, index);
  if (length < kNoDirection || side.spread <= 0) return kMostTurned / kTooFar;
  const double fit = side.rms / (side.spread * std::sqrt(std::max(side.pieces, 1.0)));
  const double seen = std::clamp(outline.seen[index], kLeastSeen, 1.0);
  const double drawn = kDrawnAside + (1 - seen) * kDrawnHidden;
  return std::hypot(fit, drawn / (seen * length));
}

/// The direction, within a quarter turn, that the long walls near it have; nothing where none is near.
std::optional<double> squareTo(const ScanOutline& outline, std::size_t index, double reach) {
  const double own = angleOf(outline.sides[index]);
  double nearest = 0;
  double most = 0;
  double sum = 0;
  double weights = 0;
  const auto forLong = [&](auto&& take) {
    for (std::size_t i = 0; i < outline.sides.size(); ++i) {
      const double length = lengthOf(outline, i);
      if (i == index || length < kLongWall || outline.seen[i] < kLongSeen) continue;
      take(offSquare(own, angleOf(outline.sides[i])),
           1 / std::pow(directionSigma(outline, i), 2));
    }
  };
  forLong([&](double off, double weight) {
    if (std::abs(off) > reach || weight <= most) return;
    most = weight;
    nearest = off;
  });
  if (most == 0) return std::nullopt;
  forLong([&](double off, double weight) {
    if (std::abs(off - nearest) > kAgree) return;
    sum += weight * off;
    weights += weight;
  });
  return sum / weights;
}

void squareByWeight(ScanOutline& outline) {
  std::vector<double> turns(outline.sides.size(), 0);
  for (std::size_t i = 0; i < turns.size(); ++i) {
    const double sigma = directionSigma(outline, i);
    const double reach = kTooFar * std::hypot(sigma, kBuiltSquare);
    const auto off = squareTo(outline, i, reach);
    if (!off) continue;
    const double share = *off / reach;
    const double say = std::pow(1 - share * share, 2) / (kBuiltSquare * kBuiltSquare);
    const double own = 1 / (sigma * sigma);
    turns[i] = *off * say / (say + own);
    if (lengthOf(outline, i) < kNoDirection) turns[i] = *off;
  }
  for (std::size_t i = 0; i < turns.size(); ++i)
    turnTo(outline.sides[i], Eigen::Rotation2Dd(turns[i]) * outline.sides[i].normal);
}

/// A wall of which little was seen takes the direction that the others agree on, where they do: what stands
/// before it turns its line more than masons do.
void squareHardlySeen(ScanOutline& outline) {
  const std::size_t n = outline.sides.size();
  const auto isOff = [](const Vec2& a, const Vec2& b, double most) {
    return std::asin(std::min(std::abs(a.dot(b)), std::abs(cross(a, b)))) > most;
  };
  std::size_t best = 0;
  for (std::size_t i = 1; i < n; ++i)
    if (outline.seen[i] * lengthOf(outline, i) > outline.seen[best] * lengthOf(outline, best)) best = i;
  const Vec2 normal = outline.sides[best].normal;
  double agree = 0;
  for (std::size_t i = 0; i < n; ++i) {
    if (i == best || outline.seen[i] < kWellSeen || lengthOf(outline, i) < 1) continue;
    if (isOff(normal, outline.sides[i].normal, kMostBuilt)) return;  // a room that is not square
    agree += 1;
  }
  if (agree < 2) return;
  for (std::size_t i = 0; i < n; ++i) {
    ScanLine& side = outline.sides[i];
    if (outline.seen[i] >= kWellSeen || isOff(normal, side.normal, kMostHidden)) continue;
    const Vec2 across = leftOf(normal);
    Vec2 square = std::abs(normal.dot(side.normal)) > 0.7 ? normal : across;
    if (square.dot(side.normal) < 0) square = -square;
    turnTo(side, square);
  }
}

}  // namespace

void squareSides(ScanOutline& outline) {
  const std::size_t n = outline.sides.size();
  const std::vector<ScanLine> asFound = outline.sides;
  squareByWeight(outline);
  squareHardlySeen(outline);
  Ring corners;
  for (std::size_t i = 0; i < n; ++i) {
    corners.push_back(crossingOf(outline.sides[(i + n - 1) % n], outline.sides[i]));
    // Sides nearly in line may have become parallel: then all stay as they were.
    if ((corners[i] - outline.corners[i]).norm() < kMostMoved) continue;
    outline.sides = asFound;
    return;
  }
  outline.corners = std::move(corners);
}

}  // namespace baywright
