// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/convex_polyhedron.h"
#include "geometry/solid.h"
#include "job/kit.h"
#include "job/placement.h"

namespace baywright {

// What the kit takes up, as solids in the bay frame (d, r, u).

/// One side of the frame, as thick as its members: fabric between tubes counts like the tubes, since a club
/// that reaches it is caught or comes back.
struct FramePanel {
  std::string name;  ///< "the frame's left side"
  ConvexPolyhedron body;
  /// The same with kFabricBacking behind it: what a club that reaches the fabric is found in.
  ConvexPolyhedron backed;
};
inline constexpr double kFabricBacking = 1.0;
/// Left and right side, roof, and what stands behind the screen's face. Empty for a frame without size.
std::vector<FramePanel> framePanels(const Frame& frame);

/// The whole frame as one box, and the boxes that must be free round it, each from the floor up:
///   above   higher by `more`
///   beside  wider by `more` on both sides
/// Nothing for a frame without size.
std::optional<ConvexPolyhedron> frameBox(const Frame& frame);
std::optional<ConvexPolyhedron> frameBoxAbove(const Frame& frame, double more);
std::optional<ConvexPolyhedron> frameBoxBeside(const Frame& frame, double more);
/// Where the screen's face moves when it is hit: from the face back by its travel and `more`, at least as
/// deep as the frame itself stands behind it.
std::optional<ConvexPolyhedron> screenTravelBox(const Frame& frame, const Screen& screen, double more);

/// `at` is the middle of its underside.
std::optional<ConvexPolyhedron> monitorBody(const LaunchMonitor& monitor, const Vec3& at);

/// The pole from the projector's body to the ceiling above, or the stand from it to the floor; nothing on a
/// wall, or when there is no room for one.
std::optional<Cylinder> mountDrop(const ConvexPolyhedron& body, MountKind kind, double ceilingHeight);
inline constexpr double kMountRadius = 0.03;  ///< of poles and stands, metres (common practice, no source)

}  // namespace baywright
