// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_short_lines.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include "survey/scan_cube_map.h"
#include "survey/scan_line_fit.h"

namespace baywright {
namespace {

constexpr double kPlace = 0.05;       ///< metres: squares of the plan in which heights are looked at
constexpr int kFewestBands = 6;       ///< of kSeenBands over a place that make it tall
constexpr double kLeastTurner = 2.0;  ///< square metres of a line that gives a direction
constexpr std::size_t kMostDirections = 8;
constexpr double kAlike = 0.9986;        ///< cosine of 3 degrees
constexpr double kOnLine = 0.07;         ///< metres from a line that are its own
constexpr double kBand = 0.06;           ///< metres across which places in a row may lie
constexpr double kSameLine = 0.06;       ///< metres between lines that are one
constexpr double kParallel = 0.985;      ///< cosine of 10 degrees
constexpr std::size_t kFewestAskew = 4;  ///< places in a row along another wall than the largest
constexpr std::size_t kMostShort = 16;
constexpr double kLeastHeight = 0.15;  ///< metres

/// Samples of no line over one square of the plan.
struct Place {
  Vec2 sum = Vec2::Zero();
  double count = 0;
  std::uint32_t bands = 0;
  double top = 2.4;  ///< height of the ceiling
  bool isTaken = false;

  Vec2 mean() const { return sum / count; }
  bool isTall() const { return std::popcount(bands) >= kFewestBands && (bands & kTopBands); }
};

std::uint32_t bandOf(double z, double ceiling) {
  return 1u << std::clamp(static_cast<int>(z / std::max(ceiling, 0.5) * kSeenBands), 0, kSeenBands - 1);
}

/// Whether a line was seen as a wall at a place along it.
bool isSeenAt(const ScanLine& line, double along) {
  const double step = std::floor((along - line.seenFrom) / kSeenStep);
  if (step < 0 || step >= static_cast<double>(line.seen.size())) return false;
  return std::popcount(line.seen[static_cast<std::size_t>(step)]) >= 2;
}

class Search {
 public:
  Search(const LevelScan& scan, const std::vector<ScanLine>& lines) : scan_(scan), lines_(lines) {}

  std::vector<ScanLine> find(const Progress& progress) {
    collect(progress);
    const auto directions = directionsOf();
    std::vector<ScanLine> found;
    while (found.size() < kMostShort && !progress.stop()) {
      Row best;
      for (std::size_t d = 0; d < directions.size(); ++d) {
        Row row = longestRow(directions[d]);
        // Two places in a corner line up askew as well.
        const bool isLong = row.places.size() >= (d < 2 ? 2 : kFewestAskew);
        if (isLong && row.places.size() > best.places.size()) best = std::move(row);
      }
      if (best.places.empty()) break;
      for (Place* place : best.places) place->isTaken = true;
      if (!isKnown(best, found)) found.push_back(lineOf(best));
    }
    return found;
  }

 private:
  struct Row {
    Vec2 normal{1, 0};
    std::vector<Place*> places;
  };

  bool isOnLine(const Vec2& p) const {
    return std::any_of(lines_.begin(), lines_.end(), [&](const ScanLine& line) {
      return std::abs(line.distance(p)) < kOnLine && isSeenAt(line, line.along().dot(p));
    });
  }

  /// Whether a line may own the patch of a sample: the rest is little.
  std::vector<bool> ownedPatches() const {
    std::vector<bool> owned;
    for (const ScanPatch& patch : scan_.flat.patches) {
      owned.push_back(std::abs(patch.normal.z()) > 0.7 || isOnLine(flat(patch.centre)));
    }
    return owned;
  }

  void collect(const Progress& progress) {
    const auto owned = ownedPatches();
    CubeMap squares;
    for (std::size_t i = 0; i < scan_.samples.size(); ++i) {
      if (i % kSamplesBetweenLooks == 0 && progress.stop()) return;
      const Eigen::Vector3f& p = scan_.samples[i];
      const std::uint32_t patch = scan_.flat.patchOf[i];
      if ((patch != kNoPatch && owned[patch]) || static_cast<double>(p.z()) < kLeastHeight) continue;
      const Vec2 place(p.x(), p.y());
      if (isOnLine(place) || !scan_.roof.isNear(place, 0)) continue;
      CubeMap::Cube at = cubeAt(p, kPlace);
      at.z() = 0;
      const std::uint32_t square = squares.indexOf(at);
      if (square == places_.size()) {
        places_.emplace_back();
        places_.back().top = scan_.roof.topAt(place, scan_.ceiling);
      }
      places_[square].sum += place;
      places_[square].count += 1;
      places_[square].bands |= bandOf(static_cast<double>(p.z()), places_[square].top);
    }
    std::erase_if(places_, [](const Place& place) { return !place.isTall(); });
  }

  std::vector<Vec2> directionsOf() const {
    std::vector<Vec2> directions;
    for (const ScanLine& line : lines_)
      for (const Vec2& normal : {line.normal, line.along()}) {
        const bool isKnown = std::any_of(directions.begin(), directions.end(),
                                         [&](const Vec2& d) { return std::abs(d.dot(normal)) > kAlike; });
        if (line.area >= kLeastTurner && !isKnown && directions.size() < kMostDirections)
          directions.push_back(normal);
      }
    return directions;
  }

