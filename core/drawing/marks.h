// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <initializer_list>
#include <string>
#include <vector>

#include "drawing/linework.h"

namespace baywright::detail {

/// Short ways to make the marks of linework. Internal to `drawing`.

Path polyline(Layer layer, std::vector<Vec2> points, Id id = {});
Path polygon(Layer layer, std::vector<Vec2> ring, Id id = {});
Path areaOf(Layer layer, std::vector<std::vector<Vec2>> rings, Fill fill, Id id = {});
Path rectangle(Layer layer, const Eigen::AlignedBox2d& box, Id id = {});
/// Separate straight pieces.
Path strokes(Layer layer, std::vector<std::vector<Vec2>> pieces, Id id = {});

/// Corners on a circle, closed by the caller's polygon.
std::vector<Vec2> circleRing(const Vec2& centre, double radius);
/// From one angle to another, radians, ends included; a point every few degrees.
std::vector<Vec2> arc(const Vec2& centre, double radius, double fromAngle, double toAngle);

/// Height of names beside a drawing's figures, millimetres on paper: the smallest lettering of ISO 3098-1
/// (value from memory).
inline constexpr double kSmallText = 1.8;

/// The angle at which a text along a line of this direction reads, radians: from below or from the right
/// (ISO 129-1, value from memory). Lines within two degrees of upright count as upright, so that texts along
/// walls a little out of plumb all read from the same side.
double readableAngle(double lineAngle);

Text textAt(Layer layer, const Vec2& at, std::string text, TextAnchor anchor = TextAnchor::Left);

}  // namespace baywright::detail
