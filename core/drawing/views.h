// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "clearance/assessment.h"
#include "drawing/linework.h"
#include "drawing/swing_outline.h"
#include "job/job.h"

namespace baywright {

/// Where on the floor the ball may lie for one golfer's swing (clearance/headroom_field.h), world metres.
struct StandingMark {
  Id golfer;
  std::string name;  ///< "Driver, Robin"
  std::vector<Ring> zone;
};

/// Which of the zones a view shows, and what is singled out in it.
struct ViewOptions {
  bool swing = true;
  bool swingBound = true;
  bool beam = true;
  bool capture = true;
  bool rebound = true;
  bool ways = true;
  bool dimensions = true;
  bool labels = true;
  bool corners = false;   ///< how sure the corners are: their 95 % ellipses, enlarged
  StandingMark standing;  ///< drawn where it has rings
  std::vector<Id> shown;  ///< golfers whose swing is drawn strongly; empty: all
  /// Metres of the drawing for a millimetre of paper or screen, 0.05 at 1:50. Spaces hatches, dimension lines
  /// and labels.
  double metresPerMm = 0.05;
  std::string findingKey;  ///< this finding's two points are drawn; empty: those of the worst three that are
                           ///< not clear
};

enum class ViewKind { Plan, DownRange, Side, ScreenFace, Wall };

/// Which view is drawn: a kind, and for ViewKind::Wall the wall that is looked at. A kind alone converts.
struct DrawnView {
  ViewKind kind = ViewKind::Plan;
  Id wall;

  DrawnView(ViewKind viewKind, Id lookedAt = {}) : kind(viewKind), wall(lookedAt) {}
  bool operator==(const DrawnView&) const = default;
};

/// A point of the world in the drawing coordinates of a view, metres.
///   Plan       (x, y) of the world
///   DownRange  (r, u) of the bay: as the golfer looks at the screen
///   Side       (d, u) of the bay: from the bay's right-hand side, with down-range to the right; the screen
///              stands at d = 0
///   ScreenFace (s, t) of the screen
///   Wall       (x, z): from inside the room, x to the right from the wall's end to its start, z up; zero
///              where there is no such wall
Vec2 viewFromWorld(const DrawnView& view, const Job& job, const Vec3& world);

/// All linework of one view, in drawing order within each layer. Pure: the same job and assessment give the
/// same linework.
Linework viewLinework(const DrawnView& view, const Job& job, const Assessment& assessment,
                      const ViewOptions& options);

/// viewLinework() for job after job, as while something is dragged: keeps the outlines of swings that did not
/// change. It never gives another answer. One thread at a time.
class ViewDrawer {
 public:
  Linework draw(const DrawnView& view, const Job& job, const Assessment& assessment,
                const ViewOptions& options);

 private:
  SwingOutlines outlines_;
};

}  // namespace baywright
