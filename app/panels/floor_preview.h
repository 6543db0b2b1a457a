// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>

#include "job/room.h"
#include "units/unit_system.h"

namespace baywright {

/// A small plan of a room that is not in the job yet: walls with their lengths, openings, fixtures, and the
/// ceiling's heights at the corners where it is not level.
class FloorPreview : public QWidget {
  Q_OBJECT

 public:
  explicit FloorPreview(const UnitSystem& units, QWidget* parent = nullptr);

  void showRoom(const Room& room);
  void showUnits(const UnitSystem& units);
  const Room& room() const { return room_; }
  QSize sizeHint() const override { return {380, 340}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  UnitSystem units_;
  Room room_;
};

}  // namespace baywright
