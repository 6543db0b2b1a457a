// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QDialog>
#include <vector>

#include "base/problem.h"
#include "exchange/dxf_layers.h"
#include "exchange/dxf_room.h"

class QComboBox;
class QLabel;
class QPushButton;
class QTreeWidget;

namespace baywright {

class DrawingPreview;

/// Asks what a drawing does not say for certain: which layers hold the walls, and in which unit it is drawn.
/// What is likely is chosen beforehand, with the reason beside it; the drawing is shown with the chosen
/// layers standing out.
class DrawingDialog : public QDialog {
  Q_OBJECT

 public:
  /// The drawing must outlive the dialog.
  DrawingDialog(const DxfDrawing& drawing, const QString& fileName, QWidget* parent = nullptr);

  DxfChoices choices() const;
  /// Why the last choices gave no room: shown above the buttons.
  void showProblem(const Problem& problem);

 private:
  void fillLayers();
  void fillUnits();
  std::vector<int> chosenLayers() const;
  void follow();

  const DxfDrawing& drawing_;
  std::vector<LayerView> views_;  // in the order of the list
  DrawingPreview* preview_;
  QTreeWidget* layers_;
  QComboBox* units_;
  QLabel* problem_;
  QPushButton* take_;
};

}  // namespace baywright
