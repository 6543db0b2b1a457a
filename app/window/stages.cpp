// SPDX-License-Identifier: Apache-2.0
#include "window/stages.h"

#include <QCoreApplication>

namespace baywright {

const std::vector<StageRow>& stages() {
  static const std::vector<StageRow> rows = {
      {Stage::Survey,
       QT_TRANSLATE_NOOP("Stage", "Survey"),
       QT_TRANSLATE_NOOP("Stage", "The room: plan, walls, ceiling, doors, whatever stands or hangs in it."),
       {ToolKind::Select, ToolKind::ScanScale, ToolKind::ScanStraighten, ToolKind::ScanAlign, ToolKind::Outline, ToolKind::Wall,
        ToolKind::Ceiling, ToolKind::Opening, ToolKind::FixtureBox, ToolKind::FixturePolygon, ToolKind::FixtureCylinder,
        ToolKind::Measure}},
      {Stage::Place,
       QT_TRANSLATE_NOOP("Stage", "Place"),
       QT_TRANSLATE_NOOP("Stage", "People and kit: where the bay stands and who can swing in it."),
       {ToolKind::Select, ToolKind::Bystander, ToolKind::AimProjector, ToolKind::Measure}},
      {Stage::Picture,
       QT_TRANSLATE_NOOP("Stage", "Picture"),
       QT_TRANSLATE_NOOP("Stage", "The projector's picture on the screen: size, keystone, shadow, light."),
       {ToolKind::Select, ToolKind::AimProjector, ToolKind::Measure}},
      {Stage::Compare,
       QT_TRANSLATE_NOOP("Stage", "Compare"),
       QT_TRANSLATE_NOOP("Stage", "The job's options side by side."),
       {}},
      {Stage::SignOff,
       QT_TRANSLATE_NOOP("Stage", "Sign-off"),
       QT_TRANSLATE_NOOP("Stage", "The plan on paper, true to scale."),
       {}},
  };
  return rows;
}

QString stageText(const char* english) {
  return QCoreApplication::translate("Stage", english);
}

}  // namespace baywright
