// SPDX-License-Identifier: Apache-2.0
#include "survey/ceiling_models.h"

#include <Eigen/QR>
#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "survey/chi_square.h"

namespace baywright::detail {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

/// Readings whose spread across a line is less than this share of the spread along it lie on the line.
constexpr double kOnALine = 0.02;
/// Slopes and crossings flatter than this are level or parallel.
constexpr double kFlat = 1e-6;
/// Walls within this of each other's direction (a degree) are one direction.
constexpr double kSameDirection = 0.0175;
/// Readings as near across a wall's direction stand side by side, as the walls are known no better. Metres.
constexpr double kNarrowestSplit = 0.05;
/// Readings that spread less along a direction say nothing of how the ceiling falls along it: plaster and
/// instrument would make it steep. Metres.
constexpr double kLeastSpread = 0.3;
/// A crease may lie this far outside the gap between the readings of its two planes, metres.
constexpr double kCreaseSlack = 0.3;

/// What a second plane must explain beyond Akaike's measure: what chance explains once in a hundred times,
/// the point of the chi-square distribution of one degree. Plaster that bulges by a few millimetres is no
/// ridge.
constexpr double kSecondPlane = 6.63;

enum class Fall { None, AlongDirection, Any };

double spreadAlong(std::span<const CeilingReading> readings, const std::vector<int>& chosen,
                   const Vec2& direction) {
  double low = std::numeric_limits<double>::infinity(), high = -low;
  for (const int i : chosen) {
    low = std::min(low, direction.dot(readings[i].position));
    high = std::max(high, direction.dot(readings[i].position));
  }
  return high - low;
}

std::optional<ReadPlane> planeThrough(std::span<const CeilingReading> readings,
                                      const std::vector<int>& chosen, Fall fall, const Vec2& direction) {
  const Index count = static_cast<Index>(chosen.size());
  const Index unknowns = fall == Fall::None ? 1 : fall == Fall::AlongDirection ? 2 : 3;
  if (count < unknowns) return std::nullopt;
  ReadPlane plane;
  for (const int i : chosen) plane.anchor += readings[i].position / static_cast<double>(count);
  if (fall == Fall::AlongDirection && spreadAlong(readings, chosen, direction) < kLeastSpread)
    return std::nullopt;
  MatrixXd rows(count, unknowns);
  VectorXd heights(count);
  for (Index k = 0; k < count; ++k) {
    const CeilingReading& reading = readings[chosen[k]];
    const double sigma = sigmaOf(reading);
    const Vec2 off = reading.position - plane.anchor;
    rows(k, 0) = 1 / sigma;
    if (fall == Fall::AlongDirection) rows(k, 1) = off.dot(direction) / sigma;
    if (fall == Fall::Any) rows.row(k).tail<2>() = off.transpose() / sigma;
    heights(k) = reading.height / sigma;
  }
  Eigen::ColPivHouseholderQR<MatrixXd> qr(rows);
  qr.setThreshold(kFlat);
  if (qr.rank() < unknowns) return std::nullopt;
  const VectorXd solution = qr.solve(heights);
  plane.height = solution(0);
  if (fall == Fall::AlongDirection) plane.slope = solution(1) * direction;
  if (fall == Fall::Any) plane.slope = solution.tail<2>();
  return plane;
}

double squaresOf(std::span<const CeilingReading> readings, const CeilingModel& model) {
  double sum = 0;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const double miss = model.planes[model.planeOf[i]].at(readings[i].position) - readings[i].height;
    sum += std::pow(miss / sigmaOf(readings[i]), 2);
  }
  return sum;
}

std::vector<int> everything(std::size_t count) {
  std::vector<int> all(count);
  for (std::size_t i = 0; i < count; ++i) all[i] = static_cast<int>(i);
  return all;
}

std::optional<CeilingModel> onePlane(std::span<const CeilingReading> readings, Fall fall,
                                     const Vec2& direction) {
  const auto plane = planeThrough(readings, everything(readings.size()), fall, direction);
  if (!plane) return std::nullopt;
  CeilingModel model;
  model.shape = fall == Fall::None ? CeilingShape::Level : CeilingShape::Sloped;
  model.planes = {*plane};
  model.planeOf.assign(readings.size(), 0);
  model.unknowns = fall == Fall::None ? 1 : fall == Fall::AlongDirection ? 2 : 3;
  model.isAlongALine = fall == Fall::AlongDirection;
  model.squares = squaresOf(readings, model);
  return model;
}

/// The direction in which the readings spread, if they lie on one line.
std::optional<Vec2> lineOf(std::span<const CeilingReading> readings) {
  Vec2 middle = Vec2::Zero();
  for (const CeilingReading& reading : readings)
    middle += reading.position / static_cast<double>(readings.size());
  double xx = 0;
  double xy = 0;
  double yy = 0;
  for (const CeilingReading& reading : readings) {
    const Vec2 off = reading.position - middle;
    xx += off.x() * off.x();
    xy += off.x() * off.y();
    yy += off.y() * off.y();
  }
  const double mean = (xx + yy) / 2;
  const double half = std::hypot((xx - yy) / 2, xy);
  if (!(half > 0) || mean - half > kOnALine * kOnALine * (mean + half)) return std::nullopt;
  const double heading = 0.5 * std::atan2(2 * xy, xx - yy);
  return Vec2(std::cos(heading), std::sin(heading));
}

