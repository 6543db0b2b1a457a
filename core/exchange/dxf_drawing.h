// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "exchange/dxf_unit.h"
#include "geometry/polygon.h"
#include "job/room_geometry.h"

namespace baywright {

/// A layer of a drawing. What lies on one that is off or frozen is not seen in the program that drew it.
struct DxfLayer {
  std::string name;  ///< UTF-8, as first spelt in the file; upper and lower case are one
  bool off = false;
  bool frozen = false;

  bool shown() const { return !off && !frozen; }
};

/// An exact arc of a circle, seen from above.
struct DxfArc {
  Vec2 centre = Vec2::Zero();
  double radius = 0;  ///< > 0
  double start = 0;   ///< radians from x to its first end
  double sweep = 0;  ///< radians from the first end to the other, positive counter-clockwise, within one turn

  Vec2 at(double angle) const;
  Vec2 first() const { return at(start); }
  Vec2 last() const { return at(start + sweep); }
};

/// A line of the drawing, seen from above, blocks taken apart. Curved parts are drawn in chords (kChordShare
/// of exchange/dxf_shapes.h); where they are arcs of circles these stand in `arcs` too.
struct DxfCurve {
  std::string_view kind;     ///< the entity's kind, "LINE", "LWPOLYLINE", ...
  int layer = 0;             ///< index into DxfDrawing::layers
  int insert = -1;           ///< index into DxfDrawing::inserts: the outermost block it came in; -1: none
  bool hidden = false;       ///< its layer, its block's or it itself is not shown
  bool closed = false;       ///< the last point is joined to the first
  double width = 0;          ///< of a band whose middle line this is, drawing units; 0: a mere line
  std::vector<Vec2> points;  ///< at least two
  std::vector<DxfArc> arcs;
};

/// A block placed in the drawing itself, not within another block.
struct DxfInsert {
  std::string block;
  int layer = 0;
  Vec2 at = Vec2::Zero();
};

struct DxfText {
  std::string words;  ///< UTF-8 without formatting; lines end with \n
  Vec2 at = Vec2::Zero();
  double height = 0;
  int layer = 0;
  bool hidden = false;
};

/// How many entities of one kind stand in the drawing itself (not in blocks), and what became of them.
struct DxfKindCount {
  std::string kind;
  std::size_t read = 0;
  std::size_t notUsed = 0;  ///< a kind that gives no line on a plan: hatches, dimensions, solids, pictures
  std::size_t paper = 0;    ///< in the space of the printed sheet, left out
  std::size_t damaged = 0;  ///< numbers missing or impossible, left out
};

/// What was read of a DXF file, in drawing units.
struct DxfDrawing {
  std::string version;  ///< $ACADVER, "AC1027"; empty where it is not stated
  DrawingUnit unit = DrawingUnit::NotStated;
  std::optional<bool> metric;  ///< $MEASUREMENT: only a hint, as it speaks of hatches and line types
  std::vector<DxfLayer> layers;
  std::vector<DxfInsert> inserts;
  std::vector<DxfCurve> curves;
  std::vector<DxfCurve> fillings;  ///< outlines of hatches, which count as not used
  std::vector<DxfText> texts;
  std::vector<DxfKindCount> kinds;  ///< in the order of their names
  std::vector<std::string> notes;   ///< one sentence each: damage, limits, what blocks lacked
};

/// The smallest upright box round the curves that are shown; nothing where there is none.
std::optional<PlanBox> extentOf(const DxfDrawing& drawing);
/// The same, or round the fillings where there are no curves.
std::optional<PlanBox> drawnExtent(const DxfDrawing& drawing);
/// The same for the curves of some layers, shown or not.
std::optional<PlanBox> extentOf(const DxfDrawing& drawing, std::span<const int> layers);

/// Index of the layer with that name, upper and lower case of ASCII being one; nothing when there is none.
std::optional<int> layerNamed(const DxfDrawing& drawing, std::string_view name);

/// A sentence for each kind of entity of which some were left out: "13 DIMENSION entities give no lines."
std::vector<std::string> skippedSentences(const DxfDrawing& drawing);

}  // namespace baywright
