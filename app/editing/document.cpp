// SPDX-License-Identifier: Apache-2.0
#include "editing/document.h"

#include <QFileInfo>
#include <utility>

#include "clearance/assess.h"
#include "editing/replace_job.h"
#include "job/thing_lookup.h"
#include "jobfile/job_archive.h"

namespace baywright {

Document::Document(QObject* parent)
    : QObject(parent), job_(starterJob()), assessment_(std::make_shared<const Assessment>(assess(job_))) {
  connect(&live_, &LiveAssessment::assessed, this, [this](std::shared_ptr<const Assessment> result) {
    assessment_ = std::move(result);
    Q_EMIT assessed();
  });
  connect(&undoStack_, &QUndoStack::cleanChanged, this, &Document::fileChanged);
}

Document::~Document() {
  // The stack's own destructor would tell a document that is half gone.
  undoStack_.disconnect(this);
}

QString Document::displayName() const {
  if (!path_.isEmpty()) return QFileInfo(path_).completeBaseName();
  return job_.info.title.empty() ? tr("New job") : QString::fromStdString(job_.info.title);
}

bool Document::change(const QString& text, Result<Job> edited, int mergeKey) {
  if (!edited) {
    Q_EMIT problemRaised(QString::fromStdString(edited.error().sentence()));
    return false;
  }
  if (*edited == job_) return true;
  undoStack_.push(new ReplaceJob(*this, text, std::move(*edited), mergeKey));
  return true;
}

void Document::startWith(Job job, const QString& path) {
  undoStack_.clear();
  selection_.select({});
  selection_.showFinding({});
  if (path != path_) lock_.reset();
  path_ = path;
  recovered_ = false;
  readOnly_ = false;
  showJob(std::move(job));
  live_.finish();
  Q_EMIT fileChanged();
}

void Document::recover(Job job, const QString& path) {
  startWith(std::move(job), path);
  recovered_ = true;
  Q_EMIT fileChanged();
}

std::optional<Problem> Document::open(const QString& path) {
  Result<Job> loaded = loadJob(path.toStdString());
  if (!loaded) return loaded.error();
  lock_.reset();
  Result<JobLock> lock = lockJob(path.toStdString());
  startWith(std::move(*loaded), QFileInfo(path).absoluteFilePath());
  readOnly_ = !lock.has_value();
  if (lock) {
    lock_.emplace(std::move(*lock));
  } else {
    Q_EMIT problemRaised(QString::fromStdString(lock.error().sentence()));
  }
  Q_EMIT fileChanged();
  return std::nullopt;
}

std::optional<Problem> Document::save(const QString& path) {
  const QString target = QFileInfo(path).absoluteFilePath();
  if (readOnly_ && target == path_) {
    return Problem{"This job was opened to be read only.", path_.toStdString(),
                   "Save it under another name."};
  }
  if (target != path_) {
    Result<JobLock> lock = lockJob(target.toStdString());
    if (!lock) return lock.error();
    if (const Result<void> saved = saveJob(job_, target.toStdString()); !saved) return saved.error();
    lock_.emplace(std::move(*lock));
  } else if (const Result<void> saved = saveJob(job_, target.toStdString()); !saved) {
    return saved.error();
  }
  path_ = target;
  recovered_ = false;
  readOnly_ = false;
  undoStack_.setClean();
  Q_EMIT fileChanged();
  return std::nullopt;
}

void Document::showJob(Job job) {
  exchangeJob(job);
}

void Document::exchangeJob(Job& other) {
  std::swap(job_, other);
  const JobChange change = jobChange(other, job_);
  live_.request(job_);
  if (selection_.selected() && !findThing(job_, selection_.selected())) selection_.select({});
  Q_EMIT jobChanged(change);
}

}  // namespace baywright
