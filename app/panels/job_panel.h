// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>

#include "editing/document.h"
#include "job/catalogue.h"
#include "models/job_tree_model.h"

class QMenu;
class QTreeView;

namespace baywright {

/// What is in the job, with a menu of what can be added, and below it the numbers of what is selected.
class JobPanel : public QWidget {
  Q_OBJECT

 public:
  JobPanel(Document& document, const Catalogue& catalogue, QWidget* parent = nullptr);

  QMenu* addMenu() const { return addMenu_; }

 private:
  void fillAddMenu();
  void addThing(const QString& text, const Result<Job>& edited);
  void contextMenu(const QPoint& position);

  Document& document_;
  const Catalogue& catalogue_;
  JobTreeModel model_;
  QTreeView* tree_;
  QMenu* addMenu_;
};

}  // namespace baywright
