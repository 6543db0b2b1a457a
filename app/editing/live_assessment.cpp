// SPDX-License-Identifier: Apache-2.0
#include "editing/live_assessment.h"

#include "clearance/assessor.h"

namespace baywright {

LiveAssessment::LiveAssessment(QObject* parent) : QObject(parent), thread_([this] { work(); }) {}

LiveAssessment::~LiveAssessment() {
  {
    const std::lock_guard lock(mutex_);
    quit_ = true;
  }
  changed_.notify_all();
  thread_.join();
}

void LiveAssessment::request(Job job) {
  {
    const std::lock_guard lock(mutex_);
    waiting_ = std::move(job);
  }
  changed_.notify_all();
}

void LiveAssessment::finish() {
  {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return !waiting_ && !busy_; });
  }
  deliver();
}

void LiveAssessment::work() {
  Assessor assessor;
  std::unique_lock lock(mutex_);
  while (true) {
    changed_.wait(lock, [this] { return quit_ || waiting_; });
    if (quit_) return;
    const Job job = std::move(*waiting_);
    waiting_.reset();
    busy_ = true;
    lock.unlock();
    auto result = std::make_shared<const Assessment>(assessor.assess(job));
    lock.lock();
    result_ = std::move(result);
    busy_ = false;
    changed_.notify_all();
    QMetaObject::invokeMethod(this, &LiveAssessment::deliver, Qt::QueuedConnection);
  }
}

void LiveAssessment::deliver() {
  std::shared_ptr<const Assessment> result;
  {
    const std::lock_guard lock(mutex_);
    result.swap(result_);
  }
  if (result) Q_EMIT assessed(std::move(result));
}

}  // namespace baywright
