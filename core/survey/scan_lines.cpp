// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_lines.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "survey/scan_hidden_lines.h"
#include "survey/scan_line_fit.h"
#include "survey/scan_short_lines.h"

namespace baywright {
namespace {

constexpr double kUpright = 0.34;  ///< sine of what a patch of a plumb wall may lean by noise
constexpr int kAngles = 180;       ///< bins of a degree
constexpr int kAngleReach = 10;    ///< bins either side that a patch votes for: its normal is that uncertain
constexpr double kOffsetBin = 0.04;  ///< metres
constexpr double kLeastArea = 0.30;  ///< square metres of surface for a line
constexpr double kFewestPieces = 8;
constexpr double kScattered = 1.25;      ///< times the usual scatter of walls,
constexpr double kScatterSlack = 0.005;  ///< and metres more: walls bow
constexpr double kLittle = 1.0;          ///< square metres: a surface that may bow half as much
constexpr double kLeastOwn = 0.35;       ///< share of its surface that lies nearest to it
constexpr double kSureArea = 4.0;        ///< square metres that are a wall however they scatter
constexpr double kFarthest = 40;         ///< metres from the middle

double areaOf(const ScanPatch& patch) {
  return patch.size * patch.size;
}

/// An upright patch on the plan.
struct PlanPatch {
  Vec2 place = Vec2::Zero();
  Vec2 normal{1, 0};
  double area = 0;
};

std::vector<PlanPatch> uprightPatches(const LevelScan& scan) {
  std::vector<PlanPatch> upright;
  for (const ScanPatch& patch : scan.flat.patches) {
    if (std::abs(patch.normal.z()) > kUpright || patch.centre.z() < 0.05) continue;
    if (flat(patch.centre).norm() > kFarthest || !scan.roof.isNear(flat(patch.centre), 0)) continue;
    upright.push_back({flat(patch.centre), flat(patch.normal).normalized(), areaOf(patch)});
  }
  return upright;
}

/// Votes of patches for lines through them.
class Votes {
 public:
  explicit Votes(double reach)
      : rows_(2 * static_cast<int>(std::ceil(reach / kOffsetBin)) + 3),
        bins_(static_cast<std::size_t>(kAngles * rows_)) {
    for (int a = 0; a < kAngles; ++a)
      directions_.push_back({std::cos(a * kPi / kAngles), std::sin(a * kPi / kAngles)});
  }

  void vote(const PlanPatch& patch, double sign) {
    const double angle = std::atan2(patch.normal.y(), patch.normal.x());
    const int middle = static_cast<int>(std::lround(angle * kAngles / kPi));
    for (int step = -kAngleReach; step <= kAngleReach; ++step) {
      const int a = ((middle + step) % kAngles + kAngles) % kAngles;
      const double share = 1 - std::abs(step) / (kAngleReach + 1.0);
      bin(a, rowOf(directions_[static_cast<std::size_t>(a)].dot(patch.place))) += sign * share * patch.area;
    }
  }

  /// The line with most votes in two neighbouring rows.
  ScanLine best() const {
    double most = -1;
    ScanLine line;
    for (int a = 0; a < kAngles; ++a)
      for (int row = 0; row + 1 < rows_; ++row) {
        const double votes = bin(a, row) + bin(a, row + 1);
        if (votes <= most) continue;
        most = votes;
        line.normal = directions_[static_cast<std::size_t>(a)];
        line.offset = (row + 1 - rows_ / 2) * kOffsetBin;
      }
    line.area = most;
    return line;
  }

 private:
  int rowOf(double offset) const {
    return std::clamp(static_cast<int>(std::floor(offset / kOffsetBin)) + rows_ / 2, 0, rows_ - 1);
  }
  double& bin(int a, int row) { return bins_[static_cast<std::size_t>(a * rows_ + row)]; }
  double bin(int a, int row) const { return bins_[static_cast<std::size_t>(a * rows_ + row)]; }

