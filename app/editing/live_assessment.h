// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <memory>

#include "clearance/assessor.h"
#include "editing/newest_worker.h"
#include "job/job.h"

namespace baywright {

/// Assesses jobs on a thread of its own; the newest wins, those between are skipped.
class LiveAssessment : public QObject {
  Q_OBJECT

 public:
  explicit LiveAssessment(QObject* parent = nullptr);

  void request(Job job) { worker_.ask(std::move(job)); }
  /// Blocks until the newest job is assessed and delivers it before it returns.
  void finish() { worker_.finish(); }

 Q_SIGNALS:
  void assessed(std::shared_ptr<const baywright::Assessment> assessment);

 private:
  Assessor assessor_;  // used by the worker's thread only
  NewestWorker<Job, std::shared_ptr<const Assessment>> worker_;
};

}  // namespace baywright
