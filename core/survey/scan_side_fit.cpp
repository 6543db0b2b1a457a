// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_side_fit.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "survey/scan_robust.h"

namespace baywright {
namespace {

constexpr double kDepthReach = 0.15;   ///< metres either side of a side in which samples are looked at
constexpr double kDepthBin = 0.0025;   ///< metres: well below the noise of any scan
constexpr std::size_t kDepths = 120;   ///< 2 * kDepthReach / kDepthBin
constexpr double kSquareAlong = 0.10;  ///< metres
constexpr double kSquareUp = 0.20;     ///< metres
constexpr double kFromCorner = 0.08;   ///< metres: nearer, the neighbour's samples mix in
constexpr double kLowest = 0.15;       ///< metres: above the skirting,
constexpr double kBelowCeiling = 0.05;
constexpr double kOverhead = 1.9;  ///< metres: higher than most furniture (common practice, no source)
constexpr float kFewestInSquare = 3;
constexpr double kFewestSquares = 12;
constexpr double kLeastLength = 0.60;   ///< metres: a shorter side has no direction of its own
constexpr double kMostShift = 0.07;     ///< metres that the middle of a side may move
constexpr double kMostTurn = 0.08;      ///< radians, 4.6 degrees
constexpr int kTurns = 48;              ///< steps either way
constexpr double kLeastKernel = 0.012;  ///< metres: plaster is not flat
/// The scatter of normal errors over that of the same errors with the biweight at kTukey (by integration).
constexpr double kUnweighted = 1.099;
constexpr double kLeastScale = 0.003;  ///< likewise

/// A square of a side: how many samples lie at each depth.
struct WallSquare {
  std::array<float, kDepths> counts{};
  float all = 0;
};

/// A side of the outline cut into squares; places along it count from its middle.
class SideSquares {
 public:
  SideSquares(const ScanLine& line, const Vec2& a, const Vec2& b, double ceiling)
      : line_(line),
        top_(ceiling - kBelowCeiling),
        half_(0.5 * (b - a).norm() - kFromCorner),
        middle_(line.along().dot(0.5 * (a + b))) {
    if (2 * half_ < kSquareAlong) return;
    columns_ = static_cast<int>(std::ceil(2 * half_ / kSquareAlong));
    rows_ = std::max(1, static_cast<int>(std::ceil((top_ - kLowest) / kSquareUp)));
    squares_.resize(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_));
  }

  void take(const Eigen::Vector3f& sample) {
    const Vec2 p(sample.x(), sample.y());
    const double depth = line_.distance(p);
    if (squares_.empty() || std::abs(depth) >= kDepthReach) return;
    const double z = static_cast<double>(sample.z());
    const double along = line_.along().dot(p) - middle_;
    if (z < kLowest || z >= top_ || std::abs(along) >= half_) return;
    const auto column = static_cast<std::size_t>((along + half_) / kSquareAlong);
    const auto row = static_cast<std::size_t>((z - kLowest) / kSquareUp);
    WallSquare& square =
        squares_[std::min(row, rowCount() - 1) * columnCount() + std::min(column, columnCount() - 1)];
    // Shared out between two bins: the mean is not rounded.
    const double bin = std::clamp((depth + kDepthReach) / kDepthBin - 0.5, 0.0, kDepths - 1.001);
    const auto first = static_cast<std::size_t>(bin);
    const auto second = static_cast<float>(bin - static_cast<double>(first));
    square.counts[first] += 1 - second;
    square.counts[first + 1] += second;
    square.all += 1;
  }

  /// The line anew; as it was where too little was seen. `noise` is the scatter about walls, metres.
  ScanLine settled(double noise) const {
    double seen = 0;
    for (const WallSquare& square : squares_) seen += square.all >= kFewestInSquare ? 1 : 0;
    if (seen < kFewestSquares) return line_;
    Fit fit = most(std::max(kLeastKernel, 2 * noise));
    fit.rms = noise;
    for (int round = 0; round < 8; ++round)
      if (!refine(fit)) return line_;
    if (std::abs(fit.shift) > kMostShift || std::abs(fit.turn) > kMostTurn) return line_;
    return turned(fit);
  }

