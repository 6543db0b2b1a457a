// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>

#include "editing/document.h"
#include "models/measurements_model.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace baywright {

class ReadingsWorth;

/// Readings by tape and laser: a table to type them in, and beside it what they are worth together. All by
/// keyboard: Enter takes a figure and goes to the next that is open.
class MeasurementsPanel : public QWidget {
  Q_OBJECT

 public:
  explicit MeasurementsPanel(Document& document, QWidget* parent = nullptr);

  QTableView* table() const { return table_; }
  MeasurementsModel& model() { return model_; }

 Q_SIGNALS:
  void measuringListAsked();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* makeBar();
  void makeTable();
  void refresh();
  void refreshCorners();
  void refreshWorth();
  bool placeReading(Measurement& reading);
  void editAdded(const Measurement& reading);
  void showFieldsInUse();
  void addWalls();
  void addOne();
  void selectCurrent();
  void removeCurrent();
  void goToNextOpen();
  void adjustRoom();

  Document& document_;
  MeasurementsModel model_;
  QTableView* table_;
  ReadingsWorth* worth_;
  QPushButton* walls_;
  QComboBox* kind_;
  QComboBox* first_;
  QLabel* to_;
  QComboBox* second_;
  QLineEdit* x_;
  QLineEdit* y_;
  QComboBox* instrument_;
  QPushButton* add_;
  QPushButton* remove_;
  QPushButton* adjust_;
};

}  // namespace baywright
