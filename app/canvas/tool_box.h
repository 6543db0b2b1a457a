// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>

#include "canvas/tool_settings.h"
#include "canvas/tools.h"

namespace baywright {

/// Which tool is in hand, for all views together. A view in which it does not work selects and moves instead.
class ToolBox : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  ToolKind current() const { return current_; }
  const ToolSettings& settings() const { return settings_; }

  void choose(ToolKind kind);
  /// Chooses the tool that suits the prototype's shape.
  void placeFixture(const Fixture& prototype);
  void placeOpening(const Opening& prototype);

 Q_SIGNALS:
  /// Also when the same tool is chosen again: it starts anew.
  void chosen(baywright::ToolKind kind);

 private:
  ToolKind current_ = ToolKind::Select;
  ToolSettings settings_;
};

}  // namespace baywright
