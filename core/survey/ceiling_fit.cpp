// SPDX-License-Identifier: Apache-2.0
#include "survey/ceiling_fit.h"

#include <Eigen/QR>
#include <algorithm>
#include <cmath>
#include <optional>

#include "geometry/polygon_sets.h"
#include "survey/chi_square.h"
#include "units/length_text.h"

namespace baywright {
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
/// A crease may lie this far outside the gap between the readings of its two planes, metres.
constexpr double kCreaseSlack = 0.3;

/// What a second plane must explain beyond Akaike's measure: what chance explains once in a hundred times,
/// the point of the chi-square distribution of one degree. Plaster that bulges by a few millimetres is no
/// ridge.
constexpr double kSecondPlane = 6.63;

double sigmaOf(const CeilingReading& reading) {
  return std::hypot(instrumentSigma(reading.how, reading.height), kUneven);
}

/// z = height + slope . (p - anchor), least squares over some readings.
struct Plane {
  Vec2 anchor = Vec2::Zero();
  double height = 0;
  Vec2 slope = Vec2::Zero();

  double at(const Vec2& p) const { return height + slope.dot(p - anchor); }
};

struct Model {
  CeilingShape shape = CeilingShape::NotMeasured;
  std::vector<Plane> planes;
  std::vector<int> planeOf;  ///< of each reading
  int unknowns = 0;
  double squares = 0;
  // Where two planes part: on the line of points p with across . p = where; plane 0 lies below it.
  Vec2 across = Vec2::Zero();
  double where = 0;
  double lowEnd = 0;   ///< the last reading of plane 0 along `across`
  double highEnd = 0;  ///< the first reading of plane 1
  bool isAlongALine = false;

