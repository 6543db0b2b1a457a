// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QImage>
#include <QObject>
#include <optional>
#include <vector>

#include "drawing/scan_picture.h"
#include "editing/newest_worker.h"

namespace baywright {

/// What the job's 3D scans show in one view, made on another thread: a scan of millions of points takes a
/// moment, and none of it may be felt while a wall is dragged.
class ScanUnderlay : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  /// Asks anew where the visible scans, the view, or what the view shows of the room changed.
  void follow(const DrawnView& view, const Job& job);
  const std::vector<ScanPicture>& pictures() const { return pictures_; }
  /// The same pictures in a colour, see-through where nothing was seen.
  const std::vector<QImage>& images(const QColor& colour);
  /// Blocks until what was asked for is there.
  void finish();

 Q_SIGNALS:
  void ready();

 private:
  void show(std::vector<ScanPicture> pictures);

  struct Question {
    DrawnView view = ViewKind::Plan;
    std::vector<RoomScan> scans;
    Room room;  ///< walls and ceiling only

    bool operator==(const Question&) const = default;
  };
  /// Nothing when a newer question waits: what is shown stays until then.
  using Answer = std::optional<std::vector<ScanPicture>>;
  static Answer answer(const Question& question, const Progress& progress);

  Question asked_;
  std::vector<ScanPicture> pictures_;
  QColor colour_;
  std::vector<QImage> images_;                            ///< in that colour; empty: to be made
  std::optional<NewestWorker<Question, Answer>> worker_;  ///< once there is a scan to show
};

}  // namespace baywright
