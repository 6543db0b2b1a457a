// SPDX-License-Identifier: Apache-2.0
#include "survey/line_graph.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <numeric>
#include <optional>
#include <string>

namespace baywright::detail {

namespace {

/// Gives points that lie within a tolerance of one another the same number.
class PointMerger {
 public:
  explicit PointMerger(double tolerance) : tolerance_(tolerance), cell_(std::max(tolerance, 1e-9)) {}

  int numberOf(const Vec2& point) {
    const auto [x, y] = cellOf(point);
    int best = -1;
    double bestDistance = tolerance_;
    for (std::int64_t i = x - 1; i <= x + 1; ++i)
      for (std::int64_t j = y - 1; j <= y + 1; ++j) {
        const auto found = cells_.find({i, j});
        if (found == cells_.end()) continue;
        for (const int number : found->second) {
          const double distance = (points[LineGraph::at(number)] - point).norm();
          if (distance < bestDistance || (distance == bestDistance && best < 0)) {
            best = number;
            bestDistance = distance;
          }
        }
      }
    if (best >= 0) return best;
    points.push_back(point);
    cells_[{x, y}].push_back(static_cast<int>(points.size()) - 1);
    return static_cast<int>(points.size()) - 1;
  }

  std::vector<Vec2> points;

 private:
  std::pair<std::int64_t, std::int64_t> cellOf(const Vec2& point) const {
    return {static_cast<std::int64_t>(std::floor(point.x() / cell_)),
            static_cast<std::int64_t>(std::floor(point.y() / cell_))};
  }

  double tolerance_;
  double cell_;
  std::map<std::pair<std::int64_t, std::int64_t>, std::vector<int>> cells_;
};

/// A place where a line is cut.
struct Cut {
  double share = 0;  // 0 at the line's start, 1 at its end
  Vec2 point = Vec2::Zero();
};

using Cuts = std::vector<std::vector<Cut>>;

// Cuts `line` at `point` where that lies within `tolerance` of it, off its ends.
bool cutAt(const Segment2& line, const Vec2& point, double tolerance, std::vector<Cut>& cuts) {
  const Vec2 along = line.b - line.a;
  const double length = along.norm();
  const double distance = cross(along, point - line.a) / length;
  const double place = along.dot(point - line.a) / length;
  if (std::abs(distance) > tolerance || place <= tolerance || place >= length - tolerance) return false;
  cuts.push_back({place / length, point});
  return true;
}

std::optional<Vec2> crossingOf(const Segment2& first, const Segment2& second) {
  const Vec2 u = first.b - first.a;
  const Vec2 v = second.b - second.a;
  const double determinant = cross(u, v);
  constexpr double kParallel = 1e-9;
  if (std::abs(determinant) <= kParallel * u.norm() * v.norm()) return std::nullopt;
  const double s = cross(second.a - first.a, v) / determinant;
  const double t = cross(second.a - first.a, u) / determinant;
  if (s <= 0 || s >= 1 || t <= 0 || t >= 1) return std::nullopt;
  return first.a + s * u;
}

void cutEachOther(const Segment2& first, const Segment2& second, double tolerance,
                  std::vector<Cut>& firstCuts, std::vector<Cut>& secondCuts) {
  bool met = false;
  for (const Vec2& end : {second.a, second.b}) met = cutAt(first, end, tolerance, firstCuts) || met;
  for (const Vec2& end : {first.a, first.b}) met = cutAt(second, end, tolerance, secondCuts) || met;
  if (met) return;
  if (const auto point = crossingOf(first, second)) {
    cutAt(first, *point, tolerance, firstCuts);
    cutAt(second, *point, tolerance, secondCuts);
  }
}

// All pairs whose boxes touch, found in the order of their left ends.
Result<Cuts> allCuts(std::span<const Segment2> lines, double tolerance) {
  std::vector<std::size_t> order(lines.size());
  std::iota(order.begin(), order.end(), 0u);
  const auto left = [&](std::size_t i) { return std::min(lines[i].a.x(), lines[i].b.x()); };
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t i, std::size_t j) { return left(i) < left(j); });
  Cuts cuts(lines.size());
  std::size_t count = 0;
  for (std::size_t m = 0; m < order.size(); ++m) {
    const std::size_t i = order[m];
    const double right = std::max(lines[i].a.x(), lines[i].b.x()) + tolerance;
    const double low = std::min(lines[i].a.y(), lines[i].b.y()) - tolerance;
    const double high = std::max(lines[i].a.y(), lines[i].b.y()) + tolerance;
    for (std::size_t n = m + 1; n < order.size() && left(order[n]) <= right; ++n) {
      const std::size_t j = order[n];
      if (std::min(lines[j].a.y(), lines[j].b.y()) > high || std::max(lines[j].a.y(), lines[j].b.y()) < low)
        continue;
      const std::size_t before = cuts[i].size() + cuts[j].size();
      cutEachOther(lines[i], lines[j], tolerance, cuts[i], cuts[j]);
      count += cuts[i].size() + cuts[j].size() - before;
      if (count > kMostCrossings)
        return fail("The lines cross each other more than " + std::to_string(kMostCrossings) + " times.", {},
                    "Choose fewer layers, such as those of the walls only.");
    }
  }
  return cuts;
}

