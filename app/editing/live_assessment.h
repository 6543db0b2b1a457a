// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <condition_variable>
#include <cstdint>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "clearance/assessment.h"
#include "job/job.h"

namespace baywright {

/// Assesses jobs on a thread of its own; the newest wins, those between are skipped. Results arrive in the
/// thread of this object, never out of order.
class LiveAssessment : public QObject {
  Q_OBJECT

 public:
  explicit LiveAssessment(QObject* parent = nullptr);
  ~LiveAssessment() override;

  void request(Job job);
  /// Blocks until the newest job is assessed and delivers it before it returns.
  void finish();

 Q_SIGNALS:
  void assessed(std::shared_ptr<const baywright::Assessment> assessment);

 private:
  void work();
  void deliver();

  std::mutex mutex_;
  std::condition_variable changed_;
  std::optional<Job> waiting_;                // guarded by mutex_
  std::shared_ptr<const Assessment> result_;  // guarded by mutex_
  bool busy_ = false;                         // guarded by mutex_
  bool quit_ = false;                         // guarded by mutex_
  std::thread thread_;
};

}  // namespace baywright
