// SPDX-License-Identifier: Apache-2.0
#include "survey/line_join.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "geometry/polygon_validity.h"
#include "survey/line_gaps.h"
#include "survey/line_reveals.h"

namespace baywright {

namespace {

using detail::GraphFace;
using detail::LineGraph;

constexpr auto at = [](int index) { return static_cast<std::size_t>(index); };

Result<void> check(const LinesToJoin& request) {
  if (request.lines.empty())
    return fail("There are no lines to join.", {}, "Choose the layers that hold the walls.");
  if (!(request.tolerance > 0) || request.tolerance > kLargestJoinTolerance)
    return fail("The tolerance for joining lines must be above 0 and at most 200 mm.");
  for (const Segment2& line : request.lines)
    if (!line.a.allFinite() || !line.b.allFinite()) return fail("A line has a coordinate that is no number.");
  return {};
}

// Doors first, then double doors, then garage doors: a wide gap counts only where no narrow ones close a
// room.
void bridgeGaps(LineGraph& graph, const LinesToJoin& request) {
  constexpr double kDoubleDoor = 2.6;
  const auto gaps = detail::facingGaps(graph, request.tolerance, request.widestGap);
  for (const double widest : {detail::kWidestDoor, kDoubleDoor, request.widestGap}) {
    if (widest > request.widestGap) continue;
    LineGraph closed = graph;
    detail::pruneLooseEnds(closed);
    const auto faces = detail::facesOf(closed);
    detail::bridge(graph, faces, gaps, widest);
    LineGraph withGaps = graph;
    detail::pruneLooseEnds(withGaps);
    detail::bridgeToWalls(graph, detail::facesOf(withGaps), request.doors, widest, request.tolerance);
  }
}

std::size_t countLooseEnds(const LineGraph& graph, Vec2& example) {
  const auto incidence = graph.incidence();
  std::size_t count = 0;
  for (std::size_t n = 0; n < incidence.size(); ++n) {
    if (incidence[n].size() != 1) continue;
    if (count++ == 0) example = graph.nodes[n];
  }
  return count;
}

Ring fromLowestCorner(Ring ring) {
  const auto first = std::min_element(ring.begin(), ring.end(), [](const Vec2& a, const Vec2& b) {
    return a.y() < b.y() || (a.y() == b.y() && a.x() < b.x());
  });
  std::rotate(ring.begin(), first, ring.end());
  return ring;
}

// The face of another part that has the largest outline is what one sees of it from outside, or nearly.
std::vector<Ring> standingIn(const GraphFace& room, const std::vector<GraphFace>& faces) {
  std::vector<Ring> rings;
  for (const int part : room.parts) {
    const GraphFace* largest = nullptr;
    for (const GraphFace& face : faces)
      if (face.part == part && (!largest || face.area > largest->area)) largest = &face;
    if (largest) rings.push_back(fromLowestCorner(simplified(largest->ring, kCollinear)));
  }
  return rings;
}

bool mayBeRoom(const GraphFace& face) {
  return !detail::isMasonry(face) && face.area >= kSmallestRoom;
}

template <class Test>
bool anyIn(const std::vector<GraphFace>& faces, int part, Test test) {
  return std::any_of(faces.begin(), faces.end(),
                     [&](const GraphFace& face) { return face.part == part && test(face); });
}

bool hasGap(const GraphFace& face, const LineGraph& graph) {
  return std::any_of(face.edges.begin(), face.edges.end(),
                     [&](int edge) { return graph.edges[at(edge)].isBridge(); });
}

// At least half of the outline has masonry on its other side.
bool isWalled(const GraphFace& face, const LineGraph& graph, const std::vector<GraphFace>& faces) {
  double length = 0;
  for (const GraphFace& wall : faces) {
    if (!detail::isMasonry(wall)) continue;
    if (std::find(wall.parts.begin(), wall.parts.end(), face.part) != wall.parts.end()) return true;
    for (const int edge : face.edges)
      if (std::find(wall.edges.begin(), wall.edges.end(), edge) != wall.edges.end())
        length += graph.along(graph.edges[at(edge)]).norm();
  }
  return length > 0.5 * perimeter(face.ring);
}

// True when a piece that lies in the face holds several rooms, or masonry and a room: a house in the frame of
// its sheet. One closed outline alone may as well be a table, and what has walls and doors of its own is a
// building with another in it: a hall and its office.
bool holdsHouse(const GraphFace& face, const LineGraph& graph, const std::vector<GraphFace>& faces) {
  if (hasGap(face, graph) && isWalled(face, graph, faces)) return false;
  return std::any_of(face.parts.begin(), face.parts.end(), [&](int part) {
    if (std::count_if(faces.begin(), faces.end(),
                      [&](const GraphFace& f) { return f.part == part && mayBeRoom(f); }) > 1)
      return true;
    // The inner faces of closed double walls are a piece of their own within the masonry.
    const auto walled = [&](const GraphFace& f) {
      return detail::isMasonry(f) && std::any_of(f.parts.begin(), f.parts.end(),
                                                 [&](int inner) { return anyIn(faces, inner, mayBeRoom); });
    };
    return anyIn(faces, part, walled) ||
           (anyIn(faces, part, detail::isMasonry) && anyIn(faces, part, mayBeRoom));
  });
}

// Nothing that stands in a room of its own is as large, fills as much of it, and the room has no door.
constexpr double kSmallestFramed = 6;     // square metres
constexpr double kMostFilled = 0.3;       // share of the floor
constexpr double kLargestUnopened = 150;  // square metres

// True for a face round one outline that is rather a room than a thing in it.
bool framesRoom(const GraphFace& face, const LineGraph& graph, const std::vector<GraphFace>& faces) {
  if (face.parts.empty() || hasGap(face, graph)) return false;
  return std::any_of(faces.begin(), faces.end(), [&](const GraphFace& inner) {
    const bool stands = std::find(face.parts.begin(), face.parts.end(), inner.part) != face.parts.end();
    if (!stands || !mayBeRoom(inner) || inner.area < kSmallestFramed) return false;
    return hasGap(inner, graph) || inner.area > kMostFilled * face.area || face.area > kLargestUnopened;
  });
}

// The connected pieces of faces that are frames; a title block hangs together with its frame.
std::vector<int> framingParts(const LineGraph& graph, const std::vector<GraphFace>& faces) {
  std::vector<int> parts;
  for (const GraphFace& face : faces)
    if (!detail::isMasonry(face) &&
        !anyIn(faces, face.part, [&](const GraphFace& f) { return hasGap(f, graph); }) &&
        (framesRoom(face, graph, faces) || holdsHouse(face, graph, faces)))
      parts.push_back(face.part);
  return parts;
}

// Loose ends that stop just short of something.
std::size_t countNearMisses(const LineGraph& graph) {
  constexpr std::size_t kMostCompared = 2000;
  const auto incidence = graph.incidence();
  std::vector<int> ends;
  for (std::size_t n = 0; n < incidence.size(); ++n)
    if (incidence[n].size() == 1) ends.push_back(static_cast<int>(n));
  if (ends.size() > kMostCompared) return 0;
  return static_cast<std::size_t>(std::count_if(ends.begin(), ends.end(), [&](int end) {
    const Vec2& place = graph.nodes[at(end)];
    return std::any_of(graph.edges.begin(), graph.edges.end(), [&](const detail::GraphEdge& edge) {
      const auto [a, b] = edge.nodes;
      if (edge.removed || a == end || b == end) return false;
      const Vec2 &from = graph.nodes[at(a)], along = graph.nodes[at(b)] - from;
      const double share = std::clamp(along.dot(place - from) / along.squaredNorm(), 0.0, 1.0);
      return (from + share * along - place).norm() <= kNearMiss;
    });
  }));
}

JoinedRoom roomOf(const GraphFace& face, const LineGraph& graph, const std::vector<GraphFace>& faces) {
  JoinedRoom room;
  room.ring = fromLowestCorner(simplified(face.ring, kCollinear));
  room.area = signedArea(room.ring);
  for (std::size_t i = 0; i < face.edges.size(); ++i)
    if (graph.edges[at(face.edges[i])].isBridge())
      room.gaps.push_back({face.ring[i], face.ring[(i + 1) % face.ring.size()]});
  room.inside = standingIn(face, faces);
  for (const Segment2& window : detail::closeReveals(room.ring, face, graph, faces))
    room.gaps.push_back(window);
  room.ring = fromLowestCorner(std::move(room.ring));
  room.area = signedArea(room.ring);
  return room;
}

double meanThickness(const std::vector<GraphFace>& faces, const std::vector<int>& frames) {
  double area = 0, length = 0;
  const auto isFrame = [&](int part) {
    return std::find(frames.begin(), frames.end(), part) != frames.end();
  };
  for (const GraphFace& face : faces)
    // A reveal or a column says nothing of walls, nor does a frame of two lines.
    if (detail::isMasonry(face) && face.perimeter > 2 &&
        !std::any_of(face.parts.begin(), face.parts.end(), isFrame)) {
      area += face.netArea;
      length += 0.5 * face.perimeter;
    }
  return length > 0 ? area / length : 0;
}

std::string place(const Vec2& point) {
  const auto text = [](double v) {
    const long millimetres = std::lround(v * 1000);
    return std::to_string(millimetres / 1000) + "." +
           std::to_string(1000 + std::abs(millimetres % 1000)).substr(1);
  };
  return text(point.x()) + ", " + text(point.y());
}

void takeRooms(LineGraph graph, JoinedLines& joined) {
  detail::pruneLooseEnds(graph);
  auto faces = detail::facesOf(graph);
  if (detail::removeNiches(graph, faces) > 0) faces = detail::facesOf(graph);
  const std::vector<int> frames = framingParts(graph, faces);
  for (const GraphFace& face : faces)
    if (mayBeRoom(face) && !holdsHouse(face, graph, faces)) {
      JoinedRoom room = roomOf(face, graph, faces);
      room.likeFrame = std::find(frames.begin(), frames.end(), face.part) != frames.end();
      if (room.ring.size() >= 3 && validated(Polygon{room.ring, {}})) joined.rooms.push_back(std::move(room));
    }
  std::stable_sort(joined.rooms.begin(), joined.rooms.end(), [](const JoinedRoom& a, const JoinedRoom& b) {
    return a.likeFrame != b.likeFrame ? b.likeFrame : a.area > b.area;
  });
  joined.wallThickness = meanThickness(faces, frames);
}

// The two nodes, of all ends of walls, between which a front is open: the ends of a single line, or the
// nearest corners of the only two walls that end. Nothing where there are others.
std::optional<std::pair<int, int>> frontOf(const LineGraph& graph) {
  std::vector<std::pair<int, int>> ends;  // both corners of each; of a loose end the same twice
  for (const detail::WallEnd& end : detail::wallEnds(graph)) {
    const auto corners = std::minmax({end.node, end.loose() ? end.node : end.other});
    if (std::find(ends.begin(), ends.end(), std::pair<int, int>(corners)) == ends.end())
      ends.push_back(corners);
  }
  if (ends.size() != 2) return std::nullopt;
  const auto apart = [&](const std::pair<int, int>& way) {
    return (graph.nodes[at(way.first)] - graph.nodes[at(way.second)]).norm();
  };
  const auto [a, b] = std::pair(ends[0], ends[1]);
  const std::array ways{std::pair(a.first, b.first), std::pair(a.first, b.second),
                        std::pair(a.second, b.first), std::pair(a.second, b.second)};
  return *std::min_element(ways.begin(), ways.end(),
                           [&](const auto& u, const auto& v) { return apart(u) < apart(v); });
}

// Walls round three sides: the fourth is a front that nobody drew, as of a carport, or one door from wall to
// wall.
bool closeFront(LineGraph& graph) {
  constexpr double kWidestFront = 9;  // metres: three cars
  const auto front = frontOf(graph);
  if (!front || (graph.nodes[at(front->first)] - graph.nodes[at(front->second)]).norm() > kWidestFront)
    return false;
  graph.edges.push_back({{front->first, front->second}, -1, false});
  return true;
}

}  // namespace

Result<JoinedLines> joinLines(const LinesToJoin& request) {
  if (const auto checked = check(request); !checked) return tl::unexpected(checked.error());
  auto cut = detail::graphOf(request.lines, request.tolerance);
  if (!cut) return tl::unexpected(cut.error());
  LineGraph graph = std::move(*cut);
  JoinedLines joined;
  joined.nearMisses = countNearMisses(graph);
  if (request.widestGap > 0) bridgeGaps(graph, request);

  Vec2 example = Vec2::Zero();
  joined.looseEnds = countLooseEnds(graph, example);
  takeRooms(graph, joined);
  if (joined.rooms.empty() && request.widestGap > 0 && closeFront(graph)) takeRooms(graph, joined);
  if (joined.rooms.empty()) {
    std::string what = "The lines enclose no room";
    if (joined.looseEnds > 0)
      what += ": " + std::to_string(joined.looseEnds) + " ends join nothing, one of them at " +
              place(example) + " m";
    return fail(what + ".", {}, "Choose the layers that hold the walls, or a larger tolerance.");
  }
  return joined;
}

}  // namespace baywright
