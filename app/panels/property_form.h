// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QScrollArea>
#include <functional>
#include <vector>

#include "editing/document.h"
#include "panels/field.h"

class QFormLayout;
class QLabel;

namespace baywright {

/// The numbers of the selected thing, to be typed over. Each is one undoable step; what cannot be is told
/// under its field and leaves the job as it is.
class PropertyForm : public QScrollArea {
  Q_OBJECT

 public:
  using Source = std::function<std::vector<Field>(const Document&)>;

  /// `invitation` stands where there are no fields.
  PropertyForm(Document& document, Source source, const QString& invitation, QWidget* parent = nullptr);

 public Q_SLOTS:
  void rebuild();  ///< the fields are others than before

 private:
  /// One row: the editor, what it shows and where it complains.
  struct Row {
    Field field;
    QWidget* editor = nullptr;
    QLabel* complaint = nullptr;
    std::function<void(const FieldValue&, const UnitSystem&)> show;
  };

  void refresh();  ///< the same fields, newer values
  void addRow(QFormLayout* layout, Field field);
  void commit(std::size_t row, const Result<FieldValue>& value);
  void makeLine(std::size_t row);
  void makeMeasured(std::size_t row);
  void makeChoice(std::size_t row);
  void makeFlag(std::size_t row);

  Document& document_;
  Source source_;
  QString invitation_;
  std::vector<Row> rows_;
};

}  // namespace baywright
