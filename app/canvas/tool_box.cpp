// SPDX-License-Identifier: Apache-2.0
#include "canvas/tool_box.h"

namespace baywright {
namespace {

ToolKind toolFor(const FixtureShape& shape) {
  if (std::holds_alternative<PrismShape>(shape)) return ToolKind::FixturePolygon;
  if (std::holds_alternative<CylinderShape>(shape)) return ToolKind::FixtureCylinder;
  return ToolKind::FixtureBox;
}

}  // namespace

void ToolBox::choose(ToolKind kind) {
  current_ = kind;
  Q_EMIT chosen(kind);
}

void ToolBox::placeFixture(const Fixture& prototype) {
  settings_.fixture = prototype;
  choose(toolFor(prototype.shape));
}

void ToolBox::placeOpening(const Opening& prototype) {
  settings_.opening = prototype;
  choose(ToolKind::Opening);
}

}  // namespace baywright
