// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "base/problem.h"
#include "geometry/bounds.h"
#include "geometry/rigid_map.h"

namespace baywright {

/// Convex solid with flat faces: shelf, beam, wall piece, sloped ceiling slab. Its boundary belongs to it.
/// Made by the factories below, which refuse whatever encloses no volume; then it never changes. It holds its
/// edges and the directions that separating-axis tests need, so that queries compute nothing twice.
class ConvexPolyhedron {
 public:
  /// One flat side. Inside is normal.dot(p) <= offset.
  struct Face {
    Vec3 normal;          ///< unit, outward
    double offset = 0;    ///< metres along the normal from the frame's origin
    int firstCorner = 0;  ///< its loop is corners(face): counter-clockwise seen from outside
    int cornerCount = 0;
  };
  /// Where two faces meet. Seen from outside, `left` lies to the left of the way from `from` to `to`.
  struct Edge {
    int from = 0;
    int to = 0;
    int left = 0;
    int right = 0;
  };

  /// A body thinner than this in the direction of a face's normal is flat and refused. Far below any tape,
  /// far above the rounding of coordinates within a kilometre.
  static constexpr double kMinimumThickness = 1e-6;
  /// Corners closer than this are one, and a corner may stand off its face's plane (so an edge bend inward)
  /// by this much. It passes into every distance to such a body, so it is kept below the 1e-6 m that
  /// distances are tested to.
  static constexpr double kFlatness = 1e-7;

  /// A body from corners and face loops (indices of corners, any common winding). Refused with a sentence:
  /// loops of fewer than three corners or with wrong indices, faces that are not flat, edges without exactly
  /// two faces, a body that is not convex or has no volume, numbers that are not finite. Neighbouring faces
  /// may lie in one plane.
  static Result<ConvexPolyhedron> fromFaces(std::vector<Vec3> vertices,
                                            const std::vector<std::vector<int>>& loops);

  const std::vector<Vec3>& vertices() const { return vertices_; }
  const Vec3& vertex(int index) const { return vertices_[static_cast<std::size_t>(index)]; }
  const std::vector<Face>& faces() const { return faces_; }
  const std::vector<Edge>& edges() const { return edges_; }
  /// Vertex indices of a face.
  std::span<const int> corners(const Face& face) const {
    return {corners_.data() + face.firstCorner, static_cast<std::size_t>(face.cornerCount)};
  }
  /// Unit face normals, each line once whichever way it points: three for a box.
  const std::vector<Vec3>& faceAxes() const { return faceAxes_; }
  /// Unit edge directions, each line once: three for a box.
  const std::vector<Vec3>& edgeAxes() const { return edgeAxes_; }
  /// Mean of the vertices: a point inside.
  const Vec3& middle() const { return middle_; }
  const Aabb3& bounds() const { return bounds_; }
  /// Cubic metres.
  double volume() const;

  /// Same vertices and faces in the same order.
  bool operator==(const ConvexPolyhedron& other) const;

  friend ConvexPolyhedron transformed(const ConvexPolyhedron& body, const RigidMap& map);

 private:
  ConvexPolyhedron() = default;
  void measure();

  std::vector<Vec3> vertices_;
  std::vector<int> corners_;
  std::vector<Face> faces_;
  std::vector<Edge> edges_;
  std::vector<Vec3> faceAxes_;
  std::vector<Vec3> edgeAxes_;
  Vec3 middle_ = Vec3::Zero();
  Aabb3 bounds_;
};

ConvexPolyhedron transformed(const ConvexPolyhedron& body, const RigidMap& map);
inline const Aabb3& boundsOf(const ConvexPolyhedron& body) {
  return body.bounds();
}

/// Upright box on the plan: size.x along `heading` (radians, counter-clockwise from x), size.y across it,
/// between the heights `bottom` and `top`.
struct UprightBox {
  Vec2 centre = Vec2::Zero();
  double heading = 0;
  Vec2 size = Vec2::Zero();
  double bottom = 0;
  double top = 0;
};
Result<ConvexPolyhedron> boxFrom(const UprightBox& box);

/// Box any way round: corners at centre ± each column of `halfAxes`. The columns need not be perpendicular
/// (then it is a parallelepiped) but must span a volume.
struct TiltedBox {
  Vec3 centre = Vec3::Zero();
  Mat3 halfAxes = Mat3::Zero();
};
Result<ConvexPolyhedron> boxFrom(const TiltedBox& box);

/// Plane over the plan: z = height + gradient.dot(xy - at). Gradient is rise over run; zero is level.
struct SlopedPlane {
  Vec2 at = Vec2::Zero();
  double height = 0;
  Vec2 gradient = Vec2::Zero();

  bool operator==(const SlopedPlane&) const = default;

  static SlopedPlane level(double height) { return {Vec2::Zero(), height, Vec2::Zero()}; }
  double heightAt(const Vec2& xy) const { return height + gradient.dot(xy - at); }
};

/// Everything above an outline on the plan between two planes: a wall piece, a ceiling slab with a sloped
/// underside, a wedge. The outline may turn either way; the planes may meet at its corners or along its
/// edges, but not cross inside it.
struct Prism {
  std::vector<Vec2> outline;
  SlopedPlane bottom;
  SlopedPlane top;
};
/// The outline must be convex (corners on a straight line are fine); prismPieces in solid.h takes any
/// outline.
Result<ConvexPolyhedron> convexPrismFrom(const Prism& prism);

}  // namespace baywright
