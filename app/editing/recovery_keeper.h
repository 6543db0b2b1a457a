// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QTimer>
#include <filesystem>
#include <string>

#include "editing/document.h"

namespace baywright {

/// Keeps unsaved work where a crash cannot take it: five seconds after the last change, at the latest a
/// minute after the first, and takes it away once the job is saved or closed in peace.
class RecoveryKeeper : public QObject {
  Q_OBJECT

 public:
  RecoveryKeeper(Document& document, std::filesystem::path folder, QObject* parent = nullptr);

  /// Writes now what has not been written.
  void keepNow();
  /// The job is saved or its loss was agreed to.
  void forget();

  /// The folder of this user, from the environment.
  static std::filesystem::path userFolder();

 private:
  void changed();

  Document& document_;
  std::filesystem::path folder_;
  std::string key_;
  QTimer calm_;    // after the last change
  QTimer latest_;  // after the first one
  bool pending_ = false;
};

}  // namespace baywright
