// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <span>
#include <vector>

#include "canvas/tools.h"

namespace baywright {

/// The stages of a fitter's day that the program serves, in order.
enum class Stage { Survey, Place, Picture, Compare, SignOff };

struct StageRow {
  Stage stage;
  const char* name;
  const char* help;
  std::vector<ToolKind> tools;  ///< on its tool bar; none: it has pages of its own in place of the views
};

const std::vector<StageRow>& stages();
QString stageText(const char* english);

}  // namespace baywright
