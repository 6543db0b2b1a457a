// SPDX-License-Identifier: Apache-2.0
#include "models/findings_model.h"

#include "painting/theme.h"

namespace baywright {

FindingsModel::FindingsModel(Document& document, QObject* parent)
    : QAbstractListModel(parent), document_(document) {
  connect(&document_, &Document::assessed, this, &FindingsModel::refresh);
  refresh();
}

void FindingsModel::setShown(Verdict verdict, bool shown) {
  shown_[static_cast<std::size_t>(verdict)] = shown;
  refresh();
}

void FindingsModel::refresh() {
  const auto next = document_.sharedAssessment();
  std::vector<std::size_t> rows;
  for (std::size_t i = 0; i < next->findings.size(); ++i) {
    if (shown_[static_cast<std::size_t>(next->findings[i].verdict)]) rows.push_back(i);
  }
  // During a drag this happens at every move: rows are kept and told to redraw, so that nothing scrolls or
  // loses focus.
  const int before = static_cast<int>(rows_.size());
  const int after = static_cast<int>(rows.size());
  if (after < before) {
    beginRemoveRows({}, after, before - 1);
    rows_.resize(rows.size());
    endRemoveRows();
  }
  const std::vector<std::size_t> all = rows;
  rows.resize(std::min(rows.size(), rows_.size()));
  assessment_ = next;
  rows_ = std::move(rows);
  if (!rows_.empty()) Q_EMIT dataChanged(index(0), index(static_cast<int>(rows_.size()) - 1));
  if (after > before) {
    beginInsertRows({}, before, after - 1);
    rows_ = all;
    endInsertRows();
  }
}

const Finding* FindingsModel::finding(const QModelIndex& index) const {
  if (!index.isValid() || index.model() != this || index.row() >= static_cast<int>(rows_.size()))
    return nullptr;
  return &assessment_->findings[rows_[static_cast<std::size_t>(index.row())]];
}

QModelIndex FindingsModel::indexOf(const QString& key) const {
  const std::string wanted = key.toStdString();
  for (std::size_t row = 0; row < rows_.size(); ++row) {
    if (assessment_->findings[rows_[row]].key == wanted) return index(static_cast<int>(row));
  }
  return {};
}

int FindingsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const {
  const Finding* row = finding(index);
  if (!row) return {};
  switch (role) {
    case Qt::DisplayRole:
      return QString::fromStdString(row->sentence);
    case Qt::ToolTipRole:
      return tr("Why: %1").arg(QString::fromStdString(row->source));
    case Qt::AccessibleTextRole:
      return verdictWord(row->verdict) + QStringLiteral(": ") + QString::fromStdString(row->sentence);
    case KeyRole:
      return QString::fromStdString(row->key);
    default:
      return {};
  }
}

}  // namespace baywright
