// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAbstractListModel>
#include <array>
#include <vector>

#include "editing/document.h"

namespace baywright {

/// The findings of the document's assessment, worst first, those of the chosen verdicts. It holds only row
/// numbers; the findings stay in the assessment.
class FindingsModel : public QAbstractListModel {
  Q_OBJECT

 public:
  enum Role { KeyRole = Qt::UserRole + 1 };

  explicit FindingsModel(Document& document, QObject* parent = nullptr);

  /// Which verdicts are listed; all at first.
  void setShown(Verdict verdict, bool shown);
  /// Null when the index is not of this model.
  const Finding* finding(const QModelIndex& index) const;
  QModelIndex indexOf(const QString& key) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;

 private:
  void refresh();

  Document& document_;
  std::shared_ptr<const Assessment> assessment_;
  std::vector<std::size_t> rows_;  // indices into assessment_->findings
  std::array<bool, 4> shown_{true, true, true, true};
};

}  // namespace baywright
