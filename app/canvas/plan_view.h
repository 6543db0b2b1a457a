// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "canvas/view.h"

namespace baywright {

/// The room from above; world metres.
class PlanView : public View {
  Q_OBJECT

 public:
  PlanView(Document& document, ToolBox& toolBox, QWidget* parent = nullptr)
      : View(document, toolBox, ViewKind::Plan, parent) {}
};

}  // namespace baywright
