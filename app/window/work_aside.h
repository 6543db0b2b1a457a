// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QDeadlineTimer>
#include <QFutureWatcher>
#include <QPromise>
#include <QThread>
#include <QtConcurrentRun>
#include <functional>
#include <new>
#include <optional>

#include "base/problem.h"
#include "base/progress.h"

namespace baywright {

namespace detail {

inline constexpr int kProgressSteps = 1000;
/// Shorter work ends without a dialog, which would only flash up.
inline constexpr int kPatience = 200;  // milliseconds

/// Shows how far the work is until it has ended; its button asks the work to stop.
void showUntilFinished(QWidget* window, const QString& label, QFutureWatcherBase& watcher);

}  // namespace detail

/// Does the work on another thread and returns when it is done; the window goes on drawing itself meanwhile,
/// but nothing else can be started in it. Nothing when the person stopped it.
template <class T>
std::optional<Result<T>> workAside(QWidget* window, const QString& label,
                                   std::function<Result<T>(const Progress&)> work) {
  QFuture<Result<T>> future = QtConcurrent::run([work = std::move(work)](QPromise<Result<T>>& promise) {
    promise.setProgressRange(0, detail::kProgressSteps);
    const Progress progress{
        [&](double done) { promise.setProgressValue(static_cast<int>(done * detail::kProgressSteps)); },
        [&] { return promise.isCanceled(); }};
    try {
      promise.addResult(work(progress));
    } catch (const std::bad_alloc&) {
      promise.addResult(Result<T>(fail("There is not enough memory for this file.", {},
                                       "Close other programs, or bring a smaller file.")));
    }
  });
  const QDeadlineTimer soon(detail::kPatience);
  while (!future.isFinished() && !soon.hasExpired()) QThread::msleep(2);
  if (!future.isFinished()) {
    QFutureWatcher<Result<T>> watcher;
    watcher.setFuture(future);
    detail::showUntilFinished(window, label, watcher);
  }
  if (future.isCanceled() || future.resultCount() == 0) return {};
  return future.takeResult();
}

}  // namespace baywright
