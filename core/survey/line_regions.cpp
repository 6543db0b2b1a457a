// SPDX-License-Identifier: Apache-2.0
#include "survey/line_regions.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace baywright::detail {

namespace {

// The paper's tolerance; chance then gives a pixel the right direction one time in eight.
constexpr double kTolerance = 22.5 * kPi / 180;
constexpr double kChance = 1.0 / 8;
// How far from an edge its gradients reach.
constexpr double kBand = 2.0;

bool agrees(const Vec2& gradient, const Vec2& normal, double cosine) {
  return gradient.dot(normal) >= cosine * gradient.norm();
}

/// Sums over pixels, weighted by the strength of their gradients.
struct Moments {
  double weight = 0;
  Vec2 first = Vec2::Zero();
  Mat2 second = Mat2::Zero();

  void add(const Vec2& place, double w) {
    weight += w;
    first += w * place;
    second += w * place * place.transpose();
  }
  Vec2 mean() const { return first / weight; }
  /// Direction of largest spread.
  Vec2 along() const {
    const Mat2 spread = second / weight - mean() * mean().transpose();
    const double angle = 0.5 * std::atan2(2 * spread(0, 1), spread(0, 0) - spread(1, 1));
    return {std::cos(angle), std::sin(angle)};
  }
};

/// Pixels that hang together and have like gradients.
struct Region {
  std::vector<std::size_t> pixels;
  Vec2 normal{0, 1};
};

class RegionGrower {
 public:
  explicit RegionGrower(const GradientField& field) : field_(field), used_(field.gx.size(), false) {}

  bool isFree(std::size_t i) const { return !used_[i]; }

  Region grow(std::size_t seed) {
    Region region{{seed}, field_.at(seed).normalized()};
    used_[seed] = true;
    Vec2 sum = region.normal;
    const double cosine = std::cos(kTolerance);
    const auto w = static_cast<std::size_t>(field_.width);
    for (std::size_t n = 0; n < region.pixels.size(); ++n) {
      const std::size_t i = region.pixels[n];
      // The outermost pixels have no gradient, so neighbours are always within the picture.
      for (const std::size_t j : {i - w - 1, i - w, i - w + 1, i - 1, i + 1, i + w - 1, i + w, i + w + 1}) {
        if (used_[j]) continue;
        const Vec2 gradient = field_.at(j);
        const double size = gradient.norm();
        if (size < field_.least || gradient.dot(region.normal) < cosine * size) continue;
        used_[j] = true;
        region.pixels.push_back(j);
        sum += gradient / size;
        region.normal = sum.normalized();
      }
    }
    return region;
  }

