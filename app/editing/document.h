// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <memory>
#include <optional>

#include "base/problem.h"
#include "clearance/assessment.h"
#include "editing/live_assessment.h"
#include "editing/selection.h"
#include "job/job.h"
#include "job/job_change.h"
#include "jobfile/job_lock.h"

namespace baywright {

/// The open job with its undo stack, its file and its newest assessment: the one place that changes a job.
/// Views read job() and assessment() and listen; they keep no copy.
class Document : public QObject {
  Q_OBJECT

 public:
  explicit Document(QObject* parent = nullptr);
  ~Document() override;

  const Job& job() const { return job_; }
  /// Of the newest job that has been assessed; never null. It may be a moment older than job() during a drag.
  const Assessment& assessment() const { return *assessment_; }
  std::shared_ptr<const Assessment> sharedAssessment() const { return assessment_; }
  QUndoStack& undoStack() { return undoStack_; }
  Selection& selection() { return selection_; }
  const Selection& selection() const { return selection_; }
  const QString& path() const { return path_; }  ///< empty: never saved
  QString displayName() const;
  bool isModified() const { return !undoStack_.isClean() || recovered_; }
  bool isReadOnly() const { return readOnly_; }

  /// One undoable step. A refused edit changes nothing and is told by problemRaised.
  bool change(const QString& text, Result<Job> edited, int mergeKey = 0);

  /// Starts anew with a job that has no file yet.
  void startWith(Job job, const QString& path = {});
  /// Starts with what a crash left behind: modified from the first moment.
  void recover(Job job, const QString& path);
  std::optional<Problem> open(const QString& path);
  std::optional<Problem> save(const QString& path);

  /// Blocks until assessment() belongs to job().
  void finishAssessment() { live_.finish(); }

 Q_SIGNALS:
  void jobChanged(const baywright::JobChange& change);
  void assessed();
  void fileChanged();  ///< path, modified or read-only state
  void problemRaised(const QString& sentence);

 private:
  friend class ReplaceJob;
  friend class OpenEdit;
  void showJob(Job job);         ///< for OpenEdit: no undo step
  void exchangeJob(Job& other);  ///< for ReplaceJob

  Job job_;
  std::shared_ptr<const Assessment> assessment_;
  QUndoStack undoStack_;
  Selection selection_;
  LiveAssessment live_;
  QString path_;
  std::optional<JobLock> lock_;
  bool recovered_ = false;
  bool readOnly_ = false;
};

}  // namespace baywright
