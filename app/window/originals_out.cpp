// SPDX-License-Identifier: Apache-2.0
#include "window/originals_out.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QMessageBox>

#include "jobfile/save_originals.h"

namespace baywright {
namespace {

struct Originals {
  Q_DECLARE_TR_FUNCTIONS(Originals)
};

}  // namespace

void saveOriginalsOut(Document& document, QWidget* window) {
  if (originalCount(document.job()) == 0) {
    Q_EMIT document.problemRaised(Originals::tr(
        "The job keeps no files yet. A plan, drawing, list or scan that is brought in is kept."));
    return;
  }
  const QString folder =
      QFileDialog::getExistingDirectory(window, Originals::tr("Save originals into a folder"));
  if (folder.isEmpty()) return;
  const auto written = saveOriginals(document.job(), folder.toStdString());
  if (!written) {
    Q_EMIT document.problemRaised(QString::fromStdString(written.error().sentence()));
    return;
  }
  QStringList names;
  for (const auto& path : *written) names << QString::fromStdString(path.filename().string());
  QMessageBox told(QMessageBox::Information, Originals::tr("Originals"),
                   Originals::tr("Written to %1:\n%2")
                       .arg(QDir::toNativeSeparators(folder), names.join(QLatin1Char('\n'))),
                   QMessageBox::Ok, window);
  told.setObjectName(QStringLiteral("savedOriginals"));
  told.exec();
}

}  // namespace baywright
