// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <optional>

#include "clearance/headroom_field.h"
#include "drawing/views.h"
#include "editing/document.h"
#include "editing/newest_worker.h"

namespace baywright {

/// Finds, on a thread of its own, where on the floor the selected golfer's ball may lie: selecting a golfer
/// (first club) or one of the clubs asks for it, selecting anything else takes it away. It follows the job
/// and the bay's heading.
class StandingZone : public QObject {
  Q_OBJECT

 public:
  explicit StandingZone(Document& document, QObject* parent = nullptr);

  const StandingMark& mark() const { return mark_; }
  /// Blocks until mark() belongs to what is selected now.
  void finish() { worker_.finish(); }

 Q_SIGNALS:
  void changed();

 private:
  struct Question {
    Job job;
    HeadroomQuestion of;
    StandingMark mark;  ///< yet without its zone
  };

  void ask();
  std::optional<Question> question() const;
  void show(StandingMark mark);

  Document& document_;
  StandingMark mark_;
  NewestWorker<std::optional<Question>, std::optional<StandingMark>> worker_;
};

}  // namespace baywright
