// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAbstractItemModel>
#include <vector>

#include "editing/document.h"
#include "job/thing_lookup.h"

namespace baywright {

/// The job as a tree of two levels: groups (Room, People, Kit, Options, Scans), and under each its things; a
/// thing that belongs to another (a club to its golfer, an opening to its wall) is shown indented after it.
class JobTreeModel : public QAbstractItemModel {
  Q_OBJECT

 public:
  enum Role { IdRole = Qt::UserRole + 1, KindRole };

  explicit JobTreeModel(Document& document, QObject* parent = nullptr);

  Id idOf(const QModelIndex& index) const;
  QModelIndex indexOf(Id id) const;

  QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
  QModelIndex parent(const QModelIndex& child) const override;
  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 private:
  struct Group {
    QString title;
    QString whenEmpty;  ///< what would be here and how
    std::vector<Thing> things;
  };
  std::vector<Group> groupsOf(const Job& job) const;
  void refresh();
  const Thing* thingAt(const QModelIndex& index) const;

  Document& document_;
  std::vector<Group> groups_;
};

}  // namespace baywright