 private:
  /// depth = shift + turn * along
  struct Fit {
    double shift = 0;
    double turn = 0;
    double rms = 0.01;
    double squares = 0;
    double mean = 0;
    double spread = 0;
  };

  std::size_t columnCount() const { return static_cast<std::size_t>(columns_); }
  std::size_t rowCount() const { return static_cast<std::size_t>(rows_); }
  static double depthOf(std::size_t bin) {
    return (static_cast<double>(bin) + 0.5) * kDepthBin - kDepthReach;
  }
  double alongOf(std::size_t column) const {
    return (static_cast<double>(column) + 0.5) * kSquareAlong - half_;
  }

  static double sayOf(const WallSquare& square, std::size_t row) {
    if (square.all < kFewestInSquare) return 0;
    return kLowest + (static_cast<double>(row) + 0.5) * kSquareUp > kOverhead ? 2 : 1;
  }

  /// For each column, the say of its squares at each depth, blurred by the kernel.
  std::vector<std::array<double, kDepths>> blurred(double kernel) const {
    const int reach = static_cast<int>(kernel / kDepthBin);
    std::vector<double> weights;
    for (int i = -reach; i <= reach; ++i) weights.push_back(biweight(i * kDepthBin, kernel));
    std::vector<std::array<double, kDepths>> columns(columnCount());
    for (std::size_t column = 0; column < columnCount(); ++column) {
      std::array<double, kDepths> sharp{};
      for (std::size_t row = 0; row < rowCount(); ++row) {
        const WallSquare& square = squares_[row * columnCount() + column];
        const double say = sayOf(square, row);
        if (say == 0) continue;
        for (std::size_t d = 0; d < kDepths; ++d)
          sharp[d] += say * static_cast<double>(square.counts[d] / square.all);
      }
      columns[column].fill(0);
      for (int d = 0; d < static_cast<int>(kDepths); ++d) {
        const double say = sharp[static_cast<std::size_t>(d)];
        if (say == 0) continue;
        for (int i = -reach; i <= reach; ++i)
          if (d + i >= 0 && d + i < static_cast<int>(kDepths))
            columns[column][static_cast<std::size_t>(d + i)] +=
                say * weights[static_cast<std::size_t>(i + reach)];
      }
    }
    return columns;
  }

  /// Where most squares agree.
  Fit most(double kernel) const {
    const auto columns = blurred(kernel);
    const int turns = 2 * half_ < kLeastLength ? 0 : kTurns;
    Fit best;
    double highest = -1;
    for (int t = -turns; t <= turns; ++t)
      for (double shift = -kMostShift; shift <= kMostShift; shift += 2 * kDepthBin) {
        const double turn = kMostTurn * t / kTurns;
        double value = 0;
        for (std::size_t column = 0; column < columnCount(); ++column) {
          const double bin = (shift + turn * alongOf(column) + kDepthReach) / kDepthBin;
          if (bin >= 0 && bin < static_cast<double>(kDepths))
            value += columns[column][static_cast<std::size_t>(bin)];
        }
        if (value <= highest) continue;
        highest = value;
        best.shift = shift;
        best.turn = turn;
      }
    return best;
  }

