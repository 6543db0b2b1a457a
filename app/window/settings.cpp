// SPDX-License-Identifier: Apache-2.0
#include "window/settings.h"

#include <QFileInfo>
#include <QSettings>

namespace baywright {
namespace {

constexpr int kMostRecent = 10;

}  // namespace

Settings Settings::read() {
  const QSettings store;
  Settings settings;
  settings.recentFiles = store.value(QStringLiteral("recentFiles")).toStringList();
  settings.lastFolder = store.value(QStringLiteral("lastFolder")).toString();
  settings.geometry = store.value(QStringLiteral("geometry")).toByteArray();
  return settings;
}

void Settings::write() const {
  QSettings store;
  store.setValue(QStringLiteral("recentFiles"), recentFiles);
  store.setValue(QStringLiteral("lastFolder"), lastFolder);
  store.setValue(QStringLiteral("geometry"), geometry);
}

void Settings::remember(const QString& file) {
  const QString path = QFileInfo(file).absoluteFilePath();
  recentFiles.removeAll(path);
  recentFiles.prepend(path);
  while (recentFiles.size() > kMostRecent) recentFiles.removeLast();
  lastFolder = QFileInfo(path).absolutePath();
}

}  // namespace baywright
