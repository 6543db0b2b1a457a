// SPDX-License-Identifier: Apache-2.0
#include "window/run_window.h"

#include <QApplication>
#include <QTimer>

#include "editing/recovery_keeper.h"
#include "window/long_press.h"
#include "window/main_window.h"
#include "window/resources.h"

namespace baywright {

int runWindow(QApplication& application, const QStringList& files) {
  QApplication::setApplicationName(QStringLiteral("Baywright"));
  QApplication::setOrganizationName(QStringLiteral("Baywright"));
  QApplication::setDesktopSettingsAware(true);
  QApplication::setWindowIcon(icon(QStringLiteral("application"), application.palette()));
  LongPress longPress(application);
  MainWindow window(RecoveryKeeper::userFolder());
  window.show();
  if (!files.isEmpty()) {
    // Before they are opened: a room that is brought in wants to be looked through first.
    window.showStage(Stage::Place);
    for (const QString& file : files) window.files().openFile(file);
    window.fitAll();
  } else {
    QTimer::singleShot(0, &window, [&window] { window.files().offerRecovery(); });
  }
  return QApplication::exec();
}

}  // namespace baywright
