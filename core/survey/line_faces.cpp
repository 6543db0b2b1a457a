// SPDX-License-Identifier: Apache-2.0
#include "survey/line_faces.h"

#include <algorithm>
#include <numeric>

namespace baywright::detail {

namespace {

constexpr auto at = [](int index) { return static_cast<std::size_t>(index); };

// Each edge is walked both ways: way 2e from its first node to its second, way 2e + 1 back.
struct Ways {
  const LineGraph& graph;

  int from(int way) const { return graph.edges[at(way / 2)].nodes[at(way % 2)]; }
  int to(int way) const { return graph.edges[at(way / 2)].nodes[at(1 - way % 2)]; }
  Vec2 along(int way) const { return graph.nodes[at(to(way))] - graph.nodes[at(from(way))]; }
};

bool lowerHalf(const Vec2& v) {
  return v.y() < 0 || (v.y() == 0 && v.x() < 0);
}

// For each way the one that follows it round the region on its left.
std::vector<int> followers(const LineGraph& graph) {
  const Ways ways{graph};
  std::vector<std::vector<int>> leaving(graph.nodes.size());
  for (std::size_t e = 0; e < graph.edges.size(); ++e) {
    if (graph.edges[e].removed) continue;
    const int way = 2 * static_cast<int>(e);
    leaving[at(ways.from(way))].push_back(way);
    leaving[at(ways.to(way))].push_back(way + 1);
  }
  std::vector<int> next(2 * graph.edges.size(), -1);
  for (auto& here : leaving) {
    std::stable_sort(here.begin(), here.end(), [&](int first, int second) {
      const Vec2 u = ways.along(first), v = ways.along(second);
      if (lowerHalf(u) != lowerHalf(v)) return lowerHalf(v);
      return cross(u, v) > 0;
    });
    for (std::size_t i = 0; i < here.size(); ++i) next[at(here[(i + 1) % here.size()] ^ 1)] = here[i];
  }
  return next;
}

std::vector<std::vector<int>> loopsOf(const std::vector<int>& next) {
  std::vector<std::vector<int>> loops;
  std::vector<bool> seen(next.size(), false);
  for (std::size_t start = 0; start < next.size(); ++start) {
    if (next[start] < 0 || seen[start]) continue;
    loops.emplace_back();
    for (int way = static_cast<int>(start); !seen[at(way)]; way = next[at(way)]) {
      seen[at(way)] = true;
      loops.back().push_back(way);
    }
  }
  return loops;
}

// True when an edge has the same loop on both sides; such edges are removed.
bool removeIsthmuses(LineGraph& graph, const std::vector<std::vector<int>>& loops) {
  std::vector<int> loopOf(2 * graph.edges.size(), -1);
  for (std::size_t i = 0; i < loops.size(); ++i)
    for (const int way : loops[i]) loopOf[at(way)] = static_cast<int>(i);
  bool any = false;
  for (std::size_t e = 0; e < graph.edges.size(); ++e)
    if (!graph.edges[e].removed && loopOf[2 * e] == loopOf[2 * e + 1]) {
      graph.edges[e].removed = true;
      any = true;
    }
  return any;
}

GraphFace faceOf(const LineGraph& graph, std::span<const int> loop) {
  const Ways ways{graph};
  GraphFace face;
  for (const int way : loop) {
    face.nodes.push_back(ways.from(way));
    face.edges.push_back(way / 2);
    face.ring.push_back(graph.nodes[at(ways.from(way))]);
  }
  face.area = face.netArea = signedArea(face.ring);
  face.perimeter = perimeter(face.ring);
  return face;
}

// A loop that touches itself in nodes, taken apart there.
std::vector<std::vector<int>> simpleLoops(const LineGraph& graph, const std::vector<int>& loop) {
  const Ways ways{graph};
  std::vector<std::vector<int>> result;
  std::vector<int> open;
  for (const int way : loop) {
    open.push_back(way);
    const auto first =
        std::find_if(open.begin(), open.end(), [&](int other) { return ways.from(other) == ways.to(way); });
    if (first == open.end()) continue;
    result.emplace_back(first, open.end());
    open.erase(first, open.end());
  }
  return result;
}

bool boxHolds(const Ring& ring, const Vec2& point) {
  bool left = false, right = false, below = false, above = false;
  for (const Vec2& p : ring) {
    left = left || p.x() <= point.x();
    right = right || p.x() >= point.x();
    below = below || p.y() <= point.y();
    above = above || p.y() >= point.y();
  }
  return left && right && below && above;
}

// The outer side of a connected piece lies in the smallest face of another piece round it.
void takeOut(std::vector<GraphFace>& faces, const GraphFace& outside) {
  GraphFace* around = nullptr;
  for (GraphFace& face : faces) {
    if (face.part == outside.part || face.area <= -outside.area || (around && face.area >= around->area))
      continue;
    if (boxHolds(face.ring, outside.ring.front()) &&
        locate(face.ring, outside.ring.front()) == Location::Inside)
      around = &face;
  }
  if (!around) return;
  around->netArea += outside.area;
  around->perimeter += outside.perimeter;
  around->parts.push_back(outside.part);
}

}  // namespace

std::vector<int> partsOf(const LineGraph& graph) {
  std::vector<int> part(graph.nodes.size());
  std::iota(part.begin(), part.end(), 0);
  const auto root = [&](int node) {
    while (part[at(node)] != node) node = part[at(node)] = part[at(part[at(node)])];
    return node;
  };
  for (const GraphEdge& edge : graph.edges)
    if (!edge.removed) part[at(root(edge.nodes[1]))] = root(edge.nodes[0]);
  for (std::size_t n = 0; n < part.size(); ++n) part[n] = root(static_cast<int>(n));
  return part;
}

std::vector<GraphFace> facesOf(LineGraph& graph) {
  std::vector<std::vector<int>> loops = loopsOf(followers(graph));
  while (removeIsthmuses(graph, loops)) loops = loopsOf(followers(graph));

  const std::vector<int> part = partsOf(graph);
  std::vector<GraphFace> faces;
  std::vector<GraphFace> outsides;
  for (const auto& loop : loops)
    for (const auto& simple : simpleLoops(graph, loop)) {
      GraphFace face = faceOf(graph, simple);
      face.part = part[at(face.nodes.front())];
      if (face.area > kMinimumFace)
        faces.push_back(std::move(face));
      else if (face.area < -kMinimumFace)
        outsides.push_back(std::move(face));
    }
  for (const GraphFace& outside : outsides) takeOut(faces, outside);
  return faces;
}

int faceAt(const std::vector<GraphFace>& faces, const Vec2& point) {
  int best = -1;
  for (std::size_t i = 0; i < faces.size(); ++i) {
    if (best >= 0 && faces[i].area >= faces[at(best)].area) continue;
    if (boxHolds(faces[i].ring, point) && locate(faces[i].ring, point) == Location::Inside)
      best = static_cast<int>(i);
  }
  return best;
}

}  // namespace baywright::detail
