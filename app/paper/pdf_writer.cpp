// SPDX-License-Identifier: Apache-2.0
#include "paper/pdf_writer.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>

#include "jobfile/atomic_file.h"
#include "paper/pdf_catalogue.h"

namespace baywright {
namespace {

constexpr int kDotsPerInch = 1200;
constexpr double kMmPerInch = 25.4;

QPageLayout layoutOf(const SheetPage& page) {
  const QPageSize size(QSizeF(page.widthMm, page.heightMm), QPageSize::Millimeter, {}, QPageSize::ExactMatch);
  return {size, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter};
}

}  // namespace

Result<QByteArray> pdfOf(const std::vector<SheetPage>& pages, const Job& job, PlanImages& images,
                         const QString& title) {
  if (pages.empty()) return fail("There is no page to write.");
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setTitle(title);
  writer.setCreator(QStringLiteral("Baywright"));
  writer.setResolution(kDotsPerInch);
  writer.setPageLayout(layoutOf(pages.front()));
  QPainter painter;
  if (!painter.begin(&writer)) return fail("The PDF could not be begun.");
  // From the resolution and never from the page's width in dots, which is rounded.
  constexpr double kDotsPerMm = kDotsPerInch / kMmPerInch;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (i > 0) {
      writer.setPageLayout(layoutOf(pages[i]));
      writer.newPage();
    }
    paintSheetPage(painter, pages[i], job, images, {kDotsPerMm, kDotsPerMm, {}});
  }
  if (!painter.end()) return fail("The PDF could not be finished.");
  return withoutPrintScaling(bytes);
}

Result<void> writePdf(const QString& path, const std::vector<SheetPage>& pages, const Job& job,
                      PlanImages& images, const QString& title) {
  const Result<QByteArray> bytes = pdfOf(pages, job, images, title);
  if (!bytes) return tl::unexpected(bytes.error());
  return writeFileAtomically(path.toStdString(),
                             std::string_view(bytes->data(), static_cast<std::size_t>(bytes->size())));
}

}  // namespace baywright