  /// One round of reweighted least squares.
  bool refine(Fit& fit) const {
    const double reach = std::clamp(kTukey * fit.rms, kTukey * kLeastScale, kDepthReach / 2);
    double w = 0, wt = 0, wtt = 0, wd = 0, wtd = 0, wdd = 0;
    double squares = 0;
    for (std::size_t row = 0; row < rowCount(); ++row)
      for (std::size_t column = 0; column < columnCount(); ++column) {
        const WallSquare& square = squares_[row * columnCount() + column];
        const double say = sayOf(square, row);
        if (say == 0) continue;
        const double along = alongOf(column);
        double share = 0;
        for (std::size_t d = 0; d < kDepths; ++d) {
          if (square.counts[d] == 0) continue;
          const double residual = depthOf(d) - fit.shift - fit.turn * along;
          const double part = biweight(residual, reach) * static_cast<double>(square.counts[d] / square.all);
          const double weight = say * part;
          w += weight;
          wt += weight * along;
          wtt += weight * along * along;
          wd += weight * depthOf(d);
          wtd += weight * along * depthOf(d);
          wdd += weight * residual * residual;
          share += part;
        }
        squares += share;
      }
    if (w <= 0 || squares < kFewestSquares / 2) return false;
    const double det = w * wtt - wt * wt;
    if (2 * half_ < kLeastLength || det < 1e-6 * w * w) {
      fit.turn = 0;
      fit.shift = wd / w;
    } else {
      fit.turn = (w * wtd - wt * wd) / det;
      fit.shift = (wtt * wd - wt * wtd) / det;
    }
    fit.rms = kUnweighted * std::sqrt(wdd / w);
    fit.squares = squares;
    fit.mean = wt / w;
    fit.spread = std::sqrt(std::max(0.0, wtt / w - fit.mean * fit.mean));
    return true;
  }

  ScanLine turned(const Fit& fit) const {
    ScanLine line = line_;
    const Vec2 about = line_.offset * line_.normal + middle_ * line_.along() + fit.shift * line_.normal;
    line.normal = (line_.normal - fit.turn * line_.along()).normalized();
    line.offset = line.normal.dot(about);
    line.rms = fit.rms;
    line.pieces = fit.squares;
    line.middle = line.along().dot(about) + fit.mean;
    line.spread = fit.spread;
    return line;
  }

  ScanLine line_;
  double top_ = 0;
  double half_ = 0;
  double middle_ = 0;
  int columns_ = 0;
  int rows_ = 0;
  std::vector<WallSquare> squares_;
};

/// Corners where the sides cross; false where one would be nowhere in particular or far from where it was.
bool moveCorners(ScanOutline& outline) {
  constexpr double kMostMoved = 0.25;  // metres
  const std::size_t n = outline.sides.size();
  Ring corners;
  for (std::size_t i = 0; i < n; ++i) {
    corners.push_back(crossingOf(outline.sides[(i + n - 1) % n], outline.sides[i]));
    if (!((corners[i] - outline.corners[i]).norm() < kMostMoved)) return false;
  }
  outline.corners = std::move(corners);
  return true;
}

/// That of the sides which nothing beside them spreads: a quarter of them scatter less.
double leastScatter(const std::vector<ScanLine>& sides) {
  std::vector<double> scatters;
  for (const ScanLine& side : sides) scatters.push_back(side.rms);
  std::sort(scatters.begin(), scatters.end());
  return std::max(kLeastScale, scatters[scatters.size() / 4]);
}

}  // namespace

void settleSides(const LevelScan& scan, ScanOutline& outline, const Progress& progress) {
  const std::size_t n = outline.sides.size();
  std::vector<SideSquares> sides;
  for (std::size_t i = 0; i < n; ++i)
    sides.emplace_back(outline.sides[i], outline.corners[i], outline.corners[(i + 1) % n], scan.ceiling);
  for (std::size_t s = 0; s < scan.samples.size(); ++s) {
    if (s % kSamplesBetweenLooks == 0 && progress.stop()) return;
    for (SideSquares& side : sides) side.take(scan.samples[s]);
  }
  const std::vector<ScanLine> asFound = outline.sides;
  const double noise = leastScatter(asFound);
  for (std::size_t i = 0; i < n; ++i) outline.sides[i] = sides[i].settled(noise);
  if (!moveCorners(outline)) outline.sides = asFound;
}

}  // namespace baywright