 private:
  const GradientField& field_;
  std::vector<bool> used_;
};

// Strongest first; a counting sort, as the order within a class does not matter but must be the same always.
std::vector<std::size_t> seedsOf(const GradientField& field) {
  constexpr std::size_t kClasses = 256;
  std::vector<std::vector<std::size_t>> classes(kClasses);
  for (std::size_t i = 0; i < field.gx.size(); ++i) {
    const double size = field.at(i).norm();
    if (size >= field.least) classes[std::min(kClasses - 1, static_cast<std::size_t>(2 * size))].push_back(i);
  }
  std::vector<std::size_t> seeds;
  for (std::size_t c = kClasses; c-- > 0;) seeds.insert(seeds.end(), classes[c].begin(), classes[c].end());
  return seeds;
}

EdgeLine edgeOf(const GradientField& field, const Region& region) {
  Moments moments;
  for (const std::size_t i : region.pixels) moments.add(field.place(i), field.at(i).norm());
  const Vec2 middle = moments.mean();
  const Vec2 along = moments.along();
  double low = 0, high = 0;
  for (const std::size_t i : region.pixels) {
    const double t = along.dot(field.place(i) - middle);
    low = std::min(low, t);
    high = std::max(high, t);
  }
  EdgeLine edge;
  edge.segment = {middle + low * along, middle + high * along};
  edge.normal = leftOf(along).dot(region.normal) < 0 ? Vec2(-leftOf(along)) : leftOf(along);
  edge.support = static_cast<double>(region.pixels.size());
  edge.filled = 1;
  return edge;
}

// Chernoff's bound for k of n pixels agreeing by chance, times the number of rectangles in the picture.
bool isMeaningful(const EdgeLine& edge, double spread, const GradientField& field) {
  const double width = std::max(2.0, spread);
  const double n = std::max(edge.support, edge.length() * width);
  const double share = std::min(edge.support / n, 1 - 1e-9);
  if (share <= kChance) return false;
  const double divergence =
      share * std::log(share / kChance) + (1 - share) * std::log((1 - share) / (1 - kChance));
  const double tests = 2.5 * std::log(static_cast<double>(field.width) * field.height);
  return n * divergence > tests;
}

/// Where gradients along an edge's line agree with it.
struct Along {
  Moments moments;
  std::vector<bool> bins;  // one a pixel of length
  double start = 0;        // of the first bin, from the segment's start
  double support = 0;
};

Along gather(const GradientField& field, const EdgeLine& edge, double beyond, double cosine) {
  const Vec2 along = edge.along();
  const Vec2 across = leftOf(along);
  const bool level = std::abs(along.x()) >= std::abs(along.y());
  Along result;
  result.start = -beyond;
  result.bins.assign(static_cast<std::size_t>(std::ceil(edge.length() + 2 * beyond)) + 1, false);
  const Vec2 from = edge.segment.a - beyond * along;
  const Vec2 to = edge.segment.b + beyond * along;
  const int axis = level ? 0 : 1;
  const int first = static_cast<int>(std::floor(std::min(from[axis], to[axis]))) - 1;
  const int last = static_cast<int>(std::ceil(std::max(from[axis], to[axis])));
  const double slope = along[1 - axis] / along[axis];
  const double reach = kBand / std::abs(along[axis]) + 1;
  for (int u = std::max(1, first); u <= std::min((level ? field.width : field.height) - 2, last); ++u) {
    const double centre = from[1 - axis] + slope * (u + 0.5 - from[axis]);
    const int high =
        std::min((level ? field.height : field.width) - 2, static_cast<int>(std::floor(centre + reach)));
    for (int v = std::max(1, static_cast<int>(std::floor(centre - reach))); v <= high; ++v) {
      const std::size_t i = level ? field.index(u, v) : field.index(v, u);
      const Vec2 offset = field.place(i) - edge.segment.a;
      const double t = along.dot(offset);
      if (std::abs(across.dot(offset)) > kBand || t < -beyond || t > edge.length() + beyond) continue;
      const Vec2 gradient = field.at(i);
      if (gradient.norm() < field.least || !agrees(gradient, edge.normal, cosine)) continue;
      result.moments.add(field.place(i), gradient.norm());
      result.bins[static_cast<std::size_t>(t + beyond)] = true;
      ++result.support;
    }
  }
  return result;
}

// The first bin from which on most are set: one alone is noise.
template <class Iterator>
Iterator steadyStart(Iterator begin, Iterator end) {
  constexpr std::ptrdiff_t kWindow = 5;
  constexpr std::ptrdiff_t kMost = 4;
  for (Iterator at = begin; end - at >= kWindow; ++at)
    if (*at && std::count(at, at + kWindow, true) >= kMost) return at;
  return end;
}

// Fits the line to all gradients beside it, lengthens it as far as they go on and cuts it where they end.
std::optional<EdgeLine> refitted(const GradientField& field, EdgeLine edge) {
  constexpr int kRounds = 3;
  constexpr double kBeyond = 4;
  for (int round = 0; round < kRounds; ++round) {
    const Along found = gather(field, edge, kBeyond, std::cos(kTolerance));
    if (found.support < 8) return std::nullopt;
    Vec2 along = found.moments.along();
    if (along.dot(edge.along()) < 0) along = -along;
    const auto first = steadyStart(found.bins.begin(), found.bins.end());
    const auto last = steadyStart(found.bins.rbegin(), found.bins.rend());
    const double low = found.start + static_cast<double>(first - found.bins.begin());
    const double high = found.start + static_cast<double>(found.bins.rend() - last);
    if (high <= low) return std::nullopt;
    const Vec2 middle = found.moments.mean();
    const double offset = edge.along().dot(middle - edge.segment.a);
    edge.segment = {middle + (low - offset) * along, middle + (high - offset) * along};
    edge.normal = leftOf(along).dot(edge.normal) < 0 ? Vec2(-leftOf(along)) : leftOf(along);
    edge.support = found.support;
    edge.filled = static_cast<double>(std::count(found.bins.begin(), found.bins.end(), true)) /
                  std::max(1.0, high - low);
  }
  return edge;
}

// Across the longer line, both ends of the shorter one lie near it, and no long gap parts them.
bool goesOn(const EdgeLine& longer, const EdgeLine& shorter) {
  constexpr double kAside = 1.5;
  constexpr double kSameWay = 0.996;  // 5 degrees: short pieces are known no better
  if (longer.normal.dot(shorter.normal) < kSameWay) return false;
  const Vec2 along = longer.along();
  double low = 1e300, high = -1e300;
  for (const Vec2& end : {shorter.segment.a, shorter.segment.b}) {
    const Vec2 offset = end - longer.segment.a;
    if (std::abs(cross(along, offset)) > kAside) return false;
    low = std::min(low, along.dot(offset));
    high = std::max(high, along.dot(offset));
  }
  const double longest = std::clamp(0.15 * longer.length(), 6.0, 15.0);
  return low <= longer.length() + longest && high >= -longest;
}

EdgeLine joinedEdge(const EdgeLine& longer, const EdgeLine& shorter) {
  EdgeLine edge = longer;
  const Vec2 along = longer.along();
  double low = 0, high = longer.length();
  for (const Vec2& end : {shorter.segment.a, shorter.segment.b}) {
    low = std::min(low, along.dot(end - longer.segment.a));
    high = std::max(high, along.dot(end - longer.segment.a));
  }
  edge.segment = {longer.segment.a + low * along, longer.segment.a + high * along};
  edge.support += shorter.support;
  return edge;
}

// Each line takes in the shorter ones that go on from it.
std::vector<EdgeLine> joinedPieces(const GradientField& field, std::vector<EdgeLine> edges) {
  std::stable_sort(edges.begin(), edges.end(),
                   [](const EdgeLine& a, const EdgeLine& b) { return a.length() > b.length(); });
  std::vector<bool> taken(edges.size(), false);
  std::vector<EdgeLine> result;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    if (taken[i]) continue;
    EdgeLine line = edges[i];
    for (bool grew = true; grew;) {
      grew = false;
      for (std::size_t j = i + 1; j < edges.size(); ++j) {
        if (taken[j] || !goesOn(line, edges[j])) continue;
        taken[j] = grew = true;
        line = joinedEdge(line, edges[j]);
      }
      if (grew)
        if (const auto better = refitted(field, line)) line = *better;
    }
    if (const auto better = refitted(field, line)) result.push_back(*better);
  }
  return result;
}

