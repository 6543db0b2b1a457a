// SPDX-License-Identifier: Apache-2.0
#include "survey/line_join.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/polygon_validity.h"
#include "survey/line_gaps.h"

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
    if (widest != detail::kWidestDoor) continue;
    LineGraph withDoors = graph;
    detail::pruneLooseEnds(withDoors);
    detail::bridgeToWalls(graph, detail::facesOf(withDoors), widest, request.tolerance);
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

// True when a piece that lies in the face holds several rooms, or masonry and a room: a house in the frame of
// its sheet. One closed outline alone may as well be a table.
bool holdsHouse(const GraphFace& face, const std::vector<GraphFace>& faces) {
  return std::any_of(face.parts.begin(), face.parts.end(), [&](int part) {
    const auto inPart = [&](auto test) {
      return std::any_of(faces.begin(), faces.end(),
                         [&](const GraphFace& f) { return f.part == part && test(f); });
    };
    const auto isRoomInPart = [&](const GraphFace& f) { return f.part == part && mayBeRoom(f); };
    if (std::count_if(faces.begin(), faces.end(), isRoomInPart) > 1) return true;
    // The inner faces of closed double walls are a piece of their own within the masonry.
    return inPart([](const GraphFace& f) { return detail::isMasonry(f) && !f.parts.empty(); }) ||
           (inPart(detail::isMasonry) && inPart(mayBeRoom));
  });
}

JoinedRoom roomOf(const GraphFace& face, const LineGraph& graph, const std::vector<GraphFace>& faces) {
  JoinedRoom room;
  room.ring = fromLowestCorner(simplified(face.ring, kCollinear));
  room.area = signedArea(room.ring);
  for (std::size_t i = 0; i < face.edges.size(); ++i)
    if (graph.edges[at(face.edges[i])].isBridge())
      room.gaps.push_back({face.ring[i], face.ring[(i + 1) % face.ring.size()]});
  room.inside = standingIn(face, faces);
  return room;
}

double meanThickness(const std::vector<GraphFace>& faces) {
  double area = 0, length = 0;
  for (const GraphFace& face : faces)
    if (detail::isMasonry(face) && face.perimeter > 2) {  // a reveal or a column says nothing of walls
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

}  // namespace

Result<JoinedLines> joinLines(const LinesToJoin& request) {
  if (const auto checked = check(request); !checked) return tl::unexpected(checked.error());
  auto cut = detail::graphOf(request.lines, request.tolerance);
  if (!cut) return tl::unexpected(cut.error());
  LineGraph graph = std::move(*cut);
  if (request.widestGap > 0) bridgeGaps(graph, request);

  JoinedLines joined;
  Vec2 example = Vec2::Zero();
  joined.looseEnds = countLooseEnds(graph, example);
  detail::pruneLooseEnds(graph);
  auto faces = detail::facesOf(graph);
  if (detail::removeNiches(graph, faces) > 0) faces = detail::facesOf(graph);

  for (const GraphFace& face : faces)
    if (mayBeRoom(face) && !holdsHouse(face, faces)) {
      JoinedRoom room = roomOf(face, graph, faces);
      if (room.ring.size() >= 3 && validated(Polygon{room.ring, {}})) joined.rooms.push_back(std::move(room));
    }
  std::stable_sort(joined.rooms.begin(), joined.rooms.end(),
                   [](const JoinedRoom& a, const JoinedRoom& b) { return a.area > b.area; });
  joined.wallThickness = meanThickness(faces);
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
