// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>

#include "canvas/wall_view.h"

class QComboBox;
class QToolButton;

namespace baywright {

/// The elevation of a wall with its choice over it: which wall, the one to the left or right of it, and
/// whether it is shown large in the plan's place.
class WallBox : public QWidget {
  Q_OBJECT

 public:
  WallBox(Document& document, ToolBox& toolBox, QWidget* parent = nullptr);

  WallView& view() { return *view_; }
  bool isLarge() const;
  void setLarge(bool large);

 Q_SIGNALS:
  void largeWanted(bool large);

 private:
  void fillWalls();
  void showChoice();

  Document& document_;
  WallView* view_;
  QComboBox* walls_;
  QToolButton* large_;
};

}  // namespace baywright
