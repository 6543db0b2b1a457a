// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QDialog>

namespace baywright {

/// The help pages, one a check, and the first steps; all offline.
class HelpWindow : public QDialog {
  Q_OBJECT

 public:
  explicit HelpWindow(QWidget* parent = nullptr);
};

}  // namespace baywright
