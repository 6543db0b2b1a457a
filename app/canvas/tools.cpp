// SPDX-License-Identifier: Apache-2.0
#include "canvas/tools.h"

#include <array>

#include "canvas/aim_tool.h"
#include "canvas/bystander_tool.h"
#include "canvas/ceiling_tool.h"
#include "canvas/fixture_tools.h"
#include "canvas/measure_tool.h"
#include "canvas/opening_tool.h"
#include "canvas/outline_tool.h"
#include "canvas/scan_align_tool.h"
#include "canvas/scan_tools.h"
#include "canvas/select_tool.h"
#include "canvas/tool_words.h"
#include "canvas/wall_place_tools.h"
#include "canvas/wall_tool.h"
#include "canvas/zoom_tool.h"

namespace baywright {
namespace {

bool everywhere(ViewKind) {
  return true;
}
bool onThePlan(ViewKind view) {
  return view == ViewKind::Plan;
}

bool notOnWalls(ViewKind view) {
  return view != ViewKind::Wall;
}
bool onPlanAndWalls(ViewKind view) {
  return view == ViewKind::Plan || view == ViewKind::Wall;
}

template <class T>
std::unique_ptr<Tool> make(ViewKind) {
  return std::make_unique<T>();
}
/// What is placed on the plan with one gesture and on a wall's face with another.
template <class OnPlan, class OnWall>
std::unique_ptr<Tool> makeEither(ViewKind view) {
  if (view == ViewKind::Wall) return std::make_unique<OnWall>();
  return std::make_unique<OnPlan>();
}

constexpr std::array kTools{
    ToolRow{ToolKind::Select, QT_TRANSLATE_NOOP("Tool", "Select and move"),
            QT_TRANSLATE_NOOP("Tool", "Select"), "tool-select", "V",
            QT_TRANSLATE_NOOP("Tool", "Selects, moves, turns and removes things."), everywhere,
            make<SelectTool>},
    ToolRow{ToolKind::Measure, QT_TRANSLATE_NOOP("Tool", "Measure"), QT_TRANSLATE_NOOP("Tool", "Measure"),
            "tool-measure", "M", QT_TRANSLATE_NOOP("Tool", "Shows the distance between two points."),
            everywhere, make<MeasureTool>},
    ToolRow{ToolKind::Outline, QT_TRANSLATE_NOOP("Tool", "Draw the room"),
            QT_TRANSLATE_NOOP("Tool", "Draw the room"), "tool-outline", "D",
            QT_TRANSLATE_NOOP("Tool", "Draws or traces the room's outline, corner by corner."), onThePlan,
            make<OutlineTool>},
    ToolRow{ToolKind::Wall, QT_TRANSLATE_NOOP("Tool", "Move walls and corners"),
            QT_TRANSLATE_NOOP("Tool", "Walls"), "tool-wall", "W",
            QT_TRANSLATE_NOOP("Tool", "Moves walls and corners, and sets a wall's length."), onThePlan,
            make<WallTool>},
    ToolRow{ToolKind::Opening, QT_TRANSLATE_NOOP("Tool", "Place a door or window"),
            QT_TRANSLATE_NOOP("Tool", "Door, window"), "tool-opening", "O",
            QT_TRANSLATE_NOOP("Tool", "Puts the chosen door, window or passage into a wall."),
            onPlanAndWalls, makeEither<OpeningTool, WallOpeningTool>},
    ToolRow{ToolKind::Ceiling, QT_TRANSLATE_NOOP("Tool", "Read the ceiling"),
            QT_TRANSLATE_NOOP("Tool", "Ceiling"), "tool-ceiling", "H",
            QT_TRANSLATE_NOOP("Tool", "Takes ceiling heights at the points that are clicked on the plan."),
            onThePlan, make<CeilingTool>},
    ToolRow{ToolKind::FixtureBox, QT_TRANSLATE_NOOP("Tool", "Place a box"), QT_TRANSLATE_NOOP("Tool", "Box"),
            "tool-box", "B", QT_TRANSLATE_NOOP("Tool", "Places the chosen fixture as a box."), onPlanAndWalls,
            makeEither<FixtureBoxTool, WallFixtureTool>},
    ToolRow{ToolKind::FixturePolygon, QT_TRANSLATE_NOOP("Tool", "Place a prism"),
            QT_TRANSLATE_NOOP("Tool", "Prism"), "tool-prism", "G",
            QT_TRANSLATE_NOOP("Tool", "Places the chosen fixture with any outline."), onThePlan,
            make<FixturePolygonTool>},
    ToolRow{ToolKind::FixtureCylinder, QT_TRANSLATE_NOOP("Tool", "Place a cylinder"),
            QT_TRANSLATE_NOOP("Tool", "Cylinder"), "tool-cylinder", "C",
            QT_TRANSLATE_NOOP("Tool", "Places the chosen fixture as an upright cylinder."),
            onPlanAndWalls, makeEither<FixtureCylinderTool, WallFixtureTool>},
    ToolRow{ToolKind::Bystander, QT_TRANSLATE_NOOP("Tool", "Place a bystander"),
            QT_TRANSLATE_NOOP("Tool", "Bystander"), "tool-bystander", "Y",
            QT_TRANSLATE_NOOP("Tool", "Says where somebody stands or sits who does not swing."), onThePlan,
            make<BystanderTool>},
    ToolRow{ToolKind::ScanScale, QT_TRANSLATE_NOOP("Tool", "Set the plan's scale"),
            QT_TRANSLATE_NOOP("Tool", "Set scale"), "tool-scale", "S",
            QT_TRANSLATE_NOOP("Tool", "Sets a scanned plan's scale by two points and their true distance."),
            onThePlan, make<ScanScaleTool>},
    ToolRow{ToolKind::ScanStraighten, QT_TRANSLATE_NOOP("Tool", "Straighten the plan"),
            QT_TRANSLATE_NOOP("Tool", "Straighten"), "tool-straighten", "Q",
            QT_TRANSLATE_NOOP("Tool", "Straightens a photographed plan by the four corners of a rectangle."),
            onThePlan, make<ScanStraightenTool>},
    ToolRow{ToolKind::ScanAlign, QT_TRANSLATE_NOOP("Tool", "Lay this plan on the other"),
            QT_TRANSLATE_NOOP("Tool", "Lay over"), "tool-align", "L",
            QT_TRANSLATE_NOOP("Tool", "Lays a plan on another one by two points that both show."), onThePlan,
            make<ScanAlignTool>},
    ToolRow{ToolKind::AimProjector, QT_TRANSLATE_NOOP("Tool", "Aim the projector"),
            QT_TRANSLATE_NOOP("Tool", "Aim"), "tool-aim", "P",
            QT_TRANSLATE_NOOP("Tool", "Moves the lens and turns its beam."), notOnWalls, make<AimTool>},
    ToolRow{ToolKind::Zoom, QT_TRANSLATE_NOOP("Tool", "Zoom to a box"), QT_TRANSLATE_NOOP("Tool", "Zoom"),
            "tool-zoom", "Z", QT_TRANSLATE_NOOP("Tool", "Fills the view with what a box is dragged over."),
            everywhere, make<ZoomTool>},
};

}  // namespace

std::span<const ToolRow> tools() {
  return kTools;
}

const ToolRow& toolRow(ToolKind kind) {
  return kTools[static_cast<std::size_t>(kind)];
}

QString toolText(const char* english) {
  return toolWords(english);
}

}  // namespace baywright
