// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAbstractTableModel>
#include <optional>
#include <vector>

#include "editing/document.h"
#include "survey/adjustment.h"
#include "survey/blunder_test.h"
#include "survey/ceiling_fit.h"

namespace baywright {

/// The job's readings, one a row, with what the adjustment makes of each; after them the readings that were
/// asked for and have no figure yet. A figure that is typed there becomes a reading of the job. A reading is
/// set aside by its tick.
class MeasurementsModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { What, Read, By, OffBy, Remark };
  static constexpr int kColumns = Remark + 1;

  explicit MeasurementsModel(Document& document, QObject* parent = nullptr);

  /// Rows without a figure yet, in their order; ids are given once they have one. The first one's index.
  QModelIndex ask(const std::vector<Measurement>& readings);
  /// One row a wall that nobody has read. The first one's index, none where every wall has been read.
  QModelIndex askForWalls(Instrument how);
  void remove(const QModelIndex& index);
  bool setAside(Id reading, bool isSetAside);

  /// None for rows that have no figure yet.
  Id idOf(const QModelIndex& index) const;
  QModelIndex indexOf(Id reading) const;
  /// Nothing while there are no readings of the floor.
  const std::optional<Result<SurveyAdjustment>>& adjustment() const { return adjustment_; }
  /// Readings of the floor that do not fit the others, the likeliest blunder first.
  const std::vector<Suspicion>& suspicions() const;
  /// Through the ceiling heights over the walls as adjusted; nothing while there are none.
  const std::optional<CeilingFit>& ceiling() const { return ceiling_; }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 Q_SIGNALS:
  void refreshed();  ///< rows and adjustment() belong to the job as it is now

 private:
  struct Asked {
    Measurement reading;
    std::size_t readBefore = 0;  ///< readings of the same thing that the job held when it was asked for
  };

  void jobChanged();
  void refreshRows();
  std::vector<Measurement> rowsNow() const;
  const Measurement& row(const QModelIndex& index) const;
  const AdjustedReading* adjusted(Id reading) const;
  const FigureResidual* ceilingResidual(Id reading) const;
  const SuspectReading* suspect(Id reading) const;
  void fitAgain();
  QVariant text(const Measurement& reading, int column) const;
  QString remarkOn(const Measurement& reading) const;
  QString valueText(const Measurement& reading) const;
  QString nameOf(const Measurement& reading) const;
  QString letterOf(Id corner) const;
  bool setValue(Measurement reading, const QString& typed);

  Document& document_;
  std::vector<Asked> asked_;
  std::vector<Measurement> rows_;
  std::vector<Wall> adjustedWalls_;  ///< what adjustment_ was made from
  std::vector<Measurement> adjustedReadings_;
  UnitSystem adjustedUnits_;
  std::optional<Result<SurveyAdjustment>> adjustment_;
  /// Tested when first asked for: a wall that is dragged in another stage need not wait for this.
  mutable std::optional<std::vector<Suspicion>> suspicions_;
  std::optional<CeilingFit> ceiling_;
  std::vector<CeilingReading> heights_;  ///< in the order of ceiling_->residuals
};

/// "tape", "laser", ... in the order of Instrument.
QStringList instrumentWords();

}  // namespace baywright
