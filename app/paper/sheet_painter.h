// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPainter>

#include "drawing/sheet.h"
#include "job/job.h"
#include "painting/plan_image.h"

namespace baywright {

/// Where on the device a page goes. Printers scale their axes differently: hence two.
struct PageOnDevice {
  double dotsPerMmX = 1;
  double dotsPerMmY = 1;
  QPointF topLeft;  ///< of the page, in dots
};

/// Draws one page at true scale. The painter must be in plain device units.
void paintSheetPage(QPainter& painter, const SheetPage& page, const Job& job, PlanImages& images,
                    const PageOnDevice& device);

}  // namespace baywright