LineGraph cutLines(std::span<const Segment2> lines, Cuts cuts, double tolerance) {
  PointMerger merger(tolerance);
  for (const Segment2& line : lines) {
    merger.numberOf(line.a);
    merger.numberOf(line.b);
  }
  LineGraph graph;
  std::map<std::pair<int, int>, int> known;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    cuts[i].push_back({0, lines[i].a});
    cuts[i].push_back({1, lines[i].b});
    std::stable_sort(cuts[i].begin(), cuts[i].end(),
                     [](const Cut& a, const Cut& b) { return a.share < b.share; });
    int last = merger.numberOf(cuts[i].front().point);
    for (const Cut& cut : cuts[i]) {
      const int node = merger.numberOf(cut.point);
      if (node == last) continue;
      if (known.try_emplace(std::minmax(last, node), 1).second)
        graph.edges.push_back({{last, node}, static_cast<int>(i), false});
      last = node;
    }
  }
  graph.nodes = std::move(merger.points);
  return graph;
}

// Least squares over the lines that meet at each node; directions that they leave open stay as they were.
void moveCornersOntoLines(LineGraph& graph, std::span<const Segment2> lines, double tolerance) {
  const auto incidence = graph.incidence();
  for (std::size_t n = 0; n < graph.nodes.size(); ++n) {
    constexpr double kHold = 1e-6;
    Mat2 normal = kHold * Mat2::Identity();
    Vec2 right = Vec2::Zero();
    for (const int e : incidence[n]) {
      const Segment2& line = lines[LineGraph::at(graph.edges[LineGraph::at(e)].line)];
      const Vec2 across = leftOf((line.b - line.a).normalized());
      normal += across * across.transpose();
      right += across * across.dot(line.a - graph.nodes[n]);
    }
    const Vec2 step = normal.inverse() * right;
    if (step.norm() <= 2 * tolerance) graph.nodes[n] += step;
  }
}

/// True when the node lies on the straight way between the others.
bool isOnTheWay(const Vec2& node, const Vec2& a, const Vec2& b) {
  constexpr double kStraight = 1e-4;  // metres: chords of a curve turn by more
  const double length = (b - a).norm();
  if (!(length > 0)) return false;
  const Vec2 along = (b - a) / length;
  const double place = along.dot(node - a);
  return place > 0 && place < length && std::abs(cross(along, node - a)) <= kStraight;
}

// A wall that was drawn in pieces is one edge from corner to corner, or nothing would tell its short end.
void joinPieces(LineGraph& graph) {
  auto incidence = graph.incidence();
  for (std::size_t n = 0; n < graph.nodes.size(); ++n) {
    if (incidence[n].size() != 2) continue;
    const int kept = incidence[n][0], dropped = incidence[n][1];
    const int node = static_cast<int>(n);
    const int a = graph.edges[LineGraph::at(kept)].other(node);
    const int b = graph.edges[LineGraph::at(dropped)].other(node);
    if (a == b || !isOnTheWay(graph.nodes[n], graph.nodes[LineGraph::at(a)], graph.nodes[LineGraph::at(b)]))
      continue;
    graph.edges[LineGraph::at(kept)].nodes = {a, b};
    graph.edges[LineGraph::at(dropped)].removed = true;
    std::replace(incidence[LineGraph::at(b)].begin(), incidence[LineGraph::at(b)].end(), dropped, kept);
    incidence[n].clear();
  }
  std::erase_if(graph.edges, [](const GraphEdge& edge) { return edge.removed; });
}

}  // namespace

std::vector<std::vector<int>> LineGraph::incidence() const {
  std::vector<std::vector<int>> result(nodes.size());
  for (std::size_t e = 0; e < edges.size(); ++e) {
    if (edges[e].removed) continue;
    result[at(edges[e].nodes[0])].push_back(static_cast<int>(e));
    result[at(edges[e].nodes[1])].push_back(static_cast<int>(e));
  }
  return result;
}

Result<LineGraph> graphOf(std::span<const Segment2> lines, double tolerance) {
  if (lines.size() > kMostJoinedLines)
    return fail("There are " + std::to_string(lines.size()) + " lines; at most " +
                    std::to_string(kMostJoinedLines) + " can be joined.",
                {}, "Choose fewer layers, such as those of the walls only.");
  std::vector<Segment2> kept;
  for (const Segment2& line : lines)
    if ((line.b - line.a).norm() > tolerance) kept.push_back(line);
  auto cuts = allCuts(kept, tolerance);
  if (!cuts) return tl::unexpected(cuts.error());
  LineGraph graph = cutLines(kept, std::move(*cuts), tolerance);
  moveCornersOntoLines(graph, kept, tolerance);
  joinPieces(graph);
  return graph;
}

void pruneLooseEnds(LineGraph& graph) {
  auto incidence = graph.incidence();
  std::vector<int> loose;
  for (std::size_t n = 0; n < incidence.size(); ++n)
    if (incidence[n].size() == 1) loose.push_back(static_cast<int>(n));
  while (!loose.empty()) {
    const int node = loose.back();
    loose.pop_back();
    auto& here = incidence[LineGraph::at(node)];
    if (here.size() != 1) continue;
    GraphEdge& edge = graph.edges[LineGraph::at(here.front())];
    edge.removed = true;
    auto& there = incidence[LineGraph::at(edge.other(node))];
    std::erase(there, here.front());
    here.clear();
    if (there.size() == 1) loose.push_back(edge.other(node));
  }
}

}  // namespace baywright::detail
