// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QMetaObject>
#include <QObject>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

#include "base/progress.h"

namespace baywright {

/// Answers questions on a thread of its own; the newest wins, those between are skipped. Answers arrive in
/// the thread of `receiver`, never out of order.
template <class Question, class Answer>
class NewestWorker {
 public:
  /// Runs on the worker's thread; told to stop as soon as a newer question waits.
  using Work = std::function<Answer(const Question&, const Progress&)>;
  using Deliver = std::function<void(Answer)>;

  /// `receiver` must own the worker, so that both end together.
  NewestWorker(QObject* receiver, Work work, Deliver deliver)
      : receiver_(receiver),
        work_(std::move(work)),
        deliver_(std::move(deliver)),
        thread_([this] { run(); }) {}

  ~NewestWorker() {
    {
      const std::lock_guard lock(mutex_);
      quit_ = true;
    }
    changed_.notify_all();
    thread_.join();
  }
  NewestWorker(const NewestWorker&) = delete;
  NewestWorker& operator=(const NewestWorker&) = delete;

  void ask(Question question) {
    {
      const std::lock_guard lock(mutex_);
      waiting_ = std::move(question);
    }
    changed_.notify_all();
  }

  /// Blocks until the newest question is answered and delivers before it returns.
  void finish() {
    {
      std::unique_lock lock(mutex_);
      changed_.wait(lock, [this] { return !waiting_ && !busy_; });
    }
    deliver();
  }

 private:
  bool isOutdated() {
    const std::lock_guard lock(mutex_);
    return quit_ || waiting_.has_value();
  }

  void run() {
    std::unique_lock lock(mutex_);
    while (true) {
      changed_.wait(lock, [this] { return quit_ || waiting_; });
      if (quit_) return;
      const Question question = std::move(*waiting_);
      waiting_.reset();
      busy_ = true;
      lock.unlock();
      Answer answer = work_(question, {{}, [this] { return isOutdated(); }});
      lock.lock();
      answer_ = std::move(answer);
      busy_ = false;
      changed_.notify_all();
      QMetaObject::invokeMethod(
          receiver_, [this] { deliver(); }, Qt::QueuedConnection);
    }
  }

  void deliver() {
    std::optional<Answer> answer;
    {
      const std::lock_guard lock(mutex_);
      answer.swap(answer_);
    }
    if (answer) deliver_(std::move(*answer));
  }

  QObject* receiver_;
  Work work_;
  Deliver deliver_;
  std::mutex mutex_;
  std::condition_variable changed_;
  std::optional<Question> waiting_;  // guarded by mutex_
  std::optional<Answer> answer_;     // guarded by mutex_
  bool busy_ = false;                // guarded by mutex_
  bool quit_ = false;                // guarded by mutex_
  std::thread thread_;
};

}  // namespace baywright
