// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "canvas/view.h"

namespace baywright {

enum class Elevation { DownRange, Side };

/// The room looking down-range, or from the bay's right-hand side. It is drawn about the bay, and stands
/// still while the bay is dragged.
class ElevationView : public View {
  Q_OBJECT

 public:
  ElevationView(Document& document, ToolBox& toolBox, Elevation elevation, QWidget* parent = nullptr)
      : View(document, toolBox, elevation == Elevation::DownRange ? ViewKind::DownRange : ViewKind::Side,
             parent) {}
};

}  // namespace baywright
