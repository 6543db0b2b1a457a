// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <map>

#include "canvas/tool_settings.h"
#include "canvas/tools.h"

namespace baywright {

/// The tool that places a fixture of this shape.
ToolKind toolFor(const FixtureShape& shape);

/// Which tool is in hand, for all views together. A view in which it does not work selects and moves instead.
class ToolBox : public QObject {
  Q_OBJECT

 public:
  explicit ToolBox(QObject* parent = nullptr);

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
  std::map<ToolKind, Fixture> placed_;  ///< what each tool for fixtures placed last
};

}  // namespace baywright
