// SPDX-License-Identifier: Apache-2.0
// The PDF is measured from outside, with mutool, pdfinfo, pdffonts and pdftotext.
#include "paper/pdf_writer.h"

#include <gtest/gtest.h>

#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "clearance/assess.h"
#include "drawing/sheets.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

QString outputOf(const QString& program, const QStringList& words) {
  QProcess process;
  process.start(program, words);
  process.waitForFinished(60000);
  return QString::fromUtf8(process.readAllStandardOutput() + process.readAllStandardError());
}

#define NEEDS(program)                                                   \
  if (QStandardPaths::findExecutable(QStringLiteral(program)).isEmpty()) \
  GTEST_SKIP() << program " is not installed"

class PdfWriter : public ::testing::Test {
 protected:
  /// One page with one line of `mm` millimetres, and the file it was written to.
  QString lineOf(double mm) {
    SheetPage page;
    page.widthMm = 297;
    page.heightMm = 210;
    Path line;
    line.layer = Layer::Walls;
    line.rings = {{Vec2(50, 100), Vec2(50 + mm, 100)}};
    page.marks.paths.push_back(line);
    const QString path = folder.filePath(QStringLiteral("line.pdf"));
    const Result<void> written = writePdf(path, {page}, newJob(), images, QStringLiteral("A line"));
    EXPECT_TRUE(written.has_value()) << written.error().sentence();
    return path;
  }
  QString planOf(const Job& job, double scale) {
    SheetRequest request;
    request.scale = scale;
    const auto pages = makeSheet("plan", job, assess(job), request);
    EXPECT_TRUE(pages.has_value()) << pages.error().sentence();
    const QString path = folder.filePath(QStringLiteral("plan.pdf"));
    EXPECT_TRUE(writePdf(path, *pages, job, images, QStringLiteral("Plan")).has_value());
    return path;
  }

  QTemporaryDir folder;
  PlanImages images;
};

TEST_F(PdfWriter, DrawsAMillimetreAsAMillimetre) {
  NEEDS("mutool");
  // 20 mm is a wall of 1 m at 1:50.
  const QString trace = outputOf(QStringLiteral("mutool"), {QStringLiteral("draw"), QStringLiteral("-F"),
                                                            QStringLiteral("trace"), lineOf(20)});
  const auto matrix =
      QRegularExpression(
          QStringLiteral(R"(stroke_path[^>]*transform="([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+))"))
          .match(trace);
  const auto from = QRegularExpression(QStringLiteral(R"(<moveto x="([-\d.]+)\")")).match(trace);
  const auto to = QRegularExpression(QStringLiteral(R"(<lineto x="([-\d.]+)\")")).match(trace);
  ASSERT_TRUE(matrix.hasMatch() && from.hasMatch() && to.hasMatch()) << trace.toStdString();
  const double points =
      (to.captured(1).toDouble() - from.captured(1).toDouble()) * matrix.captured(1).toDouble();
  EXPECT_NEAR(points / 72 * 25.4, 20.0, 0.02);
}

TEST_F(PdfWriter, ShowsTheSameLengthInPixels) {
  NEEDS("pdftoppm");
  const QString stem = folder.filePath(QStringLiteral("page"));
  outputOf(QStringLiteral("pdftoppm"),
           {QStringLiteral("-r"), QStringLiteral("400"), QStringLiteral("-png"), lineOf(100), stem});
  const QImage image(stem + QStringLiteral("-1.png"));
  ASSERT_FALSE(image.isNull());
  int first = image.width();
  int last = -1;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      if (qGray(image.pixel(x, y)) > 128) continue;
      first = std::min(first, x);
      last = std::max(last, x);
    }
  }
  EXPECT_NEAR((last - first + 1) / 400.0 * 25.4, 100.0, 0.1);
}

TEST_F(PdfWriter, EmbedsItsFontsAndKeepsItsWords) {
  NEEDS("pdffonts");
  const Job job = testing::garage(7.0, 6.0).withGolfer(1.8, Hand::Right, "Robin").withClub().job();
  const QString path = planOf(job, 50);
  const QStringList fonts =
      outputOf(QStringLiteral("pdffonts"), {path}).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
  ASSERT_GT(fonts.size(), 2);
  for (qsizetype i = 2; i < fonts.size(); ++i) {
    EXPECT_TRUE(fonts[i].contains(QLatin1String("DejaVu"))) << fonts[i].toStdString();
    EXPECT_TRUE(fonts[i].contains(QRegularExpression(QStringLiteral(R"(\byes\b)"))))
        << fonts[i].toStdString();
  }
  const QString text = outputOf(QStringLiteral("pdftotext"), {path, QStringLiteral("-")});
  EXPECT_TRUE(text.contains(QLatin1String("SCALE 1:50")));
  EXPECT_TRUE(text.contains(QLatin1String("Robin")));
  EXPECT_TRUE(text.contains(QLatin1String("not a guarantee")));
}

TEST_F(PdfWriter, AsksViewersNotToScaleIt) {
  QFile file(lineOf(10));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_TRUE(file.readAll().contains("/PrintScaling /None"));
  NEEDS("mutool");
  EXPECT_TRUE(outputOf(QStringLiteral("mutool"), {QStringLiteral("info"), file.fileName()})
                  .contains(QLatin1String("Pages: 1")));
}

TEST_F(PdfWriter, RefusesAFolderThatIsNotThere) {
  SheetPage page;
  page.widthMm = 100;
  page.heightMm = 100;
  const Result<void> written =
      writePdf(folder.filePath(QStringLiteral("no/such/folder.pdf")), {page}, newJob(), images, {});
  ASSERT_FALSE(written.has_value());
  EXPECT_FALSE(written.error().sentence().empty());
  EXPECT_FALSE(pdfOf({}, newJob(), images, {}).has_value());
}

}  // namespace
}  // namespace baywright
