// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>
#include <optional>

#include "editing/document.h"
#include "models/measurements_model.h"
#include "survey/blunder_test.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QTableView;

namespace baywright {

/// Readings by tape and laser: a table to type them in, and beside it what they are worth together: how many
/// check each other, which does not fit, what to measure next, and what else the survey lacks. All by
/// keyboard: Enter takes a figure and goes to the next that is open.
class MeasurementsPanel : public QWidget {
  Q_OBJECT

 public:
  explicit MeasurementsPanel(Document& document, QWidget* parent = nullptr);

  QTableView* table() const { return table_; }
  MeasurementsModel& model() { return model_; }

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* makeBar();
  QWidget* makeWorth();
  void makeTable();
  void refresh();
  void refreshCorners();
  void refreshWorth();
  void showFit(const SurveyAdjustment& fit);
  void showCeiling(const CeilingFit& fit);
  bool placeReading(Measurement& reading);
  void editAdded(const Measurement& reading);
  void showFieldsInUse();
  void addWalls();
  void addOne();
  void removeCurrent();
  void goToNextOpen();
  void adjustRoom();
  void setSuspectAside();
  QString summaryOf(const SurveyAdjustment& fit) const;
  QString summaryOf(const CeilingFit& fit) const;

  Document& document_;
  MeasurementsModel model_;
  QTableView* table_;
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
  QLabel* summary_;
  QLabel* suspicion_;
  QPushButton* setAside_;
  QLabel* advice_;
  QListWidget* remarks_;
  Id suspect_;  ///< the reading that the button sets aside
};

}  // namespace baywright
