// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QDialog>
#include <vector>

#include "survey/recognised_room.h"
#include "units/unit_system.h"

class QTextBrowser;
class QTreeWidget;
class QTreeWidgetItem;

namespace baywright {

class FloorPreview;

/// Shows what was recognised before it becomes the job's room: each part can be left out, whatever did not
/// fit or was skipped is told. Nothing is changed until somebody takes it.
class ReviewDialog : public QDialog {
  Q_OBJECT

 public:
  /// Candidates are the rooms that one file shows, at least one; the first is offered first.
  ReviewDialog(std::vector<RecognisedRoom> candidates, const UnitSystem& units, const QString& fileName,
               QWidget* parent = nullptr);

  /// The chosen room without the parts that were left out.
  RecognisedRoom accepted() const;

 private:
  QWidget* makeRoomChoice();
  void showCandidate(int index);
  void fillTree();
  void fillNotes();
  template <class T, class Words>
  void addGroup(const QString& heading, const std::vector<T>& parts, Words words);

  std::vector<RecognisedRoom> candidates_;
  std::size_t chosen_ = 0;
  UnitSystem units_;
  FloorPreview* preview_;
  QTreeWidget* tree_;
  QTextBrowser* notes_;
};

}  // namespace baywright
