// SPDX-License-Identifier: Apache-2.0
#include "geometry/convex_polyhedron.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <string>
#include <utility>

namespace baywright {

namespace {

using Loops = std::vector<std::vector<int>>;
using Face = ConvexPolyhedron::Face;
using Edge = ConvexPolyhedron::Edge;

constexpr double kFlatness = ConvexPolyhedron::kFlatness;

/// Two directions this close are one axis: the distance along either is the same but for rounding.
constexpr double kSameDirection = 1e-12;

std::string nameOf(const char* what, std::size_t index) {
  return std::string(what) + " " + std::to_string(index + 1);
}

Result<void> checkIndices(const std::vector<Vec3>& vertices, const Loops& loops) {
  if (vertices.size() < 4 || loops.size() < 4)
    return fail("A solid needs at least four corners and four faces.");
  std::vector<bool> used(vertices.size(), false);
  for (std::size_t i = 0; i < vertices.size(); ++i) {
    if (!vertices[i].allFinite()) return fail("A coordinate is not a finite number.", nameOf("corner", i));
  }
  for (std::size_t f = 0; f < loops.size(); ++f) {
    if (loops[f].size() < 3) return fail("A face needs at least three corners.", nameOf("face", f));
    for (const int corner : loops[f]) {
      if (corner < 0 || static_cast<std::size_t>(corner) >= vertices.size()) {
        return fail("A face names a corner that does not exist.", nameOf("face", f));
      }
      used[static_cast<std::size_t>(corner)] = true;
    }
  }
  const auto idle = std::find(used.begin(), used.end(), false);
  if (idle != used.end()) {
    return fail("A corner belongs to no face.",
                nameOf("corner", static_cast<std::size_t>(idle - used.begin())));
  }
  return {};
}

/// Twice the vector area, whichever way the loop bends (Newell's sum, about its first corner).
Vec3 vectorArea(const std::vector<Vec3>& vertices, std::span<const int> loop) {
  const auto at = [&](std::size_t i) -> const Vec3& { return vertices[static_cast<std::size_t>(loop[i])]; };
  Vec3 sum = Vec3::Zero();
  for (std::size_t i = 1; i + 1 < loop.size(); ++i) sum += (at(i) - at(0)).cross(at(i + 1) - at(0));
  return sum;
}

double volumeOf(const std::vector<Vec3>& vertices, const Loops& loops) {
  double sixfold = 0;
  for (const auto& loop : loops) {
    sixfold += (vertices[static_cast<std::size_t>(loop[0])] - vertices[0]).dot(vectorArea(vertices, loop));
  }
  return sixfold / 6;
}

Result<std::vector<Edge>> edgesOf(const Loops& loops) {
  std::map<std::pair<int, int>, int> faceLeftOf;
  for (std::size_t f = 0; f < loops.size(); ++f) {
    for (std::size_t i = 0; i < loops[f].size(); ++i) {
      const int from = loops[f][i];
      const int to = loops[f][(i + 1) % loops[f].size()];
      if (from == to || !faceLeftOf.emplace(std::pair{from, to}, static_cast<int>(f)).second) {
        return fail("An edge is used twice the same way.", nameOf("face", f),
                    "List the corners of every face in the same sense, seen from outside.");
      }
    }
  }
  std::vector<Edge> edges;
  for (const auto& [ends, face] : faceLeftOf) {
    const auto other = faceLeftOf.find({ends.second, ends.first});
    if (other == faceLeftOf.end()) {
      return fail("The faces leave a gap along an edge.", nameOf("face", static_cast<std::size_t>(face)));
    }
    if (ends.first < ends.second) edges.push_back({ends.first, ends.second, face, other->second});
  }
  return edges;
}

Result<Face> planeOf(const std::vector<Vec3>& vertices, const std::vector<int>& loop, std::size_t index) {
  const Vec3 twiceArea = vectorArea(vertices, loop);
  if (!(twiceArea.norm() > kFlatness * kFlatness)) return fail("A face has no area.", nameOf("face", index));
  Face face;
  face.normal = twiceArea.normalized();
  double low = std::numeric_limits<double>::infinity();
  face.offset = -low;
  for (const int corner : loop) {
    const double height = face.normal.dot(vertices[static_cast<std::size_t>(corner)]);
    face.offset = std::max(face.offset, height);
    low = std::min(low, height);
  }
  if (face.offset - low > kFlatness) {
    return fail("A face is not flat.", nameOf("face", index), "Cut it into triangles.");
  }
  return face;
}

Result<void> checkConvex(const std::vector<Vec3>& vertices, const std::vector<Face>& faces) {
  for (std::size_t f = 0; f < faces.size(); ++f) {
    double depth = 0;
    for (const Vec3& p : vertices) {
      const double height = faces[f].normal.dot(p) - faces[f].offset;
      if (height > kFlatness) {
        return fail("The solid is not convex: a corner stands out beyond a face.", nameOf("face", f),
                    "Cut it into convex pieces.");
      }
      depth = std::max(depth, -height);
    }
    if (depth < ConvexPolyhedron::kMinimumThickness) {
      return fail("The solid is flat: it has no thickness.", nameOf("face", f),
                  "Make it at least 0.001 mm thick.");
    }
  }
  return {};
}

void addAxis(std::vector<Vec3>& axes, const Vec3& direction) {
  const auto same = [&](const Vec3& axis) { return axis.cross(direction).norm() <= kSameDirection; };
  if (std::none_of(axes.begin(), axes.end(), same)) axes.push_back(direction);
}

}  // namespace

Result<ConvexPolyhedron> ConvexPolyhedron::fromFaces(std::vector<Vec3> vertices, const Loops& given) {
  if (const auto ok = checkIndices(vertices, given); !ok) return tl::unexpected(ok.error());
  Loops loops = given;
  if (volumeOf(vertices, loops) < 0) {
    for (auto& loop : loops) std::reverse(loop.begin(), loop.end());
  }
  auto edges = edgesOf(loops);
  if (!edges) return tl::unexpected(edges.error());
  if (vertices.size() + loops.size() != edges->size() + 2) {
    return fail("The faces do not close to one solid without holes.");
  }

  ConvexPolyhedron body;
  for (std::size_t f = 0; f < loops.size(); ++f) {
    auto face = planeOf(vertices, loops[f], f);
    if (!face) return tl::unexpected(face.error());
    face->firstCorner = static_cast<int>(body.corners_.size());
    face->cornerCount = static_cast<int>(loops[f].size());
    body.corners_.insert(body.corners_.end(), loops[f].begin(), loops[f].end());
    body.faces_.push_back(*face);
  }
  if (const auto ok = checkConvex(vertices, body.faces_); !ok) return tl::unexpected(ok.error());
  body.vertices_ = std::move(vertices);
  body.edges_ = std::move(*edges);
  for (const Face& face : body.faces_) addAxis(body.faceAxes_, face.normal);
  for (const Edge& edge : body.edges_) {
    addAxis(body.edgeAxes_, (body.vertex(edge.to) - body.vertex(edge.from)).normalized());
  }
  body.measure();
  return body;
}

void ConvexPolyhedron::measure() {
  middle_ = Vec3::Zero();
  for (const Vec3& p : vertices_) middle_ += p;
  middle_ /= static_cast<double>(vertices_.size());
  bounds_ = boundsOf(std::span<const Vec3>(vertices_));
}

double ConvexPolyhedron::volume() const {
  double threefold = 0;
  for (const Face& face : faces_) {
    threefold += 0.5 * (vertex(corners(face)[0]) - middle_).dot(vectorArea(vertices_, corners(face)));
  }
  return threefold / 3;
}

bool ConvexPolyhedron::operator==(const ConvexPolyhedron& other) const {
  const auto sameLoop = [](const Face& a, const Face& b) { return a.cornerCount == b.cornerCount; };
  return vertices_ == other.vertices_ && corners_ == other.corners_ &&
         std::equal(faces_.begin(), faces_.end(), other.faces_.begin(), other.faces_.end(), sameLoop);
}

ConvexPolyhedron transformed(const ConvexPolyhedron& body, const RigidMap& map) {
  ConvexPolyhedron moved = body;
  for (Vec3& p : moved.vertices_) p = map(p);
  for (Face& face : moved.faces_) {
    face.normal = map.linear * face.normal;
    face.offset += face.normal.dot(map.offset);
  }
  if (map.mirrors()) {
    for (const Face& face : moved.faces_) {
      const auto first = moved.corners_.begin() + face.firstCorner;
      std::reverse(first, first + face.cornerCount);
    }
    for (Edge& edge : moved.edges_) std::swap(edge.left, edge.right);
  }
  for (Vec3& axis : moved.faceAxes_) axis = map.linear * axis;
  for (Vec3& axis : moved.edgeAxes_) axis = map.linear * axis;
  moved.measure();
  return moved;
}

}  // namespace baywright
