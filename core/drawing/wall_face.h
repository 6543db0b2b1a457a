// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "drawing/live_dimensions.h"
#include "drawing/snap.h"
#include "job/job.h"
#include "job/room_geometry.h"

namespace baywright {

/// A wall's inner face as its elevation shows it, from inside the room: x metres to the right from the wall's
/// end to its start, y metres above the floor. What stands or hangs in front of it is seen square to it.
using FaceBox = Eigen::AlignedBox2d;

Vec2 onFace(const WallLine& wall, const Vec3& world);
/// The foot of the face at x, world metres; beyond the wall's ends on its straight line.
Vec2 footOfFace(const WallLine& wall, double x);

/// What an opening or a fixture covers of the face; nothing for other things, and for an opening of another
/// wall.
std::optional<FaceBox> faceBoxOf(const Room& room, Id wall, Id thing);

/// The lowest underside of the ceiling over the face between two places along it; nothing where it is not
/// known.
std::optional<double> ceilingOverFace(const Room& room, const WallLine& wall, double from, double to);

/// Where a box of the prototype's size stands when its middle is wanted at `at`: within the wall's length, and
/// on the floor if the prototype stands there.
FaceBox usualBox(const WallLine& wall, const Opening& prototype, const Vec2& at);
FaceBox usualBox(const WallLine& wall, const Fixture& prototype, const Vec2& at);

/// Figures of a box on the face that somebody typed, metres.
struct TypedFace {
  std::optional<double> width;
  std::optional<double> height;
  std::optional<double> left;  ///< of the box's left edge from the wall's left end
  std::optional<double> low;   ///< of its lower edge above the floor
};
/// The box with one corner at `start` that opens the way `toward` lies from it; typed figures win.
FaceBox boxOnFace(const Vec2& start, const Vec2& toward, const TypedFace& typed = {});
/// The same box where a typed place or size is asked for; it grows from its left edge and its lower one.
FaceBox withTyped(FaceBox box, const TypedFace& typed);

/// The prototype in the wall where it was drawn, cut to the wall's length; doors reach down to the floor.
/// Place and size count as read by `how`.
Opening openingOnFace(const WallLine& wall, Opening prototype, const FaceBox& drawn, Instrument how);
/// The prototype with its back against the wall: a box as deep as it was, a cylinder as wide as drawn. A
/// prism becomes a box.
Fixture fixtureOnFace(const WallLine& wall, Fixture prototype, const FaceBox& drawn, Instrument how);

/// Nothing of the box reaches past the wall's ends.
bool liesOnFace(const WallLine& wall, const FaceBox& box);

/// How what is drawn on a face was found: by the scan that shows on it, else as a guess.
Instrument drawnOnFaceBy(const Job& job);

/// Places that attract a box (or a point, a box without size) while it moves over the face: the wall's ends
/// and middle, floor and ceiling, edges of what is there already, `usual` height of its lower edge. `except`
/// is the thing that moves.
std::vector<SnapRule> faceRules(const Job& job, Id wall, const FaceBox& box, Id except,
                                std::optional<double> usualHeight = std::nullopt);

/// From the box to both ends of the wall and, where it can rise, to floor and ceiling.
std::vector<LiveDimension> faceDimensions(const Room& room, Id wall, const FaceBox& box, bool canRise);

}  // namespace baywright
