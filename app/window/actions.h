// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QKeySequence>
#include <QString>
#include <vector>

namespace baywright {

class MainWindow;

enum class MenuPlace { File, Edit, View, Help };

/// One thing that can be asked of the window: a row in a table makes its menu entry, its shortcut and its
/// status text.
struct ActionRow {
  const char* name;  ///< stable, of the QAction object
  MenuPlace menu;
  const char* text;
  const char* icon;  ///< empty: none
  QKeySequence shortcut;
  const char* help;
  void (*run)(MainWindow&);
  bool startsGroup = false;  ///< a line above it in the menu
};

const std::vector<ActionRow>& actionRows();
QString actionText(const char* english);

/// Which zones the views show: a switch each in the View menu.
struct ZoneRow {
  const char* name;
  const char* text;
  bool* (*at)(struct ViewOptions&);
};
const std::vector<ZoneRow>& zoneRows();

}  // namespace baywright
