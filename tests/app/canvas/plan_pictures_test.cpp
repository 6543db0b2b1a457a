// SPDX-License-Identifier: Apache-2.0
#include "canvas/plan_pictures.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QSignalSpy>
#include <QTest>

namespace baywright {
namespace {

PlanScan scanOf(const QImage& image) {
  QByteArray png;
  QBuffer buffer(&png);
  buffer.open(QIODevice::WriteOnly);
  EXPECT_TRUE(image.save(&buffer, "PNG"));
  PlanScan scan;
  scan.file = std::make_shared<const Blob>(Blob{"plan.png", png.toStdString()});
  return scan;
}

QImage picture(int width, int height) {
  QImage image(width, height, QImage::Format_RGB32);
  image.fill(Qt::white);
  return image;
}

TEST(PlanPictures, DecodeElsewhereAndTell) {
  PlanPictures pictures;
  QSignalSpy ready(&pictures, &PlanPictures::ready);
  const PlanScan scan = scanOf(picture(3000, 2001));
  EXPECT_TRUE(pictures.sizeOf(scan).isEmpty());
  ASSERT_TRUE(ready.wait(5000));
  EXPECT_EQ(pictures.sizeOf(scan), QSize(3000, 2001));
  EXPECT_FALSE(pictures.problemOf(scan));
}

TEST(PlanPictures, GiveTheSmallestCopyThatIsFineEnough) {
  PlanPictures pictures;
  const PlanScan scan = scanOf(picture(3000, 2001));
  EXPECT_EQ(pictures.copyFor(scan, 100), nullptr);
  pictures.finish();
  EXPECT_EQ(pictures.copyFor(scan, 5000)->size(), QSize(3000, 2001));
  EXPECT_EQ(pictures.copyFor(scan, 1501)->size(), QSize(3000, 2001));
  EXPECT_EQ(pictures.copyFor(scan, 1500)->size(), QSize(1500, 1001));
  EXPECT_EQ(pictures.copyFor(scan, 400)->size(), QSize(750, 501));
  EXPECT_EQ(pictures.copyFor(scan, 10)->size(), QSize(188, 126));
}

TEST(PlanPictures, KeepWhyAPictureCannotBeDecoded) {
  PlanPictures pictures;
  PlanScan scan;
  scan.file = std::make_shared<const Blob>(Blob{"plan.png", "no picture at all"});
  pictures.sizeOf(scan);
  pictures.finish();
  EXPECT_TRUE(pictures.sizeOf(scan).isEmpty());
  ASSERT_TRUE(pictures.problemOf(scan));
  EXPECT_FALSE(pictures.problemOf(scan)->sentence().empty());
}

TEST(PlanPictures, ForgetAFileThatIsGone) {
  PlanPictures pictures;
  auto image = std::make_unique<PlanScan>(scanOf(picture(30, 20)));
  pictures.sizeOf(*image);
  pictures.finish();
  const std::weak_ptr<const Blob> file = image->file;
  image.reset();
  QCoreApplication::processEvents();
  const PlanScan other = scanOf(picture(40, 20));
  pictures.sizeOf(other);
  pictures.finish();
  EXPECT_EQ(pictures.sizeOf(other), QSize(40, 20));
  EXPECT_TRUE(file.expired());
}

}  // namespace
}  // namespace baywright
