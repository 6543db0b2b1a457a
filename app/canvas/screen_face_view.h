// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "canvas/view.h"

namespace baywright {

/// The impact screen from the front, with the picture on it; metres from its lower left corner.
class ScreenFaceView : public View {
  Q_OBJECT

 public:
  ScreenFaceView(Document& document, ToolBox& toolBox, QWidget* parent = nullptr)
      : View(document, toolBox, ViewKind::ScreenFace, parent) {}
};

}  // namespace baywright
