// SPDX-License-Identifier: Apache-2.0
#include "editing/recovery_keeper.h"

#include <QDateTime>
#include <atomic>
#include <cstdlib>

#include "jobfile/autosave.h"

namespace baywright {
namespace {

constexpr int kCalmMs = 5000;
constexpr int kLatestMs = 60000;

int nextCount() {
  static std::atomic<int> count = 0;
  return ++count;
}

}  // namespace

RecoveryKeeper::RecoveryKeeper(Document& document, std::filesystem::path folder, QObject* parent)
    : QObject(parent),
      document_(document),
      folder_(std::move(folder)),
      key_(newRecoveryKey(thisProcess(), QDateTime::currentSecsSinceEpoch(), nextCount())) {
  calm_.setSingleShot(true);
  calm_.setInterval(kCalmMs);
  latest_.setSingleShot(true);
  latest_.setInterval(kLatestMs);
  connect(&calm_, &QTimer::timeout, this, &RecoveryKeeper::keepNow);
  connect(&latest_, &QTimer::timeout, this, &RecoveryKeeper::keepNow);
  connect(&document_, &Document::jobChanged, this, &RecoveryKeeper::changed);
  connect(&document_, &Document::fileChanged, this, [this] {
    if (!document_.isModified()) forget();
  });
}

void RecoveryKeeper::changed() {
  if (folder_.empty()) return;
  pending_ = true;
  calm_.start();
  if (!latest_.isActive()) latest_.start();
}

void RecoveryKeeper::keepNow() {
  calm_.stop();
  latest_.stop();
  if (!pending_ || !document_.isModified()) return;
  pending_ = false;
  const Recovery recovery{key_, document_.path().toStdString(), document_.displayName().toStdString(),
                          QDateTime::currentSecsSinceEpoch(), thisProcess()};
  if (const Result<void> kept = writeRecovery(folder_, recovery, document_.job()); !kept) {
    Q_EMIT document_.problemRaised(QString::fromStdString(kept.error().sentence()));
  }
}

void RecoveryKeeper::forget() {
  calm_.stop();
  latest_.stop();
  pending_ = false;
  if (!folder_.empty()) static_cast<void>(removeRecovery(folder_, key_));
}

std::filesystem::path RecoveryKeeper::userFolder() {
  return recoveryFolder(std::getenv("XDG_STATE_HOME"), std::getenv("HOME"));
}

}  // namespace baywright