  double judged() const { return squares + 2 * unknowns + (planes.size() > 1 ? kSecondPlane : 0); }
};

enum class Fall { None, AlongDirection, Any };

std::optional<Plane> planeThrough(std::span<const CeilingReading> readings, const std::vector<int>& chosen,
                                  Fall fall, const Vec2& direction) {
  const Index count = static_cast<Index>(chosen.size());
  const Index unknowns = fall == Fall::None ? 1 : fall == Fall::AlongDirection ? 2 : 3;
  if (count < unknowns) return std::nullopt;
  Plane plane;
  for (const int i : chosen) plane.anchor += readings[i].position / static_cast<double>(count);
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

double squaresOf(std::span<const CeilingReading> readings, const Model& model) {
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

std::optional<Model> onePlane(std::span<const CeilingReading> readings, Fall fall, const Vec2& direction) {
  const auto plane = planeThrough(readings, everything(readings.size()), fall, direction);
  if (!plane) return std::nullopt;
  Model model;
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
std::optional<double> creaseOf(const Plane& a, const Plane& b, const Vec2& across) {
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
    if (along(order[k]) - along(order[k - 1]) < kFlat) continue;
    const auto middle = order.begin() + static_cast<std::ptrdiff_t>(k);
    splits.push_back({{order.begin(), middle}, {middle, order.end()}, along(order[k - 1]), along(order[k])});
  }
  return splits;
}

std::optional<Model> twoPlanes(std::span<const CeilingReading> readings, const Split& split,
                               const Vec2& across, Fall first, Fall second) {
  const auto a = planeThrough(readings, split.low, first, across);
  const auto b = planeThrough(readings, split.high, second, across);
  if (!a || !b) return std::nullopt;
  Model model;
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

std::vector<Model> modelsFor(const Ring& floor, std::span<const CeilingReading> readings) {
  std::vector<Model> models;
  const auto offer = [&](const std::optional<Model>& model) {
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

// --- from the model to ceiling parts

CeilingPart partOf(const Plane& plane, const std::string& name, Instrument how) {
  CeilingPart part;
  part.name = name;
  part.anchor = plane.anchor;
  part.height = {plane.height, how, true};
  part.slope = plane.slope;
  return part;
}

/// The floor on one side of a line: where sense (across . p - where) >= 0.
std::vector<Ring> sideOf(const Ring& floor, const Vec2& across, double where, double sense) {
  double reach = 1;
  for (const Vec2& corner : floor) reach = std::max(reach, corner.norm());
  reach = 3 * (reach + std::abs(where));
  const Vec2 base = where * across;
  const Vec2 along = reach * leftOf(across);
  const Vec2 far = sense * reach * across;
  const Ring half{base - along, base + along, base + along + far, base - along + far};
  const auto pieces = intersectionOf({{floor, {}}}, {{half, {}}});
  std::vector<Ring> rings;
  if (!pieces) return rings;
  for (const Polygon& piece : *pieces) rings.push_back(piece.outer);
  return rings;
}

void addSide(std::vector<CeilingPart>& parts, CeilingPart part, const std::vector<Ring>& regions) {
  for (std::size_t i = 0; i < regions.size(); ++i) {
    CeilingPart piece = part;
    if (i > 0) piece.name += " " + std::to_string(i + 1);
    piece.region = regions[i];
    parts.push_back(piece);
  }
}

std::vector<CeilingPart> partsOf(const Model& model, const Ring& floor, Instrument how) {
  if (model.planes.size() == 1)
    return {partOf(model.planes[0], model.shape == CeilingShape::Level ? "Ceiling" : "Sloped ceiling", how)};
  const Plane& a = model.planes[0];
  const Plane& b = model.planes[1];
  std::vector<CeilingPart> parts;
  if (model.shape == CeilingShape::Creased) {
    addSide(parts, partOf(a, "Ceiling", how), sideOf(floor, model.across, model.where, -1));
    addSide(parts, partOf(b, "Ceiling beyond the crease", how), sideOf(floor, model.across, model.where, 1));
    return parts;
  }
  const bool firstIsLow = a.height < b.height;
  parts.push_back(partOf(firstIsLow ? b : a, "Ceiling", how));
  addSide(parts, partOf(firstIsLow ? a : b, "Lower ceiling", how),
          sideOf(floor, model.across, firstIsLow ? model.highEnd : model.lowEnd, firstIsLow ? -1 : 1));
  return parts;
}

std::string pointText(const Vec2& p, const UnitSystem& units) {
  return formatLength(p.x(), units) + ", " + formatLength(p.y(), units);
}

void addResiduals(CeilingFit& fit, std::span<const CeilingReading> readings, const Model& model,
                  const UnitSystem& units) {
  double sum = 0;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    FigureResidual residual;
    residual.what = "ceiling at " + pointText(readings[i].position, units);
    residual.residual = model.planes[model.planeOf[i]].at(readings[i].position) - readings[i].height;
    residual.standardised = residual.residual / sigmaOf(readings[i]);
    sum += residual.residual * residual.residual;
    fit.residuals.push_back(residual);
  }
  fit.rms = std::sqrt(sum / static_cast<double>(readings.size()));
}

/// The one with the poorest accuracy of all that were used.
Instrument poorest(std::span<const CeilingReading> readings) {
  const auto worst = std::max_element(
      readings.begin(), readings.end(), [](const CeilingReading& a, const CeilingReading& b) {
        return instrumentSigma(a.how, a.height) < instrumentSigma(b.how, b.height);
      });
  return worst->how;
}

Model lowestEverywhere(std::span<const CeilingReading> readings) {
  const auto lowest =
      std::min_element(readings.begin(), readings.end(),
                       [](const CeilingReading& a, const CeilingReading& b) { return a.height < b.height; });
  Model model;
  model.shape = CeilingShape::Level;
  model.planes = {Plane{lowest->position, lowest->height, Vec2::Zero()}};
  model.planeOf.assign(readings.size(), 0);
  model.unknowns = 1;
  return model;
}

void addNotes(CeilingFit& fit, std::span<const CeilingReading> readings, const Model& model,
              const UnitSystem& units) {
  const int spare = static_cast<int>(readings.size()) - model.unknowns;
  if (model.isAlongALine)
    fit.notes.push_back(
        "The ceiling heights lie on one line, so nothing says whether the ceiling also falls across it. Read "
        "one beside the line.");
  if (model.shape == CeilingShape::Stepped)
    fit.notes.push_back(
        "The ceiling has a step somewhere between two readings that are " +
        formatLength(model.highEnd - model.lowEnd, units) +
        " apart; the lower part is taken to reach to the higher reading. Measure where it is.");
  if (readings.size() == 1)
    fit.notes.push_back("One ceiling height was read, and the ceiling is taken as level.");
  else if (spare == 0)
    fit.notes.push_back("No ceiling height checks the others. Read one more.");
  for (int plane = 0; plane < static_cast<int>(model.planes.size()) && model.planes.size() > 1; ++plane) {
    if (std::count(model.planeOf.begin(), model.planeOf.end(), plane) != 1) continue;
    const auto only = std::find(model.planeOf.begin(), model.planeOf.end(), plane) - model.planeOf.begin();
    fit.notes.push_back("Only the ceiling height at " + pointText(readings[only].position, units) +
                        " says that there is a second part. Read it again, or another beside it.");
  }
}

/// The models of which no reading says that they cannot be.
std::vector<Model> agreeing(const Ring& floor, std::span<const CeilingReading> readings) {
  std::vector<Model> models = modelsFor(floor, readings);
  std::erase_if(models, [&](const Model& model) {
    const int spare = static_cast<int>(readings.size()) - model.unknowns;
    return spare > 0 && chiSquareTail(model.squares, spare) < kCeilingLevel;
  });
  return models;
}

/// A reading that alone keeps the others from lying in one plane.
struct Outlier {
  std::size_t reading = 0;
  Model others;
};

std::optional<Outlier> outlierAmong(std::span<const CeilingReading> readings) {
  std::optional<Outlier> found;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    std::vector<CeilingReading> others(readings.begin(), readings.end());
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
    const std::vector<Model> models = agreeing({}, others);
    const auto plane = std::find_if(models.begin(), models.end(), [&](const Model& model) {
      return model.planes.size() == 1 && static_cast<int>(others.size()) > model.unknowns;
    });
    if (plane == models.end()) continue;
    if (found) return std::nullopt;  // either of two may be wrong
    found = Outlier{i, *plane};
    found->others.planeOf.assign(readings.size(), 0);
  }
  return found;
}

double distanceFrom(const Ring& floor, const Vec2& p) {
  double nearest = 1e300;
  for (std::size_t i = 0; i < floor.size(); ++i) {
    const Vec2 along = floor[(i + 1) % floor.size()] - floor[i];
    const double share = std::clamp(along.dot(p - floor[i]) / along.squaredNorm(), 0.0, 1.0);
    nearest = std::min(nearest, (floor[i] + share * along - p).norm());
  }
  return nearest;
}

void noteOutside(CeilingFit& fit, const Ring& floor, std::span<const CeilingReading> readings,
                 const UnitSystem& units) {
  constexpr double kBesideWall = 0.2;  // metres: where a wall is not known well, a reading may seem beyond it
  if (floor.size() < 3) return;
  for (const CeilingReading& reading : readings)
    if (locate(floor, reading.position) == Location::Outside &&
        distanceFrom(floor, reading.position) > kBesideWall)
      fit.suspicious.push_back(
          "The ceiling height at " + pointText(reading.position, units) +
          " lies outside the walls. Its x runs along the first wall, its y into the room.");
}

}  // namespace

CeilingFit fitCeiling(const Ring& floor, std::span<const CeilingReading> readings, const UnitSystem& units) {
  CeilingFit fit;
  if (readings.empty()) {
    CeilingPart part;
    part.name = "Ceiling";
    part.height = notMeasured(part.height.value);
    fit.parts = {part};
    fit.notes.push_back("No ceiling height was read.");
    return fit;
  }
  noteOutside(fit, floor, readings, units);
  const std::vector<Model> models = agreeing(floor, readings);
  const auto best = std::min_element(models.begin(), models.end(),
                                     [](const Model& a, const Model& b) { return a.judged() < b.judged(); });
  const bool agrees = best != models.end();
  const std::optional<Outlier> outlier = agrees ? std::nullopt : outlierAmong(readings);
  const auto others = [&] { return outlier->others.planes[0].at(readings[outlier->reading].position); };
  const bool isAbove = outlier && readings[outlier->reading].height > others();
  const Model model = agrees ? *best : isAbove ? outlier->others : lowestEverywhere(readings);
  fit.shape = model.shape;
  fit.parts = partsOf(model, floor, poorest(readings));
  addResiduals(fit, readings, model, units);
  if (agrees) {
    addNotes(fit, readings, model, units);
  } else if (outlier) {
    const CeilingReading& odd = readings[outlier->reading];
    fit.suspect = odd.reading;
    fit.suspicious.push_back("The ceiling height at " + pointText(odd.position, units) + " was read as " +
                             formatLength(odd.height, units) + ", and the others make it " +
                             formatLength(others(), units) + ". Read it again. " +
                             (isAbove ? "It was set aside here." : "Until then it is taken everywhere."));
  } else {
    fit.notes.push_back(
        readings.size() == 2
            ? "Two ceiling heights differ and cannot tell a slope from a step: the lower one is "
              "taken everywhere. Read more of them."
            : "The ceiling heights fit no one or two planes: the lowest is taken everywhere. "
              "Read more of them, or set the ceiling by hand.");
  }
  return fit;
}

}  // namespace baywright
