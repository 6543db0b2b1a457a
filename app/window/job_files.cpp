// SPDX-License-Identifier: Apache-2.0
#include "window/job_files.h"

#include <QApplication>
#include <QBuffer>
#include <QClipboard>
#include <QDateTime>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>

#include "exchange/survey_kind.h"
#include "job/edit.h"
#include "jobfile/atomic_file.h"
#include "jobfile/autosave.h"
#include "jobfile/job_archive.h"
#include "painting/plan_image.h"
#include "survey/plan_scan_fit.h"
#include "survey/take_room.h"
#include "window/page_dialog.h"
#include "window/resources.h"
#include "window/room_import.h"

namespace baywright {
namespace {

constexpr std::uint64_t kLargestPlanFile = 256ull << 20;

QString jobFilter() {
  return JobFiles::tr("Jobs (*.bayjob)");
}
QString planPatterns() {
  return QStringLiteral("*.png *.jpg *.jpeg *.tif *.tiff *.bmp *.webp *.pdf");
}
QString planFilter() {
  return JobFiles::tr("Plans (%1)").arg(planPatterns());
}
QString surveyPatterns() {
  QStringList patterns;
  for (const std::string_view suffix : surveySuffixes())
    patterns << QStringLiteral("*.") +
                    QString::fromLatin1(suffix.data(), static_cast<qsizetype>(suffix.size()));
  return patterns.join(QLatin1Char(' '));
}
QString surveyFilter() {
  return JobFiles::tr("Drawings, scans and measuring lists (%1)").arg(surveyPatterns());
}

bool isJobName(const QString& path) {
  return path.endsWith(QLatin1String(".bayjob"), Qt::CaseInsensitive);
}

/// A job whose name was changed on its way, by mail or by a browser: an archive, as no plan is.
bool isArchive(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) && file.read(4) == QByteArray("PK\x03\x04");
}

}  // namespace

JobFiles::JobFiles(Document& document, std::filesystem::path recoveryFolder, QWidget* window)
    : QObject(window),
      document_(document),
      window_(window),
      settings_(Settings::read()),
      recoveryFolder_(recoveryFolder),
      keeper_(document, recoveryFolder) {}

QString JobFiles::openFilter() {
  const QString all =
      tr("All that can be opened (%1)")
          .arg(QStringLiteral("*.bayjob ") + planPatterns() + QLatin1Char(' ') + surveyPatterns());
  return QStringList{all, jobFilter(), planFilter(), surveyFilter()}.join(QStringLiteral(";;"));
}

void JobFiles::said(const Problem& problem) {
  Q_EMIT document_.problemRaised(QString::fromStdString(problem.sentence()));
}

void JobFiles::remember(const QString& path) {
  settings_.remember(path);
  settings_.write();
  Q_EMIT recentChanged();
}

bool JobFiles::maySwitch() {
  if (!document_.isModified()) return true;
  QMessageBox box(QMessageBox::Question, tr("Unsaved work"),
                  tr("\"%1\" has changes that are not saved.").arg(document_.displayName()),
                  QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, window_);
  box.setDefaultButton(QMessageBox::Save);
  switch (box.exec()) {
    case QMessageBox::Save:
      return save();
    case QMessageBox::Discard:
      keeper_.forget();
      return true;
    default:
      return false;
  }
}

void JobFiles::newDocument() {
  if (maySwitch()) document_.startWith(starterJob());
}

void JobFiles::open() {
  const QString path = QFileDialog::getOpenFileName(window_, tr("Open"), settings_.lastFolder, openFilter());
  if (!path.isEmpty()) openFile(path);
}

bool JobFiles::openFile(const QString& path) {
  if (isJobName(path) || isArchive(path)) return maySwitch() && openJob(path);
  if (hasSurveySuffix(path.toStdString())) return takeSurvey(path);
  const Result<std::string> bytes = readWholeFile(path.toStdString(), kLargestPlanFile);
  if (!bytes) {
    said(bytes.error());
    return false;
  }
  return addPlan(QFileInfo(path).fileName(), QByteArray::fromStdString(*bytes));
}

bool JobFiles::openJob(const QString& path) {
  if (const std::optional<Problem> problem = document_.open(path)) {
    said(*problem);
    return false;
  }
  remember(path);
  return true;
}

void JobFiles::openExample() {
  if (!maySwitch()) return;
  const QByteArray bytes = resourceBytes(QStringLiteral("examples/orchard-garage.bayjob"));
  Result<Job> example = jobFromBytes(std::string_view(bytes.data(), static_cast<std::size_t>(bytes.size())));
  if (!example) {
    said(example.error());
    return;
  }
  document_.startWith(std::move(*example));
}

bool JobFiles::save() {
  if (document_.path().isEmpty() || document_.isReadOnly()) return saveAs();
  if (const std::optional<Problem> problem = document_.save(document_.path())) {
    said(*problem);
    return false;
  }
  remember(document_.path());
  return true;
}