  int rows_;
  std::vector<double> bins_;
  std::vector<Vec2> directions_;
};

bool isOn(const PlanPatch& patch, const ScanLine& line) {
  constexpr double kNear = 0.06;
  constexpr double kTurned = 0.87;  // cosine of 30 degrees: normals of patches at corners and on reveals
  return std::abs(line.distance(patch.place)) < kNear && std::abs(patch.normal.dot(line.normal)) > kTurned;
}

/// The vote's line, drawn through the patches near it.
ScanLine throughPatches(ScanLine line, const std::vector<PlanPatch>& patches) {
  for (const double reach : {0.14, 0.10, 0.08, 0.06, 0.06}) {
    std::vector<WeightedPoint> near;
    for (const PlanPatch& patch : patches)
      if (std::abs(patch.normal.dot(line.normal)) > 0.94 && std::abs(line.distance(patch.place)) < reach)
        near.push_back({patch.place, patch.area});
    if (near.size() < 3) break;
    line = fittedLine(near, line, reach);
  }
  return line;
}

double areaOn(const ScanLine& line, const std::vector<PlanPatch>& patches) {
  double area = 0;
  for (const PlanPatch& patch : patches)
    if (isOn(patch, line)) area += patch.area;
  return area;
}

std::vector<ScanLine> votedLines(std::vector<PlanPatch> patches, const Progress& progress) {
  double reach = 0;
  for (const PlanPatch& patch : patches) reach = std::max(reach, patch.place.norm());
  Votes votes(reach + 1);
  for (const PlanPatch& patch : patches) votes.vote(patch, 1);
  std::vector<ScanLine> lines;
  while (lines.size() < kMostLines && !progress.stop()) {
    ScanLine line = votes.best();
    if (line.area < 0.3 * kLeastArea) break;
    line = throughPatches(line, patches);
    line.area = areaOn(line, patches);
    std::vector<PlanPatch> rest;
    for (const PlanPatch& patch : patches) {
      if (isOn(patch, line))
        votes.vote(patch, -1);
      else
        rest.push_back(patch);
    }
    if (rest.size() == patches.size()) break;  // the vote was scattered: nothing lies on its line
    patches = std::move(rest);
    if (line.area >= kLeastArea) lines.push_back(line);
  }
  std::stable_sort(lines.begin(), lines.end(),
                   [](const ScanLine& a, const ScanLine& b) { return a.area > b.area; });
  return lines;
}

/// What scatters more about its line than walls do, is fixed by few pieces, or shares most of them with other
/// lines, is an edge between surfaces or
/// a heap of things.
void dropScattered(std::vector<ScanLine>& lines) {
  double all = 0;
  for (const ScanLine& line : lines) all += line.area;
  std::vector<std::pair<double, double>> scatters;
  for (const ScanLine& line : lines) scatters.emplace_back(line.rms, line.area);
  std::sort(scatters.begin(), scatters.end());
  double usual = 0;
  double below = 0;
  for (const auto& [rms, area] : scatters) {
    usual = rms;
    below += area;
    if (below > 0.5 * all) break;
  }
  std::erase_if(lines, [&](const ScanLine& line) {
    const double slack = line.area < kLittle ? 0.5 * kScatterSlack : kScatterSlack;
    if (line.area < kSureArea && line.own < kLeastOwn * line.area) return true;
    return line.pieces < kFewestPieces || (line.area < kSureArea && line.rms > kScattered * usual + slack);
  });
}

}  // namespace

Vec2 crossingOf(const ScanLine& a, const ScanLine& b) {
  const double det = cross(a.normal, b.normal);
  return {(a.offset * b.normal.y() - b.offset * a.normal.y()) / det,
          (a.normal.x() * b.offset - b.normal.x() * a.offset) / det};
}

LevelScan levelled(LevelScan scan, const ScanLevel& level) {
  const Vec3 down(0, 0, -level.floor);
  scan.fromUpright = level.levelFromScan * scan.fromUpright;
  scan.shift = level.levelFromScan * scan.shift + down;
  for (Eigen::Vector3f& p : scan.samples) p = (level.levelFromScan * p.cast<double>() + down).cast<float>();
  std::map<long, double> heights;
  for (ScanPatch& patch : scan.flat.patches) {
    patch.centre = level.levelFromScan * patch.centre + down;
    patch.normal = level.levelFromScan * patch.normal;
    constexpr double kSteepest = 0.64;  // 50 degrees
    constexpr double kLowest = 1.5;
    if (std::abs(patch.normal.z()) > kSteepest && patch.centre.z() > kLowest)
      heights[std::lround(patch.centre.z() / 0.1)] += areaOf(patch);
  }
  double all = 0;
  for (const auto& [bin, area] : heights) all += area;
  double above = 0;
  scan.ceiling = 2.4;  // where none was scanned
  // What is seen through a skylight is little.
  for (auto bin = heights.rbegin(); bin != heights.rend() && above < 0.05 * all; ++bin) {
    above += bin->second;
    scan.ceiling = 0.1 * static_cast<double>(bin->first);
  }
  scan.roof = RoofMap(scan.flat.patches);
  return scan;
}

std::vector<ScanLine> uprightLines(const LevelScan& scan, const Progress& progress) {
  auto lines = votedLines(uprightPatches(scan), progress);
  refineOnPoints(scan, lines, progress);
  dropScattered(lines);
  addShortLines(scan, lines, progress);
  addHiddenLines(scan, lines, progress);
  return lines;
}

}  // namespace baywright
