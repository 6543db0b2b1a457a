// SPDX-License-Identifier: Apache-2.0
#include "canvas/tool_box.h"

namespace baywright {

ToolKind toolFor(const FixtureShape& shape) {
  if (std::holds_alternative<PrismShape>(shape)) return ToolKind::FixturePolygon;
  if (std::holds_alternative<CylinderShape>(shape)) return ToolKind::FixtureCylinder;
  return ToolKind::FixtureBox;
}

ToolBox::ToolBox(QObject* parent) : QObject(parent) {
  settings_.opening.name = "Door";
  Fixture column{{}, "Column", FixtureKind::Column, CylinderShape{}, taped(0), guessed(2.4)};
  Fixture prism{{}, "Built-in part", FixtureKind::Other, PrismShape{}, taped(0), guessed(2.4)};
  placed_ = {{ToolKind::FixtureBox, settings_.fixture},
             {ToolKind::FixtureCylinder, std::move(column)},
             {ToolKind::FixturePolygon, std::move(prism)}};
}

void ToolBox::choose(ToolKind kind) {
  current_ = kind;
  if (const auto placed = placed_.find(kind); placed != placed_.end()) settings_.fixture = placed->second;
  Q_EMIT chosen(kind);
}

void ToolBox::placeFixture(const Fixture& prototype) {
  const ToolKind kind = toolFor(prototype.shape);
  placed_[kind] = prototype;
  choose(kind);
}

void ToolBox::placeOpening(const Opening& prototype) {
  settings_.opening = prototype;
  choose(ToolKind::Opening);
}

}  // namespace baywright
