// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>

#include "base/problem.h"
#include "geometry/vec.h"
#include "job/placement.h"

namespace baywright {

/// A projector in its place, as a pinhole: every native pixel has one straight ray from one point, the lens.
/// All in the bay frame (d, r, u), metres. Real lenses add a little barrel or pincushion, under 1 % of the
/// picture's width on a good one (value from memory); it is not modelled.
///
/// At distance 1 along the optical axis and square to it the picture is a rectangle:
///   width   1 / throw ratio                  (ratio of distance to width, IEC 62471-5 test set-up)
///   height  width / panel aspect
///   middle  to the right by shiftSide * width, up by (offset or -offset, + shiftUp) * height
/// The offset works upward for a projector that stands (floor, wall) and downward for one that hangs upside
/// down under the ceiling, whose electronics turn the picture the right way up again. So `right` and `up` are
/// those of the picture, not of the body. Offset and shift move the picture and leave it a rectangle; only
/// turning the axis away from the screen's normal makes a keystone.
///
/// (axis, right, up) is a left-handed triple, like (d, r, u) itself.
struct ProjectorLens {
  Vec3 centre = Vec3::Zero();
  Vec3 axis = Vec3::UnitX();
  Vec3 right = Vec3::UnitY();
  Vec3 up = Vec3::UnitZ();
  Vec2 middle = Vec2::Zero();
  Vec2 extent = Vec2::Ones();
  Vec2 panel = Vec2::Ones();  ///< native pixels across and down

  bool operator==(const ProjectorLens&) const = default;

  /// Top left, top right, bottom right, bottom left of the panel.
  std::array<Vec2, 4> panelCorners() const {
    return {Vec2{0, 0}, Vec2{panel.x(), 0}, panel, Vec2{0, panel.y()}};
  }
};

/// Refused with a sentence: a throw ratio, panel size or offset that makes no picture, numbers that are not
/// finite. It does not ask whether the projector can do this zoom or shift: mountMargins in aim.h does.
Result<ProjectorLens> lensOf(const Projector& projector, const ProjectorMount& mount);

/// Direction from the lens through a panel position, in the bay frame; its component along the axis is 1.
/// Panel positions are continuous: pixel (i, j) covers [i, i+1] x [j, j+1] and (0, 0) is the picture's top
/// left corner. Positions off the panel are answered too.
Vec3 bayRayFromPanel(const ProjectorLens& lens, const Vec2& pixel);

/// Coordinates of a bay point along (axis, right, up), from the lens. Points with x <= 0 are not in front of
/// it.
Vec3 lensFromBay(const ProjectorLens& lens, const Vec3& p);

/// The panel position of a point in those coordinates; x > 0.
Vec2 panelFromLens(const ProjectorLens& lens, const Vec3& q);

/// The panel position whose ray meets a bay point; none for a point that is not in front of the lens.
std::optional<Vec2> panelFromBay(const ProjectorLens& lens, const Vec3& p);

}  // namespace baywright
