// SPDX-License-Identifier: Apache-2.0
#include "painting/plan_image.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <algorithm>

namespace baywright {
namespace {

Blob blobOf(const QByteArray& bytes, const std::string& name) {
  return {name, bytes.toStdString()};
}
PlanScan scanOf(const Blob& blob) {
  PlanScan scan;
  scan.file = std::make_shared<const Blob>(blob);
  return scan;
}

/// Red on the left, white on the right.
QImage halves(int width, int height) {
  QImage image(width, height, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter(&image).fillRect(0, 0, width / 2, height, Qt::red);
  return image;
}
QByteArray saved(const QImage& image, const char* format) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  EXPECT_TRUE(image.save(&buffer, format, 95)) << format;
  return bytes;
}

std::uint32_t crc32(const QByteArray& bytes) {
  std::uint32_t crc = 0xffffffffU;
  for (const char byte : bytes) {
    crc ^= static_cast<unsigned char>(byte);
    for (int bit = 0; bit < 8; ++bit) crc = (crc >> 1) ^ (crc & 1 ? 0xedb88320U : 0);
  }
  return ~crc;
}
QByteArray bigEndian(std::uint32_t value) {
  QByteArray bytes(4, '\0');
  for (int i = 0; i < 4; ++i) bytes[i] = static_cast<char>(value >> (24 - 8 * i));
  return bytes;
}
/// A PNG that promises this many grey pixels and holds none.
QByteArray emptyPng(std::uint32_t width, std::uint32_t height) {
  const QByteArray header =
      QByteArray("IHDR") + bigEndian(width) + bigEndian(height) + QByteArray("\x08\0\0\0\0", 5);
  return QByteArray("\x89PNG\r\n\x1a\n", 8) + bigEndian(13) + header + bigEndian(crc32(header)) +
         bigEndian(0) + "IDAT" + bigEndian(crc32("IDAT"));
}

QByteArray pdf(const QPageSize& size, int pages) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setPageSize(size);
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  writer.setResolution(72);
  QPainter painter(&writer);
  for (int page = 0; page < pages; ++page) {
    if (page > 0) writer.newPage();
    painter.fillRect(0, 0, 100, 100 * (page + 1), Qt::black);
  }
  painter.end();
  return bytes;
}

/// A document whose encryption dictionary no password fits.
QByteArray lockedPdf() {
  const QByteArray nonsense = QByteArray(64, 'a');
  QByteArray bytes("%PDF-1.4\n");
  QList<qsizetype> offsets;
  const auto object = [&](const QByteArray& body) {
    offsets.push_back(bytes.size());
    bytes += QByteArray::number(offsets.size()) + " 0 obj\n" + body + "\nendobj\n";
  };
  object("<< /Type /Catalog /Pages 2 0 R >>");
  object("<< /Type /Pages /Kids [3 0 R] /Count 1 >>");
  object("<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] >>");
  object("<< /Filter /Standard /V 1 /R 2 /P -4 /O <" + nonsense + "> /U <" + nonsense + "> >>");
  const qsizetype table = bytes.size();
  bytes += "xref\n0 5\n0000000000 65535 f \n";
  for (const qsizetype offset : offsets)
    bytes += QByteArray::number(offset).rightJustified(10, '0') + " 00000 n \n";
  return bytes + "trailer\n<< /Size 5 /Root 1 0 R /Encrypt 4 0 R /ID [<00> <00>] >>\nstartxref\n" +
         QByteArray::number(table) + "\n%%EOF\n";
}

TEST(PlanImage, ReadsPngJpegAndTiff) {
  for (const char* format : {"PNG", "JPEG", "TIFF"}) {
    const Blob blob = blobOf(saved(halves(120, 80), format), "plan");
    const auto info = inspectPlan(blob);
    ASSERT_TRUE(info) << format;
    EXPECT_EQ(info->pixels, QSize(120, 80));
    EXPECT_FALSE(info->isPdf);
    const auto image = decodePlan(scanOf(blob));
    ASSERT_TRUE(image) << format;
    EXPECT_GT(image->pixelColor(20, 40).saturation(), 200);
    EXPECT_LT(image->pixelColor(100, 40).saturation(), 20);
  }
}

TEST(PlanImage, RefusesAHugePictureBeforeItIsDecoded) {
  for (const std::uint32_t side : {100000U, 14200U}) {
    const auto info = inspectPlan(blobOf(emptyPng(side, side), "huge.png"));
    ASSERT_FALSE(info);
    EXPECT_NE(info.error().what.find(std::to_string(side)), std::string::npos) << info.error().what;
    EXPECT_FALSE(info.error().next.empty());
  }
}

TEST(PlanImage, ReadsAVeryLargePhotoAtHalfItsSize) {
  QImage photo(12601, 12000, QImage::Format_Grayscale8);
  photo.fill(255);
  for (int y = 0; y < 6000; ++y) std::fill_n(photo.scanLine(y), 6300, uchar{0});
  const Blob blob = blobOf(saved(photo, "JPEG"), "photo.jpg");
  photo = {};
  const auto info = inspectPlan(blob);
  ASSERT_TRUE(info) << info.error().sentence();
  EXPECT_EQ(info->shrunkBy, 2);
  const auto image = decodePlan(scanOf(blob));
  ASSERT_TRUE(image) << image.error().sentence();
  EXPECT_EQ(image->size(), info->pixels);
  EXPECT_NEAR(image->width(), 6300.5, 1);
  EXPECT_LT(image->pixelColor(3100, 2950).lightness(), 20);
  EXPECT_GT(image->pixelColor(3200, 2950).lightness(), 235);
  EXPECT_GT(image->pixelColor(3100, 3050).lightness(), 235);
}

TEST(PlanImage, TellsAPhotoThatIsCutShort) {
  const QByteArray whole = saved(halves(600, 400), "JPEG");
  EXPECT_FALSE(inspectPlan(blobOf(whole, "whole.jpg"))->isCutShort);
  EXPECT_FALSE(inspectPlan(blobOf(whole + "what a camera adds", "whole.jpg"))->isCutShort);
  const auto cut = inspectPlan(blobOf(whole.first(whole.size() * 2 / 3), "cut.jpg"));
  ASSERT_TRUE(cut);
  EXPECT_TRUE(cut->isCutShort);
}

TEST(PlanImage, TellsADamagedPicture) {
  const QByteArray whole = saved(halves(600, 400), "PNG");
  const auto cut = decodePlan(scanOf(blobOf(whole.first(whole.size() / 2), "cut.png")));
  ASSERT_FALSE(cut);
  EXPECT_NE(cut.error().what.find("damaged"), std::string::npos);
  EXPECT_FALSE(inspectPlan(blobOf("Dear Sir or Madam", "letter.png")));
  EXPECT_FALSE(inspectPlan(blobOf({}, "empty.png")));
  EXPECT_FALSE(decodePlan(PlanScan{}));
}

TEST(PlanImage, TurnsAPdfsPageIntoPixelsAtASaneResolution) {
  const Blob blob = blobOf(pdf(QPageSize(QPageSize::A4), 2), "plan.pdf");
  const auto info = inspectPlan(blob);
  ASSERT_TRUE(info);
  EXPECT_TRUE(info->isPdf);
  EXPECT_EQ(info->pages, 2);
  PlanScan scan = scanOf(blob);
  scan.page = 1;
  scan.pdfDotsPerMetre = planResolution(blob, 1).value_or(0);
  const auto image = decodePlan(scan);
  ASSERT_TRUE(image);
  // 210 mm at 200 dots an inch; the page is rounded to whole points.
  EXPECT_NEAR(image->width(), 210 / 25.4 * 200, 3);
  // The second page's mark is 200 points high.
  EXPECT_EQ(image->pixelColor(100, static_cast<int>(190 / 72.0 * 200)), QColor(Qt::black));
  EXPECT_EQ(image->pixelColor(100, static_cast<int>(210 / 72.0 * 200)), QColor(Qt::white));
}

TEST(PlanImage, GivesALargeSheetFewerDots) {
  const Blob blob = blobOf(pdf(QPageSize(QPageSize::A0), 1), "large.pdf");
  const auto info = inspectPlan(blob);
  ASSERT_TRUE(info);
  EXPECT_LE(std::max(info->pixels.width(), info->pixels.height()), kLongestPdfSide + 1);
}

TEST(PlanImage, TellsWhatIsWrongWithAPdf) {
  const auto locked = inspectPlan(blobOf(lockedPdf(), "locked.pdf"));
  ASSERT_FALSE(locked);
  EXPECT_NE(locked.error().what.find("password"), std::string::npos) << locked.error().what;
  const auto cut = inspectPlan(blobOf(pdf(QPageSize(QPageSize::A4), 1).first(40), "cut.pdf"));
  ASSERT_FALSE(cut);
  EXPECT_FALSE(cut.error().next.empty());
  EXPECT_FALSE(planResolution(blobOf(pdf(QPageSize(QPageSize::A4), 1), "plan.pdf"), 7));
}

}  // namespace
}  // namespace baywright
