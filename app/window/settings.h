// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace baywright {

/// What the program remembers between runs. A value: read once, written once.
struct Settings {
  QStringList recentFiles;  ///< newest first, at most ten
  QString lastFolder;
  QByteArray geometry;  ///< of the window

  static Settings read();
  void write() const;

  /// Moves the file to the front.
  void remember(const QString& file);
};

}  // namespace baywright
