// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "base/problem.h"
#include "paper/sheet_painter.h"

class QWidget;

namespace baywright {

/// Asks for a printer and prints the pages at true scale, each on paper of its own size. Nothing is printed
/// and nothing is wrong when the person cancels. Refused with a sentence when the printer cannot take it.
Result<void> printPages(QWidget* parent, const std::vector<SheetPage>& pages, const Job& job,
                        PlanImages& images);

}  // namespace baywright
