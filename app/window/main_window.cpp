// SPDX-License-Identifier: Apache-2.0
#include "window/main_window.h"

#include <QActionGroup>
#include <QCloseEvent>
#include <QDropEvent>
#include <QLabel>
#include <QMessageBox>
#include <QMimeData>
#include <QStackedWidget>
#include <QUrl>

#include "canvas/plan_view.h"
#include "job/edit.h"
#include "job/thing_lookup.h"
#include "panels/message_strip.h"
#include "panels/start_page.h"
#include "window/compare_view.h"
#include "window/help_window.h"
#include "window/resources.h"
#include "window/sign_off_view.h"
#include "window/workspace.h"

namespace baywright {

MainWindow::MainWindow(std::filesystem::path recoveryFolder, QWidget* parent)
    : QMainWindow(parent),
      catalogue_(builtInCatalogue()),
      files_(new JobFiles(document_, std::move(recoveryFolder), this)),
      workspace_(new Workspace(document_, toolBox_, catalogue_)),
      compare_(new CompareView(document_)),
      signOff_(new SignOffView(document_, images_)),
      pages_(new QStackedWidget),
      messages_(new MessageStrip(pages_)) {
  setAcceptDrops(true);
  pages_->addWidget(workspace_);
  pages_->addWidget(compare_);
  pages_->addWidget(signOff_);
  setCentralWidget(pages_);
  makeMenus();
  makeStageBar();
  makeToolBar();
  makeStatusBar();
  connectViews();

  connect(&document_, &Document::problemRaised, messages_, &MessageStrip::say);
  connect(&document_, &Document::fileChanged, this, &MainWindow::updateTitle);
  connect(&document_, &Document::assessed, this, &MainWindow::updateCounts);
  connect(&document_, &Document::jobChanged, this, [this](const JobChange&) {
    updateTitle();
    followUnits();
  });
  connect(files_, &JobFiles::recentChanged, this, &MainWindow::fillRecent);
  connect(files_, &JobFiles::planAdded, this, [this] {
    showStage(Stage::Survey);
    workspace_->showPlan();
    workspace_->plan().fit();
    toolBox_.choose(ToolKind::ScanScale);
  });
  connect(files_, &JobFiles::roomTaken, this, [this] {
    showStage(Stage::Survey);
    fitAll();
  });
  tintIcons();
  showStage(Stage::Survey);
  updateTitle();
  updateCounts();
  followUnits();
  if (!restoreGeometry(files_->settings().geometry)) resize(1600, 1000);
}

MainWindow::~MainWindow() {
  // Views refer to the document until their end: they go first.
  delete takeCentralWidget();
}

void MainWindow::connectViews() {
  for (View* view : workspace_->drawings()) {
    connect(view, &View::said, messages_, &MessageStrip::say);
    connect(view, &View::statusChanged, hint_, &QLabel::setText);
  }
  connect(workspace_, &Workspace::measuringListAsked, this, &MainWindow::showMeasuringList);
  StartPage& start = workspace_->startPage();
  connect(&start, &StartPage::planAsked, files_, &JobFiles::importPlan);
  connect(&start, &StartPage::surveyAsked, files_, &JobFiles::importSurvey);
  connect(&start, &StartPage::exampleAsked, files_, [this] {
    files_->openExample();
    showStage(Stage::Place);
    fitAll();
  });
  connect(&start, &StartPage::traceAsked, this, [this] {
    workspace_->showPlan();
    toolBox_.choose(ToolKind::Outline);
  });
}

void MainWindow::showStage(Stage stage) {
  stage_ = stage;
  for (QAction* action : stageGroup_->actions())
    action->setChecked(action->data().toInt() == static_cast<int>(stage));
  QWidget* page = workspace_;
  if (stage == Stage::Compare) page = compare_;
  if (stage == Stage::SignOff) page = signOff_;
  pages_->setCurrentWidget(page);
  workspace_->setWork(stage == Stage::Survey    ? Workspace::Work::Survey
                      : stage == Stage::Picture ? Workspace::Work::Picture
                                                : Workspace::Work::Place);
  toolBox_.choose(ToolKind::Select);
  showTools();
}

void MainWindow::print() {
  showStage(Stage::SignOff);
  signOff_->print();
}

void MainWindow::showMeasuringList() {
  showStage(Stage::SignOff);
  signOff_->showSheet("measuring");
}

void MainWindow::fitAll() {
  workspace_->fitAll();
}

void MainWindow::removeSelected() {
  const Id id = document_.selection().selected();
  if (!id) return;
  document_.change(tr("Remove %1").arg(QString::fromStdString(nameOf(document_.job(), id))),
                   removeThing(document_.job(), id));
}

void MainWindow::lookFrom(SceneView::Standpoint standpoint) {
  workspace_->scene().standAt(standpoint);
}

void MainWindow::showHelp() {
  auto* help = new HelpWindow(this);
  help->setAttribute(Qt::WA_DeleteOnClose);
  help->show();
}

void MainWindow::showAbout() {
  QMessageBox::about(
      this, tr("About Baywright"),
      tr("<b>Baywright</b> plans indoor golf bays in real rooms.<br>Apache License 2.0.<br><br>A verdict "
         "<i>clear</i> is a planning aid, not a guarantee. Swinging, falling frames, ladders, overhead "
         "mounting, "
         "electricity, bright lenses and blocked exits can hurt people: follow the local code and the "
         "makers' "
         "instructions, and leave licensed work to licensed trades."));
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!files_->maySwitch()) {
    event->ignore();
    return;
  }
  files_->settings().geometry = saveGeometry();
  files_->settings().write();
  event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  for (const QUrl& url : event->mimeData()->urls()) {
    if (url.isLocalFile()) files_->openFile(url.toLocalFile());
  }
  event->acceptProposedAction();
}

void MainWindow::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) tintIcons();
  QMainWindow::changeEvent(event);
}

}  // namespace baywright
