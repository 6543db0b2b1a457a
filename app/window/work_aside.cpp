// SPDX-License-Identifier: Apache-2.0
#include "window/work_aside.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QProgressDialog>

namespace baywright::detail {

void showUntilFinished(QWidget* window, const QString& label, QFutureWatcherBase& watcher) {
  QProgressDialog dialog(label, QCoreApplication::translate("WorkAside", "&Stop"), 0, kProgressSteps, window);
  dialog.setObjectName(QStringLiteral("workAside"));
  dialog.setWindowTitle(QCoreApplication::translate("WorkAside", "One moment"));
  dialog.setWindowModality(window ? Qt::WindowModal : Qt::ApplicationModal);
  dialog.setMinimumDuration(0);
  dialog.setMinimumWidth(dialog.fontMetrics().averageCharWidth() * 50);
  dialog.setAutoClose(false);
  dialog.setAutoReset(false);
  QEventLoop loop;
  QObject::connect(&watcher, &QFutureWatcherBase::finished, &loop, &QEventLoop::quit);
  QObject::connect(&watcher, &QFutureWatcherBase::progressValueChanged, &dialog, &QProgressDialog::setValue);
  QObject::connect(&dialog, &QProgressDialog::canceled, &watcher, [&] {
    watcher.cancel();
    dialog.setLabelText(QCoreApplication::translate("WorkAside", "Stopping…"));
    dialog.show();
  });
  dialog.show();
  loop.exec();
}

}  // namespace baywright::detail
