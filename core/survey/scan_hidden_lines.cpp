// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_hidden_lines.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <optional>

namespace baywright {
namespace {

constexpr double kLeastArea = 0.6;    ///< square metres of a line whose ends count
constexpr int kTall = 5;              ///< bands of kSeenBands over a place that make it wall
constexpr long kLeastRun = 3;         ///< steps of kSeenStep
constexpr long kClosed = 2;           ///< steps without samples that part no run
constexpr double kParallel = 0.9986;  ///< cosine of 3 degrees
constexpr double kCrossing = 0.5;     ///< cosine of 60 degrees: what is steeper ends a wall
constexpr double kLeastJog = 0.12;    ///< metres between parallel walls
constexpr double kMostJog = 1.20;
constexpr double kShadow = 0.80;  ///< metres from the end of one to where the other is seen
constexpr double kAtEnd = 0.12;   ///< metres from an end to a line that is its corner
constexpr std::size_t kMostEnds = 14;
constexpr double kEndBin = 0.01;  ///< metres
constexpr int kBins = 100;        ///< half before the end, half behind
constexpr double kNear = 0.04;    ///< metres from a line: its own samples
constexpr double kLowest = 0.15;  ///< metres

bool isTall(std::uint32_t bands) {
  return std::popcount(bands) >= kTall || std::popcount(bands & kTopBands) == 2;
}

/// Where a wall ends: place along its line, and which way it goes on there (-1 or 1).
struct WallEnd {
  std::size_t line = 0;
  double at = 0;
  double outward = 1;
  double jog = 0;                      ///< to the parallel wall, along the line's normal
  std::array<double, kBins> counts{};  ///< samples from half a metre inside to as far outside
};

struct Run {
  long first = 0;
  long last = 0;
};

std::vector<Run> runsOf(const ScanLine& line) {
  std::vector<Run> runs;
  for (long i = 0; i < static_cast<long>(line.seen.size()); ++i) {
    if (!isTall(line.seen[static_cast<std::size_t>(i)])) continue;
    if (!runs.empty() && i - runs.back().last <= kClosed + 1)
      runs.back().last = i;
    else
      runs.push_back({i, i});
  }
  std::erase_if(runs, [](const Run& run) { return run.last - run.first + 1 < kLeastRun; });
  return runs;
}

class Search {
 public:
  Search(const LevelScan& scan, const std::vector<ScanLine>& lines) : scan_(scan), lines_(lines) {}

  std::vector<ScanLine> find(const Progress& progress) {
    for (std::size_t l = 0; l < lines_.size(); ++l) {
      if (lines_[l].area < kLeastArea) continue;
      for (const Run& run : runsOf(lines_[l])) {
        addEnd({l, lines_[l].seenFrom + kSeenStep * static_cast<double>(run.first), -1, 0, {}});
        addEnd({l, lines_[l].seenFrom + kSeenStep * static_cast<double>(run.last + 1), 1, 0, {}});
      }
    }
    if (ends_.size() > kMostEnds) ends_.resize(kMostEnds);
    count(progress);
    std::vector<ScanLine> found;
    for (const WallEnd& end : ends_)
      if (const auto line = lineAt(end); line && !isKnown(*line, end, found)) found.push_back(*line);
    return found;
  }

 private:
  Vec2 placeOf(const ScanLine& line, double along) const {
    return line.offset * line.normal + along * line.along();
  }

  /// Keeps the end of a wall that has no corner there and a parallel wall to go to.
  void addEnd(WallEnd end) {
    const ScanLine& line = lines_[end.line];
    const Vec2 place = placeOf(line, end.at);
    for (const ScanLine& other : lines_)
      if (std::abs(other.normal.dot(line.normal)) < kCrossing && std::abs(other.distance(place)) < kAtEnd &&
          isSeenNear(other, other.along().dot(place), kMostJog))
        return;
    for (const ScanLine& other : lines_) {
      if (std::abs(other.normal.dot(line.normal)) < kParallel || other.area < kLeastArea) continue;
      end.jog = -other.distance(place) * (other.normal.dot(line.normal) < 0 ? -1 : 1);
      if (std::abs(end.jog) < kLeastJog || std::abs(end.jog) > kMostJog) continue;
      const Vec2 beyond = placeOf(line, end.at + 0.5 * end.outward * kShadow);
      if (!isSeenNear(other, other.along().dot(beyond), 0.5 * kShadow)) continue;
      ends_.push_back(end);
      return;
    }
  }

