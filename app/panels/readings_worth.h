// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>

#include "editing/document.h"
#include "models/measurements_model.h"

class QLabel;
class QListWidget;
class QPushButton;

namespace baywright {

/// What the readings are worth together: how many check each other and how well they fit, which does not and
/// a button that sets it aside, what to measure next, and what else the survey lacks.
class ReadingsWorth : public QWidget {
  Q_OBJECT

 public:
  ReadingsWorth(const Document& document, MeasurementsModel& model, QWidget* parent = nullptr);

  /// Shows the job as it is now. `next` is what the next reading will be taken with.
  void refresh(Instrument next);

 Q_SIGNALS:
  /// What is still to be measured, on paper.
  void measuringListAsked();

 private:
  void showFit(const SurveyAdjustment& fit, Instrument next);
  void showCeiling(const CeilingFit& fit);
  QString summaryOf(const SurveyAdjustment& fit) const;
  QString summaryOf(const CeilingFit& fit) const;

  const Document& document_;
  MeasurementsModel& model_;
  QLabel* summary_;
  QLabel* suspicion_;
  QPushButton* setAside_;
  QLabel* advice_;
  QListWidget* remarks_;
  Id suspect_;  ///< the reading that the button sets aside
};

}  // namespace baywright
