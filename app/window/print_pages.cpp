// SPDX-License-Identifier: Apache-2.0
#include "window/print_pages.h"

#include <QPrintDialog>
#include <QPrinter>

namespace baywright {
namespace {

QPageLayout layoutOf(const SheetPage& page) {
  const bool isWide = page.widthMm > page.heightMm;
  const QSizeF upright = isWide ? QSizeF(page.heightMm, page.widthMm) : QSizeF(page.widthMm, page.heightMm);
  return {QPageSize(upright, QPageSize::Millimeter, {}, QPageSize::FuzzyMatch),
          isWide ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF(0, 0, 0, 0),
          QPageLayout::Millimeter};
}

}  // namespace

Result<void> printPages(QWidget* parent, const std::vector<SheetPage>& pages, const Job& job,
                        PlanImages& images) {
  if (pages.empty()) return fail("There is no page to print.");
  QPrinter printer(QPrinter::HighResolution);
  // The printer's own margins would shift the drawing; the sheet keeps its marks inside its border instead.
  printer.setFullPage(true);
  printer.setPageLayout(layoutOf(pages.front()));
  QPrintDialog dialog(&printer, parent);
  dialog.setMinMax(1, static_cast<int>(pages.size()));
  dialog.setOption(QAbstractPrintDialog::PrintPageRange);
  if (dialog.exec() != QDialog::Accepted) return {};
  const bool isRange = printer.printRange() == QPrinter::PageRange;
  const std::size_t first = isRange ? static_cast<std::size_t>(printer.fromPage() - 1) : 0;
  const std::size_t last = isRange ? static_cast<std::size_t>(printer.toPage()) : pages.size();
  printer.setFullPage(true);
  printer.setPageLayout(layoutOf(pages[first]));
  QPainter painter;
  if (!painter.begin(&printer))
    return fail("The printer does not take the page.", {}, "Save the sheet as PDF and print that.");
  constexpr double kMmPerInch = 25.4;
  for (std::size_t i = first; i < last; ++i) {
    if (i > first) {
      printer.setPageLayout(layoutOf(pages[i]));
      printer.newPage();
    }
    paintSheetPage(painter, pages[i], job, images,
                   {printer.logicalDpiX() / kMmPerInch, printer.logicalDpiY() / kMmPerInch, {}});
  }
  if (!painter.end()) return fail("The printer stopped before the last page.");
  return {};
}

}  // namespace baywright
