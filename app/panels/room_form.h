// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>
#include <vector>

#include "editing/document.h"
#include "job/room_starts.h"

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;

namespace baywright {

class FloorPreview;

/// A room from typed sizes: rectangle or L, flat, sloped or stepped ceiling, sketched as they are typed. All
/// by keyboard: Tab from field to field, Enter makes the room.
class RoomForm : public QWidget {
  Q_OBJECT

 public:
  explicit RoomForm(Document& document, QWidget* parent = nullptr);

 Q_SIGNALS:
  void roomMade();

 private:
  QLineEdit* addLength(const QString& label, double metres);
  Dimension read(QLineEdit* line);
  void sketch();
  void showUnits();
  FloorStart floorTyped();
  CeilingStart ceilingTyped();
  void showFieldsInUse();
  void make();
  void complain(QLineEdit* line, const QString& sentence);

  Document& document_;
  UnitSystem units_;  ///< that the fields are written in
  FloorPreview* sketch_;
  QFormLayout* form_;
  QComboBox* shape_;
  QComboBox* ceiling_;
  QComboBox* instrument_;
  QLineEdit* length_;
  QLineEdit* width_;
  QLineEdit* cutLength_;
  QLineEdit* cutWidth_;
  QLineEdit* height_;
  QLineEdit* secondHeight_;
  QLineEdit* strip_;
  QLabel* complaint_;
  bool refused_ = false;
};

}  // namespace baywright
