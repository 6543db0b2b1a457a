// SPDX-License-Identifier: Apache-2.0
#include <QApplication>
#include <iostream>
#include <string>
#include <vector>

#include "cli/command.h"
#include "window/run_window.h"

int main(int argc, char** argv) {
  // Qt3D's other renderer crashes when it draws without a window.
  qputenv("QT3D_RENDERER", "opengl");
  const std::vector<std::string> typed(argv + 1, argv + argc);
  if (baywright::isCommand(typed)) {
    if (qEnvironmentVariableIsEmpty("DISPLAY") && qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY")) {
      qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    // Commands say in their own sentences what is wrong; the toolkit's remarks about the machine are not
    // among them.
    qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& message) {
      if (type == QtFatalMsg) std::cerr << message.toStdString() << std::endl;
    });
    const QGuiApplication application(argc, argv);
    return *baywright::runCommand(typed, {std::cout, std::cerr});
  }
  QApplication application(argc, argv);
  QStringList files;
  for (const std::string& file : typed) files << QString::fromStdString(file);
  return baywright::runWindow(application, files);
}