  /// Most places that line up across `normal` without a gap.
  Row longestRow(const Vec2& normal) {
    std::vector<Place*> byDepth;
    for (Place& place : places_)
      if (!place.isTaken) byDepth.push_back(&place);
    std::stable_sort(byDepth.begin(), byDepth.end(), [&](const Place* a, const Place* b) {
      return normal.dot(a->mean()) < normal.dot(b->mean());
    });
    Row best{normal, {}};
    std::size_t end = 0;
    for (std::size_t first = 0; first < byDepth.size(); ++first) {
      const double from = normal.dot(byDepth[first]->mean());
      while (end < byDepth.size() && normal.dot(byDepth[end]->mean()) < from + kBand) ++end;
      if (end - first <= best.places.size()) continue;
      auto run = longestRun({byDepth.begin() + static_cast<std::ptrdiff_t>(first),
                             byDepth.begin() + static_cast<std::ptrdiff_t>(end)},
                            leftOf(normal));
      if (spanOf(run, normal) > spanOf(best.places, normal)) best.places = std::move(run);
    }
    return best;
  }

  static double spanOf(const std::vector<Place*>& run, const Vec2& normal) {
    if (run.empty()) return 0;
    const Vec2 along = leftOf(normal);
    return along.dot(run.back()->mean() - run.front()->mean()) + kPlace;
  }

  static std::vector<Place*> longestRun(std::vector<Place*> places, const Vec2& along) {
    std::stable_sort(places.begin(), places.end(), [&](const Place* a, const Place* b) {
      return along.dot(a->mean()) < along.dot(b->mean());
    });
    std::vector<Place*> run;
    std::vector<Place*> best;
    for (Place* place : places) {
      if (!run.empty() && along.dot(place->mean() - run.back()->mean()) > 2 * kPlace) run.clear();
      run.push_back(place);
      const double span = along.dot(run.back()->mean() - run.front()->mean());
      const double most = best.empty() ? 0 : along.dot(best.back()->mean() - best.front()->mean());
      if (span > most && span > 0.5 * kPlace) best = run;
    }
    return best;
  }

  bool isKnown(const Row& row, const std::vector<ScanLine>& found) const {
    Vec2 middle = Vec2::Zero();
    for (const Place* place : row.places) middle += place->mean() / static_cast<double>(row.places.size());
    const auto isSame = [&](const ScanLine& line) {
      return std::abs(line.normal.dot(row.normal)) > kParallel && std::abs(line.distance(middle)) < kSameLine;
    };
    return std::any_of(lines_.begin(), lines_.end(), isSame) ||
           std::any_of(found.begin(), found.end(), isSame);
  }

  ScanLine lineOf(const Row& row) const {
    std::vector<WeightedPoint> points;
    for (const Place* place : row.places) points.push_back({place->mean(), place->count});
    ScanLine line;
    line.normal = row.normal;
    double counts = 0;
    for (const WeightedPoint& p : points) {
      line.offset += p.weight * row.normal.dot(p.place);
      counts += p.weight;
    }
    line.offset /= counts;
    const Vec2 along = line.along();
    double low = along.dot(points[0].place);
    double high = low;
    double squares = 0;
    for (const WeightedPoint& p : points) {
      low = std::min(low, along.dot(p.place));
      high = std::max(high, along.dot(p.place));
      squares += p.weight * line.distance(p.place) * line.distance(p.place);
    }
    const double length = high - low + kPlace;
    line.area = length * scan_.ceiling;
    line.rms = std::max(std::sqrt(squares / counts), 0.5 * kBand / std::sqrt(3.0));
    line.pieces = std::max(1.0, line.area / (kPatchSize * kPatchSize));
    line.middle = 0.5 * (low + high);
    line.spread = length / std::sqrt(12.0);
    line.seenFrom = low - 0.5 * kPlace;
    line.seen.assign(static_cast<std::size_t>(length / kSeenStep) + 1, 0);
    for (const Place* place : row.places)
      line.seen[static_cast<std::size_t>(
          std::max(0.0, (along.dot(place->mean()) - line.seenFrom) / kSeenStep))] |= place->bands;
    reachWalls(line);
    return line;
  }

  /// Places near the walls at its ends were taken for theirs.
  void reachWalls(ScanLine& line) const {
    const auto isAtWall = [&](double along) {
      const Vec2 p = line.offset * line.normal + along * line.along();
      return std::any_of(lines_.begin(), lines_.end(), [&](const ScanLine& other) {
        return std::abs(other.normal.dot(line.normal)) < 0.5 &&
               std::abs(other.distance(p)) < kOnLine + kPlace && isSeenAt(other, other.along().dot(p));
      });
    };
    if (isAtWall(line.seenFrom + kSeenStep * static_cast<double>(line.seen.size())))
      line.seen.push_back(line.seen.back());
    if (!isAtWall(line.seenFrom)) return;
    line.seen.insert(line.seen.begin(), line.seen.front());
    line.seenFrom -= kSeenStep;
  }

  const LevelScan& scan_;
  const std::vector<ScanLine>& lines_;
  std::vector<Place> places_;
};

}  // namespace

void addShortLines(const LevelScan& scan, std::vector<ScanLine>& lines, const Progress& progress) {
  for (ScanLine& line : Search(scan, lines).find(progress))
    if (lines.size() < kMostLines) lines.push_back(std::move(line));
}

}  // namespace baywright