  static bool isSeenNear(const ScanLine& line, double along, double reach) {
    const auto step = [&](double place) {
      return static_cast<long>(std::floor((place - line.seenFrom) / kSeenStep));
    };
    const long first = std::max(0l, step(along - reach));
    const long last = std::min(static_cast<long>(line.seen.size()) - 1, step(along + reach));
    for (long i = first; i <= last; ++i)
      if (isTall(line.seen[static_cast<std::size_t>(i)])) return true;
    return false;
  }

  void count(const Progress& progress) {
    if (ends_.empty()) return;
    for (std::size_t i = 0; i < scan_.samples.size(); ++i) {
      if (i % kSamplesBetweenLooks == 0 && progress.stop()) return;
      const Eigen::Vector3f& sample = scan_.samples[i];
      if (static_cast<double>(sample.z()) < kLowest) continue;
      const Vec2 p(sample.x(), sample.y());
      for (WallEnd& end : ends_) {
        const ScanLine& line = lines_[end.line];
        if (std::abs(line.distance(p)) > kNear) continue;
        const double bin = end.outward * (line.along().dot(p) - end.at) / kEndBin + kBins / 2;
        if (bin >= 0 && bin < kBins) end.counts[static_cast<std::size_t>(bin)] += 1;
      }
    }
  }

  static double countBetween(const WallEnd& end, double from, double to) {
    double sum = 0;
    for (int i = 0; i < kBins; ++i) {
      const double low = kEndBin * (i - kBins / 2);
      const double part = (std::min(to, low + kEndBin) - std::max(from, low)) / kEndBin;
      if (part > 0) sum += part * end.counts[static_cast<std::size_t>(i)];
    }
    return sum;
  }

  /// How far behind the first guess the samples end: as many lie about the end as the wall has close before
  /// it.
  static std::optional<double> endOf(const WallEnd& end) {
    constexpr double kBefore = 0.16;  // metres before the end, where the wall is whole
    constexpr double kAbout = 0.05;
    constexpr double kFewest = 20;
    double place = 0;
    for (int round = 0; round < 12; ++round) {
      const double density = countBetween(end, place - kBefore, place - kAbout) / (kBefore - kAbout);
      if (density * (kBefore - kAbout) < kFewest) return std::nullopt;
      place += countBetween(end, place - kAbout, place + 2 * kAbout) / density - kAbout;
      if (std::abs(place) > 0.2) return std::nullopt;  // it does not end here
    }
    return place;
  }

  /// Square to the wall where its samples end.
  std::optional<ScanLine> lineAt(const WallEnd& end) const {
    const auto behind = endOf(end);
    if (!behind) return std::nullopt;
    const ScanLine& wall = lines_[end.line];
    ScanLine line;
    line.normal = wall.along();
    line.offset = end.at + end.outward * *behind;
    line.rms = wall.rms;
    line.pieces = 1;
    // From the wall's end to the other wall.
    const Vec2 corner = placeOf(wall, line.offset);
    const double from = line.along().dot(corner);
    const double to = line.along().dot(Vec2(corner + end.jog * wall.normal));
    line.middle = 0.5 * (from + to);
    line.seenFrom = std::min(from, to);
    line.seen.assign(static_cast<std::size_t>(std::abs(to - from) / kSeenStep) + 1, 0);
    return line;
  }

  bool isKnown(const ScanLine& line, const WallEnd& end, const std::vector<ScanLine>& found) const {
    const Vec2 place = placeOf(lines_[end.line], line.offset);
    const auto isSame = [&](const ScanLine& other) {
      return std::abs(other.normal.dot(line.normal)) > kParallel &&
             std::abs(other.distance(place)) < 0.5 * kAtEnd;
    };
    return std::any_of(lines_.begin(), lines_.end(), isSame) ||
           std::any_of(found.begin(), found.end(), isSame);
  }

  const LevelScan& scan_;
  const std::vector<ScanLine>& lines_;
  std::vector<WallEnd> ends_;
};

}  // namespace

void addHiddenLines(const LevelScan& scan, std::vector<ScanLine>& lines, const Progress& progress) {
  for (ScanLine& line : Search(scan, lines).find(progress))
    if (lines.size() < kMostLines) lines.push_back(std::move(line));
}

}  // namespace baywright