/// Across each direction of wall that there is.
std::vector<Vec2> wallNormals(const Ring& floor) {
  std::vector<Vec2> normals;
  for (std::size_t i = 0; i < floor.size(); ++i) {
    const Vec2 wall = floor[(i + 1) % floor.size()] - floor[i];
    if (!(wall.norm() > 0)) continue;
    const Vec2 normal = leftOf(wall.normalized());
    const bool isKnown = std::any_of(normals.begin(), normals.end(), [&](const Vec2& other) {
      return std::abs(cross(other, normal)) < kSameDirection;
    });
    if (!isKnown) normals.push_back(normal);
  }
  return normals;
}

/// Where the planes meet along `across`, or nothing where they are parallel.
std::optional<double> creaseOf(const ReadPlane& a, const ReadPlane& b, const Vec2& across) {
  const double difference = (a.slope - b.slope).dot(across);
  if (std::abs(difference) < kFlat) return std::nullopt;
  return ((b.at(Vec2::Zero()) - a.at(Vec2::Zero())) / difference);
}

struct Split {
  std::vector<int> low;
  std::vector<int> high;
  double lowEnd = 0;
  double highEnd = 0;
};

std::vector<Split> splitsAcross(std::span<const CeilingReading> readings, const Vec2& across) {
  std::vector<int> order = everything(readings.size());
  const auto along = [&](int i) { return across.dot(readings[i].position); };
  std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return along(a) < along(b); });
  std::vector<Split> splits;
  for (std::size_t k = 1; k < order.size(); ++k) {
    if (along(order[k]) - along(order[k - 1]) < kNarrowestSplit) continue;
    const auto middle = order.begin() + static_cast<std::ptrdiff_t>(k);
    splits.push_back({{order.begin(), middle}, {middle, order.end()}, along(order[k - 1]), along(order[k])});
  }
  return splits;
}

std::optional<CeilingModel> twoPlanes(std::span<const CeilingReading> readings, const Split& split,
                                      const Vec2& across, Fall first, Fall second) {
  const auto a = planeThrough(readings, split.low, first, across);
  const auto b = planeThrough(readings, split.high, second, across);
  if (!a || !b) return std::nullopt;
  CeilingModel model;
  model.planes = {*a, *b};
  model.planeOf.assign(readings.size(), 0);
  for (const int i : split.high) model.planeOf[i] = 1;
  model.across = across;
  model.lowEnd = split.lowEnd;
  model.highEnd = split.highEnd;
  model.where = (split.lowEnd + split.highEnd) / 2;
  model.unknowns = 3 + (first != Fall::None) + (second != Fall::None);  // the place of the split is one
  model.shape = CeilingShape::Stepped;
  if (first != Fall::None || second != Fall::None) {
    const auto crease = creaseOf(*a, *b, across);
    if (!crease || *crease < split.lowEnd - kCreaseSlack || *crease > split.highEnd + kCreaseSlack)
      return std::nullopt;
    model.shape = CeilingShape::Creased;
    model.where = *crease;
  }
  model.squares = squaresOf(readings, model);
  return model;
}

std::vector<CeilingModel> modelsFor(const Ring& floor, std::span<const CeilingReading> readings) {
  std::vector<CeilingModel> models;
  const auto offer = [&](const std::optional<CeilingModel>& model) {
    if (model && static_cast<int>(readings.size()) >= model->unknowns) models.push_back(*model);
  };
  offer(onePlane(readings, Fall::None, {}));
  const auto line = readings.size() >= 3 ? lineOf(readings) : std::nullopt;
  if (line) offer(onePlane(readings, Fall::AlongDirection, *line));
  if (!line && readings.size() >= 3) offer(onePlane(readings, Fall::Any, {}));
  if (readings.size() < 3) return models;
  for (const Vec2& across : wallNormals(floor)) {
    for (const Split& split : splitsAcross(readings, across)) {
      offer(twoPlanes(readings, split, across, Fall::None, Fall::None));
      offer(twoPlanes(readings, split, across, Fall::None, Fall::AlongDirection));
      offer(twoPlanes(readings, split, across, Fall::AlongDirection, Fall::None));
      offer(twoPlanes(readings, split, across, Fall::AlongDirection, Fall::AlongDirection));
    }
  }
  return models;
}

}  // namespace

double sigmaOf(const CeilingReading& reading) {
  return std::hypot(instrumentSigma(reading.how, reading.height), kUneven);
}

double CeilingModel::judged() const {
  return squares + 2 * unknowns + (planes.size() > 1 ? kSecondPlane : 0);
}

std::vector<CeilingModel> agreeingModels(const Ring& floor, std::span<const CeilingReading> readings) {
  std::vector<CeilingModel> models = modelsFor(floor, readings);
  std::erase_if(models, [&](const CeilingModel& model) {
    const int spare = static_cast<int>(readings.size()) - model.unknowns;
    return spare > 0 && chiSquareTail(model.squares, spare) < kCeilingLevel;
  });
  return models;
}

}  // namespace baywright::detail
