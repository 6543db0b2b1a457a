// SPDX-License-Identifier: Apache-2.0
#include "survey/ceiling_fit.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "survey/ceiling_models.h"
#include "survey/ceiling_parts.h"
#include "units/length_text.h"

namespace baywright {
namespace {

using detail::CeilingModel;

std::string pointText(const Vec2& p, const UnitSystem& units) {
  return formatLength(p.x(), units) + ", " + formatLength(p.y(), units);
}

void addResiduals(CeilingFit& fit, std::span<const CeilingReading> readings, const CeilingModel& model,
                  const UnitSystem& units) {
  double sum = 0;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    FigureResidual residual;
    residual.what = "ceiling at " + pointText(readings[i].position, units);
    residual.residual = model.planes[model.planeOf[i]].at(readings[i].position) - readings[i].height;
    residual.standardised = residual.residual / detail::sigmaOf(readings[i]);
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

CeilingModel lowestEverywhere(std::span<const CeilingReading> readings) {
  const auto lowest =
      std::min_element(readings.begin(), readings.end(),
                       [](const CeilingReading& a, const CeilingReading& b) { return a.height < b.height; });
  CeilingModel model;
  model.shape = CeilingShape::Level;
  model.planes = {detail::ReadPlane{lowest->position, lowest->height, Vec2::Zero()}};
  model.planeOf.assign(readings.size(), 0);
  model.unknowns = 1;
  return model;
}

/// A second part that only one reading speaks for may be a slip.
void doubtLoneReading(CeilingFit& fit, std::span<const CeilingReading> readings, const CeilingModel& model,
                      std::size_t plane, const UnitSystem& units) {
  if (std::count(model.planeOf.begin(), model.planeOf.end(), static_cast<int>(plane)) != 1) return;
  const auto at = std::find(model.planeOf.begin(), model.planeOf.end(), static_cast<int>(plane));
  const CeilingReading& only = readings[static_cast<std::size_t>(at - model.planeOf.begin())];
  const bool isOutvoted = readings.size() >= 4 && model.shape == CeilingShape::Stepped;
  const std::string place = "ceiling height at " + pointText(only.position, units);
  if (isOutvoted)
    fit.suspicious.push_back(
        "The " + place + " was read as " + formatLength(only.height, units) + ", and the others make it " +
        formatLength(model.planes[1 - plane].at(only.position), units) +
        ": only it says that there is a second part. Read it again, or another beside it.");
  else
    fit.notes.push_back("Only the " + place +
                        " says that there is a second part. Read it again, or another beside it.");
}

void addNotes(CeilingFit& fit, std::span<const CeilingReading> readings, const CeilingModel& model,
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
  for (std::size_t plane = 0; plane < model.planes.size() && model.planes.size() > 1; ++plane)
    doubtLoneReading(fit, readings, model, plane, units);
}

/// A reading that alone keeps the others from lying in one plane.
struct Outlier {
  std::size_t reading = 0;
  CeilingModel others;
};

std::optional<Outlier> outlierAmong(std::span<const CeilingReading> readings) {
  std::optional<Outlier> found;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    std::vector<CeilingReading> others(readings.begin(), readings.end());
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
    const std::vector<CeilingModel> models = detail::agreeingModels({}, others);
    const auto plane = std::find_if(models.begin(), models.end(), [&](const CeilingModel& model) {
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
  const std::vector<CeilingModel> models = detail::agreeingModels(floor, readings);
  const auto best =
      std::min_element(models.begin(), models.end(),
                       [](const CeilingModel& a, const CeilingModel& b) { return a.judged() < b.judged(); });
  const bool agrees = best != models.end();
  const std::optional<Outlier> outlier = agrees ? std::nullopt : outlierAmong(readings);
  const auto others = [&] { return outlier->others.planes[0].at(readings[outlier->reading].position); };
  const bool isAbove = outlier && readings[outlier->reading].height > others();
  const CeilingModel model = agrees ? *best : isAbove ? outlier->others : lowestEverywhere(readings);
  fit.shape = model.shape;
  fit.parts = detail::ceilingPartsOf(model, floor, poorest(readings));
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
