// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <span>
#include <vector>

#include "geometry/solid.h"
#include "optics/picture.h"

namespace baywright::detail {

/// The light of a picture that reaches the screen, made ready to be asked about many things: what do you
/// hide?
class BeamWindow {
 public:
  explicit BeamWindow(const Picture& picture);

  /// The part of the panel that falls on the screen, native pixels, counter-clockwise by its numbers.
  const Ring& panel() const { return panel_; }
  double area() const { return area_; }

  /// What a body hides of it, a convex ring inside panel(); empty when nothing.
  Ring hiddenBy(const ConvexPolyhedron& body) const;
  Ring hiddenBy(const Cylinder& cylinder) const;
  Ring hiddenBy(const Capsule& capsule) const;

 private:
  /// True when a ball about any one of the points can lie in the beam's enclosing pyramid.
  bool mayHide(std::span<const Vec3> points, double radius) const;
  /// What the convex hull of some bay points hides. Cuts off what is behind the lens.
  Ring hiddenByHull(std::vector<Vec3> points) const;

  ProjectorLens lens_;
  Ring panel_;
  double area_ = 0;
  std::array<Vec3, 4> inward_;  ///< unit normals of the four planes through the lens that enclose the beam
};

}  // namespace baywright::detail
