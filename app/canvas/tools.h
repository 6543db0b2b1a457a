// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <memory>
#include <span>

#include "canvas/tool.h"
#include "drawing/views.h"

namespace baywright {

enum class ToolKind {
  Select,
  Measure,
  Outline,
  Wall,
  Opening,
  Ceiling,
  FixtureBox,
  FixturePolygon,
  FixtureCylinder,
  Bystander,
  ScanScale,
  ScanStraighten,
  ScanAlign,
  AimProjector,
  Zoom,
};

/// A tool as menus, tool bars and help show it. Texts are in English here; toolText() translates them.
struct ToolRow {
  ToolKind kind;
  const char* name;      ///< "Place a box"
  const char* label;     ///< "Box": on its button, where room is short
  const char* icon;      ///< base name of an icon
  const char* shortcut;  ///< of QKeySequence; works while a view has the focus
  const char* help;      ///< one sentence
  bool (*worksIn)(ViewKind);
  std::unique_ptr<Tool> (*make)(ViewKind);
};

/// One row a tool, in the order of the enumeration.
std::span<const ToolRow> tools();
const ToolRow& toolRow(ToolKind kind);
QString toolText(const char* english);

}  // namespace baywright