double spreadOf(const GradientField& field, const Region& region, const EdgeLine& edge) {
  const Vec2 across = leftOf(edge.along());
  double low = 0, high = 0;
  for (const std::size_t i : region.pixels) {
    const double d = across.dot(field.place(i) - edge.segment.a);
    low = std::min(low, d);
    high = std::max(high, d);
  }
  return high - low + 1;
}

}  // namespace

Result<std::vector<EdgeLine>> edgeLines(const GradientField& field, double shortest,
                                        const Progress& progress) {
  constexpr std::size_t kFewestPixels = 12;
  constexpr std::size_t kMostPieces = 20'000;  // joining compares them with one another
  RegionGrower grower(field);
  std::vector<EdgeLine> pieces;
  std::size_t n = 0;
  for (const std::size_t seed : seedsOf(field)) {
    if (n++ % 65536 == 0 && progress.stop()) return fail("Looking for lines was stopped.");
    if (!grower.isFree(seed)) continue;
    const Region region = grower.grow(seed);
    if (region.pixels.size() < kFewestPixels) continue;
    const EdgeLine edge = edgeOf(field, region);
    if (edge.length() >= 6 && isMeaningful(edge, spreadOf(field, region, edge), field))
      pieces.push_back(edge);
  }
  std::stable_sort(pieces.begin(), pieces.end(),
                   [](const EdgeLine& a, const EdgeLine& b) { return a.length() > b.length(); });
  pieces.resize(std::min(pieces.size(), kMostPieces));
  std::vector<EdgeLine> edges = joinedPieces(field, std::move(pieces));
  std::erase_if(edges, [&](const EdgeLine& edge) { return edge.length() < shortest; });
  return edges;
}

}  // namespace baywright::detail
