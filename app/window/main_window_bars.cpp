// SPDX-License-Identifier: Apache-2.0
// The bars of the main window: menus, stages, tools, status. All of them follow from tables.
#include <QActionGroup>
#include <QComboBox>
#include <QDateTime>
#include <QFileInfo>
#include <QLabel>
#include <QMenuBar>
#include <QStatusBar>
#include <QToolBar>
#include <QToolButton>

#include "canvas/plan_view.h"
#include "job/edit.h"
#include "painting/theme.h"
#include "panels/usual_sizes.h"
#include "units/length_text.h"
#include "window/actions.h"
#include "window/main_window.h"
#include "window/resources.h"
#include "window/workspace.h"

namespace baywright {
namespace {

QString unitWords(LengthUnit unit) {
  const std::string_view name = unitName(unit);
  return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

QWidget* spacer() {
  auto* widget = new QWidget;
  widget->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  return widget;
}

}  // namespace

void MainWindow::makeMenus() {
  QMenu* file = menuBar()->addMenu(tr("&File"));
  QMenu* edit = menuBar()->addMenu(tr("&Edit"));
  QMenu* view = menuBar()->addMenu(tr("&View"));
  QMenu* help = menuBar()->addMenu(tr("&Help"));
  const auto menuOf = [&](MenuPlace place) {
    return place == MenuPlace::File   ? file
           : place == MenuPlace::Edit ? edit
           : place == MenuPlace::View ? view
                                      : help;
  };
  QAction* undo = document_.undoStack().createUndoAction(this, tr("&Undo"));
  undo->setShortcut(QKeySequence::Undo);
  undo->setObjectName(QStringLiteral("undo"));
  QAction* redo = document_.undoStack().createRedoAction(this, tr("&Redo"));
  redo->setShortcut(QKeySequence::Redo);
  redo->setObjectName(QStringLiteral("redo"));
  edit->addActions({undo, redo});

  for (const ActionRow& row : actionRows()) {
    QMenu* menu = menuOf(row.menu);
    if (row.startsGroup) menu->addSeparator();
    QAction* action = menu->addAction(actionText(row.text), this, [this, run = row.run] { run(*this); });
    action->setObjectName(QString::fromLatin1(row.name));
    action->setShortcut(row.shortcut);
    action->setStatusTip(actionText(row.help));
    action->setProperty("iconName", QString::fromLatin1(row.icon));
    if (row.name == std::string_view("open")) {
      recent_ = menu->addMenu(tr("Open &recent"));
      fillRecent();
    }
  }
  view->addSeparator();
  for (const ZoneRow& row : zoneRows()) {
    QAction* action = view->addAction(actionText(row.text));
    action->setObjectName(QString::fromLatin1(row.name));
    action->setCheckable(true);
    ViewOptions now = workspace_->options();
    action->setChecked(*row.at(now));
    connect(action, &QAction::toggled, this, [this, at = row.at](bool shown) {
      ViewOptions options = workspace_->options();
      *at(options) = shown;
      workspace_->setOptions(options);
    });
  }
}

void MainWindow::fillRecent() {
  recent_->clear();
  for (const QString& path : files_->settings().recentFiles) {
    QAction* action =
        recent_->addAction(QFileInfo(path).fileName(), this, [this, path] { files_->openFile(path); });
    action->setToolTip(path);
    action->setEnabled(QFileInfo::exists(path));
  }
  recent_->setEnabled(!recent_->isEmpty());
}

void MainWindow::makeStageBar() {
  QToolBar* bar = addToolBar(tr("Stages"));
  bar->setObjectName(QStringLiteral("stages"));
  bar->setMovable(false);
  stageGroup_ = new QActionGroup(this);
  for (const StageRow& row : stages()) {
    QAction* action = bar->addAction(stageText(row.name));
    action->setCheckable(true);
    action->setData(static_cast<int>(row.stage));
    action->setToolTip(stageText(row.help));
    action->setObjectName(QStringLiteral("stage") + QString::fromLatin1(row.name));
    stageGroup_->addAction(action);
    auto* button = qobject_cast<QToolButton*>(bar->widgetForAction(action));
    QFont font = button->font();
    font.setPointSizeF(font.pointSizeF() * 1.1);
    button->setFont(font);
    button->setMinimumHeight(button->fontMetrics().height() * 2);
    button->setMinimumWidth(button->fontMetrics().horizontalAdvance(action->text()) + 32);
  }
  connect(stageGroup_, &QActionGroup::triggered, this,
          [this](QAction* action) { showStage(static_cast<Stage>(action->data().toInt())); });
  bar->addWidget(spacer());
  auto* label = new QLabel(tr("Unit "));
  units_ = new QComboBox;
  for (const LengthUnit unit : kLengthUnits) units_->addItem(unitWords(unit), static_cast<int>(unit));
  label->setBuddy(units_);
  bar->addWidget(label);
  bar->addWidget(units_);
  bar->addSeparator();
  bar->addAction(findChild<QAction*>(QStringLiteral("undo")));
  bar->addAction(findChild<QAction*>(QStringLiteral("redo")));
  connect(units_, &QComboBox::activated, this, [this](int index) {
    UnitSystem units = document_.job().units;
    units.length = static_cast<LengthUnit>(units_->itemData(index).toInt());
    document_.change(tr("Show %1").arg(units_->itemText(index).toLower()), setUnits(document_.job(), units));
  });
}

void MainWindow::followUnits() {
  units_->setCurrentIndex(units_->findData(static_cast<int>(document_.job().units.length)));
}

void MainWindow::makeToolBar() {
  addToolBarBreak();
  tools_ = addToolBar(tr("Tools"));
  tools_->setObjectName(QStringLiteral("tools"));
  tools_->setMovable(false);
  tools_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  toolGroup_ = new QActionGroup(this);
  for (const ToolRow& row : tools()) {
    QAction* action = tools_->addAction(toolText(row.name));
    action->setIconText(toolText(row.label));
    action->setCheckable(true);
    action->setData(static_cast<int>(row.kind));
    action->setToolTip(
        tr("%1: %2 Key %3.").arg(toolText(row.name), toolText(row.help), QString::fromLatin1(row.shortcut)));
    action->setProperty("iconName", QString::fromLatin1(row.icon));
    action->setObjectName(QStringLiteral("tool%1").arg(static_cast<int>(row.kind)));
    toolGroup_->addAction(action);
  }
  for (const ToolKind kind : {ToolKind::Opening, ToolKind::FixtureBox, ToolKind::FixtureCylinder})
    addUsualSizes(kind);
  connect(toolGroup_, &QActionGroup::triggered, this,
          [this](QAction* action) { toolBox_.choose(static_cast<ToolKind>(action->data().toInt())); });
  connect(&toolBox_, &ToolBox::chosen, this, [this](ToolKind kind) {
    for (QAction* action : toolGroup_->actions())
      action->setChecked(action->data().toInt() == static_cast<int>(kind));
  });
}

void MainWindow::addUsualSizes(ToolKind kind) {
  auto* action = findChild<QAction*>(QStringLiteral("tool%1").arg(static_cast<int>(kind)));
  auto* button = qobject_cast<QToolButton*>(tools_->widgetForAction(action));
  if (!button) return;
  auto* menu = new QMenu(button);
  menu->setObjectName(QStringLiteral("usual%1").arg(static_cast<int>(kind)));
  menu->addSection(tr("Made-up sizes"));
  if (kind == ToolKind::Opening) {
    addUsualOpenings(*menu, catalogue_, [this](const Opening& usual) { toolBox_.placeOpening(usual); });
  } else {
    addUsualFixtures(
        *menu, catalogue_, [this](const Fixture& usual) { toolBox_.placeFixture(usual); },
        [kind](const Fixture& usual) { return toolFor(usual.shape) == kind; });
  }
  button->setMenu(menu);
  button->setPopupMode(QToolButton::MenuButtonPopup);
}

void MainWindow::showTools() {
  const std::vector<ToolKind>& shown = stages()[static_cast<std::size_t>(stage_)].tools;
  for (QAction* action : toolGroup_->actions()) {
    const auto kind = static_cast<ToolKind>(action->data().toInt());
    action->setVisible(std::find(shown.begin(), shown.end(), kind) != shown.end());
  }
  tools_->setVisible(!shown.empty());
}

void MainWindow::tintIcons() {
  for (QAction* action : findChildren<QAction*>()) {
    const QString name = action->property("iconName").toString();
    if (!name.isEmpty()) action->setIcon(icon(name, palette()));
  }
  if (QAction* undo = findChild<QAction*>(QStringLiteral("undo")))
    undo->setIcon(icon(QStringLiteral("undo"), palette()));
  if (QAction* redo = findChild<QAction*>(QStringLiteral("redo")))
    redo->setIcon(icon(QStringLiteral("redo"), palette()));
}

void MainWindow::makeStatusBar() {
  place_ = new QLabel;
  hint_ = new QLabel;
  scale_ = new QLabel;
  counts_ = new QLabel;
  saved_ = new QLabel;
  place_->setMinimumWidth(
      place_->fontMetrics().horizontalAdvance(QStringLiteral("x 00′ 00 00/00″  y 00′ 00 00/00″")));
  statusBar()->addWidget(place_);
  statusBar()->addWidget(hint_, 1);
  statusBar()->addPermanentWidget(scale_);
  statusBar()->addPermanentWidget(counts_);
  statusBar()->addPermanentWidget(saved_);
  PlanView& plan = workspace_->plan();
  connect(&plan, &View::pointerAt, this, [this](QPointF at) {
    const UnitSystem& units = document_.job().units;
    place_->setText(tr("x %1  y %2")
                        .arg(QString::fromStdString(formatLength(at.x(), units)),
                             QString::fromStdString(formatLength(at.y(), units))));
  });
  connect(&plan, &View::pointerLeft, place_, &QLabel::clear);
  connect(&plan, &View::scaleChanged, this,
          [this](double denominator) { scale_->setText(tr("about 1:%1").arg(qRound(denominator))); });
}

void MainWindow::updateCounts() {
  const Assessment& assessment = document_.assessment();
  QStringList parts;
  for (const Verdict verdict : {Verdict::Blocked, Verdict::Tight, Verdict::Unknown, Verdict::Clear}) {
    if (const int count = assessment.count(verdict); count > 0) {
      parts << tr("%1 %2 %3").arg(verdictSymbol(verdict)).arg(count).arg(verdictWord(verdict));
    }
  }
  counts_->setText(parts.join(QStringLiteral("   ")));
}

void MainWindow::updateTitle() {
  setWindowTitle(document_.displayName() + QStringLiteral("[*] – Baywright") +
                 (document_.isReadOnly() ? tr(" (read only)") : QString()));
  setWindowModified(document_.isModified());
  if (document_.isModified()) {
    saved_->setText(tr("not saved"));
  } else {
    const QFileInfo file(document_.path());
    saved_->setText(document_.path().isEmpty() || !file.exists()
                        ? QString()
                        : tr("saved %1").arg(file.lastModified().toString(QStringLiteral("hh:mm"))));
  }
}

}  // namespace baywright
