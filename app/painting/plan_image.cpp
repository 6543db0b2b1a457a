// SPDX-License-Identifier: Apache-2.0
#include "painting/plan_image.h"

#include <QBuffer>
#include <QImageReader>
#include <QPdfDocument>
#include <QPdfDocumentRenderOptions>
#include <algorithm>
#include <cmath>
#include <string_view>

namespace baywright {
namespace {

bool looksLikePdf(const Blob& file) {
  return file.bytes.compare(0, 4, "%PDF") == 0;
}

QByteArray viewOf(const Blob& file) {
  return QByteArray::fromRawData(file.bytes.data(), static_cast<qsizetype>(file.bytes.size()));
}

std::string megapixels(QSize size) {
  return QString::number(std::round(double(size.width()) * size.height() / 1e6), 'f', 0).toStdString();
}

/// Rounded down: rounded up, the reader would take it for less than half and decode the whole.
QSize shrunk(QSize size, int by) {
  return {size.width() / by, size.height() / by};
}

/// The reader fills the rest with grey and says nothing.
bool endsTooEarly(const Blob& jpeg) {
  const std::string_view bytes = jpeg.bytes;
  std::size_t at = 2;
  // Segments until the picture itself starts; one of them may hold a small picture with an end of its own.
  while (at + 4 <= bytes.size() && bytes[at] == '\xff' && bytes[at + 1] != '\xda')
    at += 2 + 256 * static_cast<unsigned char>(bytes[at + 2]) + static_cast<unsigned char>(bytes[at + 3]);
  return at >= bytes.size() || bytes.find("\xff\xd9", at) == std::string_view::npos;
}

tl::unexpected<Problem> tooLarge(const Blob& file, QSize size) {
  return fail("The picture has " + std::to_string(size.width()) + " x " + std::to_string(size.height()) +
                  " pixels (" + megapixels(size) + " megapixels); up to 150 megapixels can be used.",
              file.fileName, "Save it smaller, half as wide and high or less, and open that.");
}

std::string pdfFault(QPdfDocument::Error error) {
  switch (error) {
    case QPdfDocument::Error::IncorrectPassword:
      return "The PDF is locked with a password.";
    case QPdfDocument::Error::UnsupportedSecurityScheme:
      return "The PDF is locked in a way that cannot be opened here.";
    case QPdfDocument::Error::InvalidFileFormat:
      return "The PDF is damaged or cut short.";
    default:
      return "The PDF could not be read.";
  }
}

/// A PDF and the buffer that it reads from.
struct Pdf {
  QByteArray bytes;
  QBuffer buffer{&bytes};
  QPdfDocument document{nullptr};
};

Result<std::unique_ptr<Pdf>> openPdf(const Blob& file) {
  auto pdf = std::make_unique<Pdf>();
  pdf->bytes = viewOf(file);
  pdf->buffer.open(QIODevice::ReadOnly);
  pdf->document.load(&pdf->buffer);
  if (pdf->document.status() != QPdfDocument::Status::Ready || pdf->document.pageCount() < 1) {
    return fail(
        pdfFault(pdf->document.error()), file.fileName,
        "Open it in a PDF viewer, save an unlocked copy of the page or a picture of it, and use that.");
  }
  return pdf;
}

Result<QSizeF> pagePoints(const Pdf& pdf, const Blob& file, int page) {
  if (page < 0 || page >= pdf.document.pageCount()) {
    return fail("The PDF has " + std::to_string(pdf.document.pageCount()) + " pages; there is no page " +
                    std::to_string(page + 1) + ".",
                file.fileName);
  }
  const QSizeF points = pdf.document.pagePointSize(page);
  if (!(points.width() > 0) || !(points.height() > 0))
    return fail("The PDF's page has no size.", file.fileName);
  return points;
}

double resolutionFor(QSizeF points) {
  const double longest = std::max(points.width(), points.height()) / 72 * 0.0254;
  return std::min(kPdfDotsPerMetre, kLongestPdfSide / longest);
}

QSize pixelsFor(QSizeF points, double dotsPerMetre) {
  return (points / 72 * 0.0254 * dotsPerMetre).toSize().expandedTo(QSize(1, 1));
}

Result<QImage> decodePdf(const PlanScan& scan) {
  const Result<std::unique_ptr<Pdf>> pdf = openPdf(*scan.file);
  if (!pdf) return tl::unexpected(pdf.error());
  const Result<QSizeF> points = pagePoints(**pdf, *scan.file, scan.page);
  if (!points) return tl::unexpected(points.error());
  const QSize size = pixelsFor(*points, std::min(scan.pdfDotsPerMetre, resolutionFor(*points)));
  const QImage page = (*pdf)->document.render(scan.page, size);
  if (page.isNull()) return fail("The PDF's page could not be drawn.", scan.file->fileName);
  QImage paper(page.size(), QImage::Format_RGB32);
  paper.fill(Qt::white);
  const QImage opaque = page.convertToFormat(QImage::Format_ARGB32_Premultiplied);
  for (int y = 0; y < paper.height(); ++y) {
    const auto* in = reinterpret_cast<const QRgb*>(opaque.constScanLine(y));
    auto* out = reinterpret_cast<QRgb*>(paper.scanLine(y));
    for (int x = 0; x < paper.width(); ++x) {
      const int rest = 255 - qAlpha(in[x]);
      out[x] = qRgb(qRed(in[x]) + rest, qGreen(in[x]) + rest, qBlue(in[x]) + rest);
    }
  }
  return paper;
}

}  // namespace

Result<PlanFileInfo> inspectPlan(const Blob& file) {
  PlanFileInfo info;
  if (looksLikePdf(file)) {
    const Result<std::unique_ptr<Pdf>> pdf = openPdf(file);
    if (!pdf) return tl::unexpected(pdf.error());
    const Result<QSizeF> points = pagePoints(**pdf, file, 0);
    if (!points) return tl::unexpected(points.error());
    info.isPdf = true;
    info.pages = (*pdf)->document.pageCount();
    info.pixels = pixelsFor(*points, resolutionFor(*points));
    return info;
  }
  QByteArray bytes = viewOf(file);
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::ReadOnly);
  QImageReader reader(&buffer);
  if (!reader.canRead()) {
    return fail("This is not a picture that can be read.", file.fileName,
                "PNG, JPEG, TIFF and PDF files can be used as a plan.");
  }
  info.pixels = reader.size();
  if (!info.pixels.isValid()) return fail("The picture does not say how large it is.", file.fileName);
  const bool isJpeg = reader.format() == "jpeg";
  info.isCutShort = isJpeg && endsTooEarly(file);
  const double pixels = double(info.pixels.width()) * info.pixels.height();
  if (pixels > (isJpeg ? kLargestShrunkPixels : kLargestPlanPixels)) return tooLarge(file, info.pixels);
  if (pixels > kLargestPlanPixels) info.shrunkBy = 2;
  info.pixels = shrunk(info.pixels, info.shrunkBy);
  if (reader.transformation() & QImageIOHandler::TransformationRotate90) info.pixels.transpose();
  return info;
}

