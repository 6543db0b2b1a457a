// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

namespace baywright {

/// What this machine's OpenGL can do. Asked before Qt3D is touched: without a context Qt3D waits for ever.
struct GlInfo {
  bool usable = false;    ///< OpenGL 3.3 or newer
  bool software = false;  ///< drawn by the processor: render less while dragging
  QString renderer;       ///< the driver's own name, for reports
  QString reason;         ///< why it is not usable, a sentence
};

/// Needs a QGuiApplication. The environment variable BAYWRIGHT_NO_3D makes it answer "not usable", for
/// machines whose driver crashes.
GlInfo probeGl();

}  // namespace baywright
