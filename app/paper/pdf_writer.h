// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QString>
#include <vector>

#include "base/problem.h"
#include "paper/sheet_painter.h"

namespace baywright {

/// One PDF of all pages, at true scale, fonts embedded, asking viewers not to scale it when printing. Pages
/// may have different sizes.
Result<QByteArray> pdfOf(const std::vector<SheetPage>& pages, const Job& job, PlanImages& images,
                         const QString& title);

/// The same into a file; what stood there before stays whole until the new one is.
Result<void> writePdf(const QString& path, const std::vector<SheetPage>& pages, const Job& job,
                      PlanImages& images, const QString& title);

}  // namespace baywright
