// SPDX-License-Identifier: Apache-2.0
#include "window/workspace.h"

#include <QLabel>
#include <QMenu>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "canvas/elevation_view.h"
#include "canvas/plan_view.h"
#include "canvas/screen_face_view.h"
#include "panels/findings_panel.h"
#include "panels/job_panel.h"
#include "panels/measurements_panel.h"
#include "panels/start_page.h"
#include "panels/thing_menu.h"
#include "window/wall_box.h"

namespace baywright {

Workspace::Workspace(Document& document, ToolBox& toolBox, const Catalogue& catalogue, QWidget* parent)
    : QWidget(parent),
      document_(document),
      panel_(new JobPanel(document, catalogue)),
      plan_(new PlanView(document, toolBox)),
      wall_(new WallBox(document, toolBox)),
      downRange_(new ElevationView(document, toolBox, Elevation::DownRange)),
      side_(new ElevationView(document, toolBox, Elevation::Side)),
      screen_(new ScreenFaceView(document, toolBox)),
      scene_(new SceneView(document, probeGl())),
      start_(new StartPage(document)),
      main_(new QStackedWidget),
      bottom_(new QStackedWidget),
      drawings_{plan_, &wall_->view(), downRange_, side_, screen_},
      standing_(new StandingZone(document, this)) {
  plan_->setObjectName(QStringLiteral("plan"));
  downRange_->setObjectName(QStringLiteral("downRange"));
  side_->setObjectName(QStringLiteral("side"));
  screen_->setObjectName(QStringLiteral("screenFace"));
  scene_->setObjectName(QStringLiteral("scene"));
  main_->addWidget(start_);
  main_->addWidget(plan_);
  main_->addWidget(screen_);

  right_ = new QSplitter(Qt::Vertical);
  sideBox_ = titled(tr("From the side"), side_);
  right_->addWidget(wall_);
  right_->addWidget(titled(tr("Looking down-range"), downRange_));
  right_->addWidget(titled(tr("3D"), scene_));
  right_->addWidget(sideBox_);
  auto* views = new QSplitter;
  views->addWidget(main_);
  views->addWidget(right_);
  views->setStretchFactor(0, 5);
  views->setStretchFactor(1, 3);
  bottom_->addWidget(new FindingsPanel(document));
  auto* readings = new MeasurementsPanel(document);
  bottom_->addWidget(readings);
  connect(readings, &MeasurementsPanel::measuringListAsked, this, &Workspace::measuringListAsked);
  auto* upDown = new QSplitter(Qt::Vertical);
  upDown->addWidget(views);
  upDown->addWidget(bottom_);
  upDown->setStretchFactor(0, 4);
  upDown->setStretchFactor(1, 1);
  auto* all = new QSplitter;
  all->addWidget(panel_);
  all->addWidget(upDown);
  all->setStretchFactor(0, 0);
  all->setStretchFactor(1, 1);
  all->setSizes({310, 1290});
  right_->setSizes({240, 240, 240, 240});
  views->setSizes({780, 500});
  upDown->setSizes({680, 190});
  for (QSplitter* splitter : {right_, views, upDown, all}) splitter->setChildrenCollapsible(false);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(all);

  connect(&document_, &Document::jobChanged, this, [this](const JobChange&) { chooseMain(); });
  for (View* view : drawings_) connect(view, &View::contextMenuWanted, this, &Workspace::showMenu);
  connect(standing_, &StandingZone::changed, this, &Workspace::showOptions);
  connect(wall_, &WallBox::largeWanted, this, &Workspace::showWallLarge);
  chooseMain();
}

QWidget* Workspace::titled(const QString& title, QWidget* view) {
  auto* box = new QWidget;
  auto* layout = new QVBoxLayout(box);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  auto* label = new QLabel(title);
  label->setContentsMargins(6, 2, 6, 2);
  layout->addWidget(label);
  layout->addWidget(view, 1);
  return box;
}

void Workspace::chooseMain() {
  const Job& job = document_.job();
  const bool isEmpty = job.room.walls.empty() && job.planScans.empty() && job.roomScans.empty();
  if (!isEmpty) drawsInEmptyJob_ = false;
  if (isEmpty) wall_->setLarge(false);  // there is none
  const bool surveys = work_ == Work::Survey;
  QWidget* wanted = work_ == Work::Picture ? static_cast<QWidget*>(screen_) : plan_;
  if (surveys && wall_->isLarge()) wanted = wall_;
  if (isEmpty && !drawsInEmptyJob_) wanted = start_;
  if (main_->currentWidget() != wanted) main_->setCurrentWidget(wanted);
  // Where there is no room yet there is nothing to show beside the ways to one.
  for (QWidget* beside : {static_cast<QWidget*>(right_), static_cast<QWidget*>(bottom_)})
    beside->setVisible(wanted != start_);
}

void Workspace::setWork(Work work) {
  work_ = work;
  const bool surveys = work == Work::Survey;
  if (!surveys) wall_->setLarge(false);
  wall_->setVisible(surveys);
  sideBox_->setVisible(!surveys);
  bottom_->setCurrentIndex(surveys ? 1 : 0);
  chooseMain();
  showOptions();
}

void Workspace::showWallLarge(bool large) {
  if (large) {
    main_->addWidget(wall_);
    right_->insertWidget(0, plan_);
  } else {
    main_->addWidget(plan_);
    right_->insertWidget(0, wall_);
  }
  plan_->show();
  wall_->show();
  chooseMain();
  (large ? static_cast<View&>(wall_->view()) : *plan_).setFocus();
}

void Workspace::showPlan() {
  drawsInEmptyJob_ = true;
  wall_->setLarge(false);
  chooseMain();
  plan_->setFocus();
}

void Workspace::setOptions(const ViewOptions& options) {
  options_ = options;
  showOptions();
  SceneOptions scene;
  scene.zones = options;
  scene_->setOptions(scene);
}

void Workspace::showOptions() {
  ViewOptions options = options_;
  options.standing = standing_->mark();
  options.corners |= work_ == Work::Survey;  // beside the readings
  for (View* view : drawings_) view->setOptions(options);
}

void Workspace::showMenu(Id thing, QPoint globalPosition) {
  QMenu menu(this);
  fillThingMenu(menu, document_, thing);
  menu.addSeparator();
  menu.addMenu(panel_->addMenu())->setText(tr("Add"));
  menu.addAction(tr("Fit all"), this, &Workspace::fitAll)->setObjectName(QStringLiteral("fit"));
  menu.exec(globalPosition);
}

void Workspace::fitAll() {
  for (View* view : drawings_) view->fit();
  scene_->fitToRoom();
}

}  // namespace baywright
