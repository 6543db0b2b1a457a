// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QDialog>
#include <vector>

#include "survey/recognised_room.h"
#include "units/unit_system.h"
#include "window/room_corrections.h"

class QTextBrowser;
class QTreeWidget;
class QTreeWidgetItem;

namespace baywright {

class FloorPreview;
class PropertyForm;

/// Shows what was recognised before it becomes the job's room: each part can be left out or corrected,
/// whatever did not fit or was skipped is told. Nothing is changed until somebody takes it.
class ReviewDialog : public QDialog {
  Q_OBJECT

 public:
  /// Candidates are the rooms that one file shows, at least one; the first is offered first.
  ReviewDialog(std::vector<RecognisedRoom> candidates, const UnitSystem& units, const QString& fileName,
               QWidget* parent = nullptr);

  ~ReviewDialog() override;

  /// The chosen room as corrected, without the parts that were left out.
  RecognisedRoom accepted() const;

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QWidget* makeRoomChoice();
  void showCandidate(int index);
  void fillTree();
  /// The same rows with corrected words; ticks and cursor stay.
  void followCorrections();
  void fillNotes();
  template <class T, class Words>
  void addGroup(const QString& heading, const std::vector<T>& parts, Words words);

  std::vector<RecognisedRoom> candidates_;
  std::size_t chosen_ = 0;
  bool isStarting_ = false;  ///< another room is being shown: nobody corrects anything
  UnitSystem units_;
  RoomCorrections corrections_;
  FloorPreview* preview_;
  QTreeWidget* tree_;
  PropertyForm* form_ = nullptr;
  QTextBrowser* notes_;
};

}  // namespace baywright
