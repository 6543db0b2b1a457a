// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "canvas/view.h"

namespace baywright {

/// The elevation of one wall from inside the room, to draw upon. It goes to the wall of what is selected, and
/// to another one when its wall is gone.
class WallView : public View {
  Q_OBJECT

 public:
  WallView(Document& document, ToolBox& toolBox, QWidget* parent = nullptr);

  Id wall() const { return view().wall; }
  void showWall(Id wall);
  /// Round the room, as the viewer turns to the right: +1, or to the left: -1.
  void turn(int walls);

 Q_SIGNALS:
  void wallChanged(baywright::Id wall);

 private:
  void followSelection();
  void keepAWall();
};

}  // namespace baywright
