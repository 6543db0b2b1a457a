// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QStringList>

class QApplication;

namespace baywright {

/// Opens the main window, with the first of the files if there are any, and runs until it is closed. The exit
/// code of the program.
int runWindow(QApplication& application, const QStringList& files);

}  // namespace baywright