Result<double> planResolution(const Blob& file, int page) {
  if (!looksLikePdf(file)) return 0.0;
  const Result<std::unique_ptr<Pdf>> pdf = openPdf(file);
  if (!pdf) return tl::unexpected(pdf.error());
  const Result<QSizeF> points = pagePoints(**pdf, file, page);
  if (!points) return tl::unexpected(points.error());
  return resolutionFor(*points);
}

Result<QImage> decodePlan(const PlanScan& scan) {
  if (!scan.file) return fail("The plan has no picture.", scan.name);
  if (looksLikePdf(*scan.file)) return decodePdf(scan);
  const Result<PlanFileInfo> info = inspectPlan(*scan.file);
  if (!info) return tl::unexpected(info.error());
  // Qt's own limit of 128 MB would refuse an ordinary A3 scan; ours has been asked above.
  QImageReader::setAllocationLimit(1024);
  QByteArray bytes = viewOf(*scan.file);
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::ReadOnly);
  QImageReader reader(&buffer);
  reader.setAutoTransform(true);
  if (info->shrunkBy > 1) reader.setScaledSize(shrunk(reader.size(), info->shrunkBy));
  QImage image = reader.read();
  if (image.isNull()) {
    return fail("The picture is damaged or cut short: " + reader.errorString().toStdString() + ".",
                scan.file->fileName, "Scan or save it again.");
  }
  return image.convertToFormat(image.hasAlphaChannel() ? QImage::Format_ARGB32_Premultiplied
                                                       : QImage::Format_RGB32);
}

PlanImages::Entry& PlanImages::entry(const PlanScan& scan) {
  // An address may be used again by another file once the first one is gone.
  std::erase_if(entries_, [](const auto& item) { return item.second.file.expired(); });
  const auto [found, isNew] = entries_.try_emplace({scan.file.get(), scan.page});
  if (isNew) {
    found->second.file = scan.file;
    if (Result<QImage> image = decodePlan(scan)) {
      found->second.full = *image;
    }
  }
  return found->second;
}

const QImage& PlanImages::full(const PlanScan& scan) {
  return entry(scan).full;
}

}  // namespace baywright