bool JobFiles::saveAs() {
  const QString start = document_.path().isEmpty() ? settings_.lastFolder + QLatin1Char('/') +
                                                         document_.displayName() + QStringLiteral(".bayjob")
                                                   : document_.path();
  QString path = QFileDialog::getSaveFileName(window_, tr("Save the job"), start, jobFilter());
  if (path.isEmpty()) return false;
  if (!isJobName(path)) path += QStringLiteral(".bayjob");
  if (const std::optional<Problem> problem = document_.save(path)) {
    said(*problem);
    return false;
  }
  remember(path);
  return true;
}

void JobFiles::revert() {
  if (document_.path().isEmpty()) return;
  const auto answer = QMessageBox::question(
      window_, tr("Revert"), tr("Go back to \"%1\" as it was last saved?").arg(document_.displayName()));
  if (answer == QMessageBox::Yes) openJob(document_.path());
}

void JobFiles::importPlan() {
  const QString path =
      QFileDialog::getOpenFileName(window_, tr("Open a plan"), settings_.lastFolder, planFilter());
  if (!path.isEmpty()) openFile(path);
}

void JobFiles::importSurvey() {
  const QString path = QFileDialog::getOpenFileName(window_, tr("Import a drawing or scan"),
                                                    settings_.lastFolder, surveyFilter());
  if (!path.isEmpty()) openFile(path);
}

bool JobFiles::takeSurvey(const QString& path) {
  const auto room = importRoom(path, document_.job().units, window_);
  if (!room) {
    said(room.error());
    return false;
  }
  if (!*room) return false;
  const QString text = tr("Take the room from %1").arg(QFileInfo(path).fileName());
  if (!document_.change(text, takeRoom(document_.job(), **room))) return false;
  Q_EMIT roomTaken();
  return true;
}

void JobFiles::pastePlan() {
  const QMimeData* data = QApplication::clipboard()->mimeData();
  if (!data || !data->hasImage()) {
    said({"There is no picture on the clipboard.", {}, "Copy one and paste again."});
    return;
  }
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  qvariant_cast<QImage>(data->imageData()).save(&buffer, "PNG");
  addPlan(tr("pasted.png"), bytes);
}

bool JobFiles::addPlan(const QString& fileName, const QByteArray& bytes) {
  PlanScan scan;
  scan.file = std::make_shared<const Blob>(Blob{fileName.toStdString(), bytes.toStdString()});
  scan.name = QFileInfo(fileName).completeBaseName().toStdString();
  const Result<PlanFileInfo> info = inspectPlan(*scan.file);
  if (!info) {
    said(info.error());
    return false;
  }
  if (info->pages > 1) {
    PageDialog dialog(scan.file, info->pages, window_);
    if (dialog.exec() != QDialog::Accepted) return false;
    scan.page = dialog.page();
  }
  if (info->isCutShort)
    Q_EMIT document_.problemRaised(
        tr("%1 is cut short: its lower part is missing. Bring a whole copy if that is needed.")
            .arg(fileName));
  else if (info->shrunkBy > 1)
    Q_EMIT document_.problemRaised(tr("%1 is shown at half its size: it has more pixels than fit into "
                                      "memory. The file is kept as it is.")
                                       .arg(fileName));
  const Result<double> resolution = planResolution(*scan.file, scan.page);
  if (!resolution) {
    said(resolution.error());
    return false;
  }
  scan.pdfDotsPerMetre = *resolution;
  const Result<QImage> image = decodePlan(scan);
  if (!image) {
    said(image.error());
    return false;
  }
  scan.worldFromPixel = worldFromFreshPixels(Vec2(image->width(), image->height()), document_.job());
  if (!document_.change(tr("Add the plan %1").arg(fileName), addPlanScan(document_.job(), scan)))
    return false;
  const Id added = newestId(document_.job());
  document_.selection().select(added);
  Q_EMIT planAdded(added);
  return true;
}

void JobFiles::offerRecovery() {
  if (recoveryFolder_.empty()) return;
  for (const Recovery& lost : abandonedRecoveries(recoveryFolder_)) {
    const QString when = QDateTime::fromSecsSinceEpoch(lost.savedAt).toString(Qt::TextDate);
    QMessageBox box(QMessageBox::Question, tr("Unsaved work was found"),
                    tr("\"%1\" was not saved when the program ended. It was kept on %2.")
                        .arg(QString::fromStdString(lost.title), when),
                    QMessageBox::NoButton, window_);
    QAbstractButton* openIt = box.addButton(tr("Open it"), QMessageBox::AcceptRole);
    QAbstractButton* discard = box.addButton(tr("Discard it"), QMessageBox::DestructiveRole);
    box.addButton(tr("Keep it for later"), QMessageBox::RejectRole);
    box.exec();
    if (box.clickedButton() == discard) {
      static_cast<void>(removeRecovery(recoveryFolder_, lost.key));
      continue;
    }
    if (box.clickedButton() != openIt) continue;
    Result<Job> job = loadJob(recoveryFile(recoveryFolder_, lost.key));
    if (!job) {
      said(job.error());
      continue;
    }
    document_.recover(std::move(*job), QString::fromStdString(lost.original.string()));
    keeper_.keepNow();
    static_cast<void>(removeRecovery(recoveryFolder_, lost.key));
    return;
  }
}

}  // namespace baywright
