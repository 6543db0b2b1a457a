// SPDX-License-Identifier: Apache-2.0
#include "editing/document.h"

#include <QFileInfo>
#include <utility>

#include "clearance/assess.h"
#include "editing/replace_job.h"
#include "jobfile/job_archive.h"

namespace baywright {

Document::Document(QObject* parent)
    : QObject(parent), job_(newJob()), assessment_(std::make_shared<const Assessment>(assess(job_))) {
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
  path_ = path;
  recovered_ = false;
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
  startWith(std::move(*loaded), QFileInfo(path).absoluteFilePath());
  return std::nullopt;
}

std::optional<Problem> Document::save(const QString& path) {
  if (const Result<void> saved = saveJob(job_, path.toStdString()); !saved) return saved.error();
  path_ = QFileInfo(path).absoluteFilePath();
  recovered_ = false;
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
  Q_EMIT jobChanged(change);
}

}  // namespace baywright
