// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_faces.h"

#include <cmath>
#include <map>
#include <optional>
#include <utility>

namespace baywright {
namespace {

constexpr double kSame = 1e-5;  ///< metres between vertices that are one

/// While it is cut: corner i lies where the lines of edges i - 1 and i cross.
struct Piece {
  Ring ring;
  std::vector<int> lines;
};

struct Halves {
  std::optional<Piece> positive;
  std::optional<Piece> negative;
};

Vec2 crossingAt(const Vec2& a, const Vec2& b, double da, double db) {
  return a + (da / (da - db)) * (b - a);
}

void take(Piece& piece, const Vec2& corner, int edgeLine) {
  piece.ring.push_back(corner);
  piece.lines.push_back(edgeLine);
}

Halves cut(const Piece& piece, const ScanLine& line, int index) {
  Piece positive;
  Piece negative;
  const std::size_t n = piece.ring.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Vec2& a = piece.ring[i];
    const Vec2& b = piece.ring[(i + 1) % n];
    const double da = line.distance(a);
    const double db = line.distance(b);
    const bool aIn = da >= 0;
    const bool bIn = db >= 0;
    take(aIn ? positive : negative, a, piece.lines[i]);
    if (aIn == bIn) continue;
    const Vec2 p = crossingAt(a, b, da, db);
    take(aIn ? positive : negative, p, index);
    take(aIn ? negative : positive, p, piece.lines[i]);
  }
  const auto worth = [](Piece& half) -> std::optional<Piece> {
    if (half.ring.size() < 3 || signedArea(half.ring) < kSame * kSame) return std::nullopt;
    return std::move(half);
  };
  return {worth(positive), worth(negative)};
}

/// Gives places that are one and the same number.
class Vertices {
 public:
  int of(const Vec2& p) {
    const std::pair key(std::llround(p.x() / kSame), std::llround(p.y() / kSame));
    // Rounding may part what is one: look at the neighbours too.
    for (long long dx = -1; dx <= 1; ++dx)
      for (long long dy = -1; dy <= 1; ++dy)
        if (const auto found = known_.find({key.first + dx, key.second + dy}); found != known_.end())
          return found->second;
    const int index = static_cast<int>(places.size());
    known_.emplace(key, index);
    places.push_back(p);
    return index;
  }
  std::vector<Vec2> places;

 private:
  std::map<std::pair<long long, long long>, int> known_;
};

PlanFace faceFrom(const Piece& piece, std::span<const ScanLine> lines, Vertices& vertices) {
  PlanFace face;
  for (std::size_t i = 0; i < piece.ring.size(); ++i) {
    const int from = vertices.of(piece.ring[i]);
    const int to = vertices.of(piece.ring[(i + 1) % piece.ring.size()]);
    if (from == to) continue;
    face.ring.push_back(vertices.places[static_cast<std::size_t>(from)]);
    face.edges.push_back({piece.lines[i], kNoFace, from, to});
  }
  face.area = signedArea(face.ring);
  face.sides = sidesOf(lines, centroid({piece.ring, {}}));
  return face;
}

void meet(std::vector<PlanFace>& faces) {
  std::map<std::pair<int, int>, int> owner;
  for (std::size_t f = 0; f < faces.size(); ++f)
    for (const FaceEdge& edge : faces[f].edges) owner[{edge.from, edge.to}] = static_cast<int>(f);
  for (PlanFace& face : faces)
    for (FaceEdge& edge : face.edges)
      if (const auto found = owner.find({edge.to, edge.from}); found != owner.end())
        edge.neighbour = found->second;
}

}  // namespace

std::uint64_t sidesOf(std::span<const ScanLine> lines, const Vec2& p) {
  std::uint64_t sides = 0;
  for (std::size_t l = 0; l < lines.size(); ++l)
    if (lines[l].distance(p) >= 0) sides |= 1ull << l;
  return sides;
}

PlanFaces facesBetween(std::span<const ScanLine> lines, const Vec2& low, const Vec2& high) {
  const Ring frame{low, {high.x(), low.y()}, high, {low.x(), high.y()}};
  std::vector<Piece> pieces{{frame, std::vector<int>(4, kFrameEdge)}};
  for (std::size_t l = 0; l < lines.size(); ++l) {
    std::vector<Piece> next;
    for (const Piece& piece : pieces) {
      Halves halves = cut(piece, lines[l], static_cast<int>(l));
      if (halves.positive) next.push_back(std::move(*halves.positive));
      if (halves.negative) next.push_back(std::move(*halves.negative));
    }
    pieces = std::move(next);
  }
  Vertices vertices;
  PlanFaces plan;
  for (const Piece& piece : pieces) {
    PlanFace face = faceFrom(piece, lines, vertices);
    if (face.ring.size() >= 3 && face.area > 0) plan.faces.push_back(std::move(face));
  }
  plan.vertices = std::move(vertices.places);
  meet(plan.faces);
  return plan;
}

}  // namespace baywright
