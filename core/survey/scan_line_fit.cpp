// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_line_fit.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <bit>
#include <cmath>

#include "survey/scan_cube_map.h"
#include "survey/scan_robust.h"

namespace baywright {
namespace {

constexpr double kGather = 0.10;  ///< metres either side that may belong to a wall
constexpr double kMadToSigma = 1.4826;  ///< of a normal distribution
constexpr double kLeastScale = 0.003;   ///< metres: a scan that seems better is not
constexpr double kMarkEdge = 0.10;      ///< cubes that say which samples are near a wall's patches
/// Walls are looked at between the skirting and the cornice.
constexpr double kLowest = 0.15;
constexpr double kBelowCeiling = 0.05;

double robustScale(const std::vector<WeightedPoint>& points, const ScanLine& line) {
  std::vector<double> distances;
  distances.reserve(points.size());
  for (const WeightedPoint& p : points) distances.push_back(std::abs(line.distance(p.place)));
  const auto middle = distances.begin() + static_cast<std::ptrdiff_t>(distances.size() / 2);
  std::nth_element(distances.begin(), middle, distances.end());
  return std::max(kLeastScale, kMadToSigma * *middle);
}

/// Which line a patch lies on: the nearest that it faces.
std::vector<std::uint32_t> linesOfPatches(const LevelScan& scan, const std::vector<ScanLine>& lines) {
  std::vector<std::uint32_t> lineOf(scan.flat.patches.size(), kNoPatch);
  for (std::size_t i = 0; i < lineOf.size(); ++i) {
    const ScanPatch& patch = scan.flat.patches[i];
    if (std::abs(patch.normal.z()) > 0.5) continue;
    double nearest = 0.07;
    for (std::size_t l = 0; l < lines.size(); ++l) {
      const double distance = std::abs(lines[l].distance(flat(patch.centre)));
      if (distance >= nearest || std::abs(flat(patch.normal).normalized().dot(lines[l].normal)) < 0.87)
        continue;
      nearest = distance;
      lineOf[i] = static_cast<std::uint32_t>(l);
    }
  }
  return lineOf;
}

/// Samples near each line's patches, on the plan and with their heights.
struct Gathered {
  std::vector<WeightedPoint> points;
  std::vector<float> heights;
  std::vector<bool> isShared;  ///< near the patches of another line, that is in a corner
  double pieces = 0;
  double area = 0;  ///< of the patches that lie nearer to this line than to others
};

/// Noise spills over into cubes that have no patch of their own, so the neighbours of a wall's cubes count
/// too.
std::vector<Gathered> gather(const LevelScan& scan, const std::vector<ScanLine>& lines,
                             const Progress& progress) {
  const auto lineOf = linesOfPatches(scan, lines);
  std::vector<Gathered> found(lines.size());
  CubeMap cubes;
  std::vector<std::uint64_t> marks;  // a bit a line
  std::vector<std::uint32_t> counts;
  for (std::size_t i = 0; i < scan.samples.size(); ++i) {
    if (i % kSamplesBetweenLooks == 0 && progress.stop()) return found;
    const std::uint32_t patch = scan.flat.patchOf[i];
    const std::uint32_t cube = cubes.indexOf(cubeAt(scan.samples[i], kMarkEdge));
    if (cube == marks.size()) marks.push_back(0);
    if (cube >= counts.size()) counts.resize(cube + 1, 0);
    ++counts[cube];
    if (patch != kNoPatch && lineOf[patch] != kNoPatch) marks[cube] |= 1ull << lineOf[patch];
  }
  std::vector<std::uint64_t> spread(marks);
  for (std::uint32_t c = 0; c < spread.size(); ++c) {
    if (marks[c] == 0) continue;
    const CubeMap::Cube at = cubes.cube(c);
    for (int dx = -1; dx <= 1; ++dx)
      for (int dy = -1; dy <= 1; ++dy)
        if (const auto next = cubes.existing({at.x() + dx, at.y() + dy, at.z()})) spread[*next] |= marks[c];
  }
  for (std::size_t i = 0; i < scan.samples.size(); ++i) {
    if (i % kSamplesBetweenLooks == 0 && progress.stop()) return found;
    const Eigen::Vector3f& p = scan.samples[i];
    const auto cube = *cubes.existing(cubeAt(p, kMarkEdge));
    for (std::uint64_t bits = spread[cube]; bits != 0; bits &= bits - 1) {
      const auto line = static_cast<std::size_t>(std::countr_zero(bits));
      const Vec2 place(p.x(), p.y());
      if (std::abs(lines[line].distance(place)) > kGather) continue;
      found[line].points.push_back({place, 1.0 / counts[cube]});
      found[line].heights.push_back(p.z());
      found[line].isShared.push_back(std::popcount(spread[cube]) > 1);
    }
  }
  for (std::size_t i = 0; i < scan.flat.patches.size(); ++i)
    if (lineOf[i] != kNoPatch) {
      found[lineOf[i]].pieces += 1;
      found[lineOf[i]].area += scan.flat.patches[i].size * scan.flat.patches[i].size;
    }
  return found;
}

ScanLine refined(const Gathered& gathered, ScanLine line, double ceiling) {
  std::vector<WeightedPoint> used;
  for (std::size_t i = 0; i < gathered.points.size(); ++i)
    // In a corner the other wall's points all lie on one side, and would turn this one.
    if (!gathered.isShared[i] && gathered.heights[i] > kLowest &&
        gathered.heights[i] < ceiling - kBelowCeiling)
      used.push_back(gathered.points[i]);
  if (used.size() < 10) used = gathered.points;
  if (used.size() < 3) return line;
  for (int round = 0; round < 8; ++round) {
    const double reach = std::min(kGather, kTukey * robustScale(used, line));
    line = fittedLine(used, line, reach);
  }
  line.pieces = gathered.pieces;
  line.own = gathered.area;
  return line;
}

void noteSeen(const Gathered& gathered, ScanLine& line, const LevelScan& scan) {
  if (gathered.points.empty()) return;
  const Vec2 along = line.along();
  double low = along.dot(gathered.points[0].place);
  double high = low;
  for (const WeightedPoint& p : gathered.points) {
    low = std::min(low, along.dot(p.place));
    high = std::max(high, along.dot(p.place));
  }
  line.seenFrom = low;
  line.seen.assign(static_cast<std::size_t>((high - low) / kSeenStep) + 1, 0);
  const double near = std::clamp(3 * line.rms, 0.03, kGather);
  std::vector<double> tops;
  for (std::size_t i = 0; i < line.seen.size(); ++i) {
    const double place = low + kSeenStep * (static_cast<double>(i) + 0.5);
    tops.push_back(std::max(0.5, scan.roof.topAt(line.offset * line.normal + place * along, scan.ceiling)));
  }
  for (std::size_t i = 0; i < gathered.points.size(); ++i) {
    const Vec2& p = gathered.points[i].place;
    if (std::abs(line.distance(p)) > near) continue;
    const auto step = static_cast<std::size_t>((along.dot(p) - low) / kSeenStep);
    const double share = static_cast<double>(gathered.heights[i]) / tops[step];
    if (share < 0) continue;
    const int band = std::min(kSeenBands - 1, static_cast<int>(share * kSeenBands));
    line.seen[step] |= 1u << band;
  }
}

}  // namespace

double ScanLine::fitSigma(double place) const {
  if (pieces < 3 || spread <= 0) return rms;
  const double off = (place - middle) / spread;
  return rms * std::sqrt((1 + off * off) / pieces);
}

ScanLine fittedLine(std::span<const WeightedPoint> points, const ScanLine& start, double reach) {
  double weights = 0;
  Vec2 mean = Vec2::Zero();
  Mat2 squares = Mat2::Zero();
  const Vec2 about = start.offset * start.normal;
  for (const WeightedPoint& p : points) {
    const double weight = p.weight * biweight(start.distance(p.place), reach);
    if (weight <= 0) continue;
    const Vec2 d = p.place - about;
    weights += weight;
    mean += weight * d;
    squares += weight * d * d.transpose();
  }
  if (weights <= 0) return start;
  mean /= weights;
  const Eigen::SelfAdjointEigenSolver<Mat2> solver(squares / weights - mean * mean.transpose());
  if (!(solver.eigenvalues()[1] > 0)) return start;
  ScanLine line = start;
  line.normal = solver.eigenvectors().col(0);
  if (line.normal.dot(start.normal) < 0) line.normal = -line.normal;
  line.offset = line.normal.dot(about + mean);
  line.rms = std::sqrt(std::max(0.0, solver.eigenvalues()[0]));
  line.middle = line.along().dot(about + mean);
  line.spread = std::sqrt(solver.eigenvalues()[1]);
  return line;
}

void refineOnPoints(const LevelScan& scan, std::vector<ScanLine>& lines, const Progress& progress) {
  const auto gathered = gather(scan, lines, progress);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (progress.stop()) return;
    lines[i] = refined(gathered[i], lines[i], scan.ceiling);
    noteSeen(gathered[i], lines[i], scan);
  }
}

}  // namespace baywright
