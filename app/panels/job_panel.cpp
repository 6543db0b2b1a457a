// SPDX-License-Identifier: Apache-2.0
#include "panels/job_panel.h"

#include <QMenu>
#include <QPushButton>
#include <QSplitter>
#include <QTreeView>
#include <QVBoxLayout>

#include "job/edit.h"
#include "job/room_geometry.h"
#include "panels/property_form.h"
#include "panels/thing_menu.h"
#include "panels/usual_sizes.h"

namespace baywright {
namespace {

QString named(const std::string& name) {
  return QString::fromStdString(name);
}

/// The wall that is selected, or the longest: a door has to be somewhere before it can be dragged.
Id wallForOpening(const Document& document, Id selected) {
  const auto lines = wallLines(document.job().room);
  Id best;
  double longest = 0;
  for (const WallLine& line : lines) {
    if (line.wall == selected) return line.wall;
    if (line.length > longest) {
      longest = line.length;
      best = line.wall;
    }
  }
  return best;
}

}  // namespace

JobPanel::JobPanel(Document& document, const Catalogue& catalogue, QWidget* parent)
    : QWidget(parent),
      document_(document),
      catalogue_(catalogue),
      model_(document),
      tree_(new QTreeView),
      addMenu_(new QMenu(this)) {
  tree_->setModel(&model_);
  tree_->setHeaderHidden(true);
  tree_->setContextMenuPolicy(Qt::CustomContextMenu);
  tree_->setEditTriggers(QAbstractItemView::EditKeyPressed);
  tree_->setAccessibleName(tr("What is in the job"));
  tree_->setObjectName(QStringLiteral("jobTree"));
  tree_->expandAll();
  tree_->setMouseTracking(true);
  auto* add = new QPushButton(tr("&Add"));
  add->setMenu(addMenu_);
  add->setObjectName(QStringLiteral("add"));
  connect(addMenu_, &QMenu::aboutToShow, this, &JobPanel::fillAddMenu);
  auto* form = new PropertyForm(
      document, [](const Document& d) { return fieldsOf(d.job(), d.selection().selected()); },
      tr("Select something on the plan or in the list: its numbers stand here and can be typed over."));
  form->setObjectName(QStringLiteral("properties"));

  auto* top = new QWidget;
  auto* column = new QVBoxLayout(top);
  column->setContentsMargins(6, 6, 6, 0);
  column->addWidget(add);
  column->addWidget(tree_, 1);
  auto* splitter = new QSplitter(Qt::Vertical);
  splitter->addWidget(top);
  splitter->addWidget(form);
  splitter->setStretchFactor(0, 1);
  splitter->setStretchFactor(1, 1);
  splitter->setChildrenCollapsible(false);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(splitter);

  connect(&model_, &QAbstractItemModel::modelReset, tree_, &QTreeView::expandAll);
  connect(tree_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this](const QModelIndex& current) {
            if (const Id id = model_.idOf(current)) document_.selection().select(id);
          });
  connect(tree_, &QTreeView::entered, this,
          [this](const QModelIndex& index) { document_.selection().hover(model_.idOf(index)); });
  connect(tree_, &QTreeView::doubleClicked, this, [this](const QModelIndex& index) {
    const std::optional<Thing> thing = findThing(document_.job(), model_.idOf(index));
    if (thing && thing->kind == ThingKind::Option) {
      document_.change(tr("Show %1").arg(named(thing->name)), activateOption(document_.job(), thing->id));
    }
  });
  connect(tree_, &QWidget::customContextMenuRequested, this, &JobPanel::contextMenu);
  const auto follow = [this] {
    const QModelIndex index = model_.indexOf(document_.selection().selected());
    if (index == tree_->currentIndex()) return;
    tree_->setCurrentIndex(index);
    if (!index.isValid()) tree_->clearSelection();
  };
  connect(&document_.selection(), &Selection::selectedChanged, this, follow);
  connect(&model_, &QAbstractItemModel::modelReset, this, follow);
  connect(&document_.selection(), &Selection::selectedChanged, form, &PropertyForm::rebuild);
}

void JobPanel::addThing(const QString& text, const Result<Job>& edited) {
  if (document_.change(text, edited)) document_.selection().select(newestId(document_.job()));
}

void JobPanel::fillAddMenu() {
  addMenu_->clear();
  qDeleteAll(addMenu_->findChildren<QMenu*>(QString(), Qt::FindDirectChildrenOnly));
  const Job& job = document_.job();
  const std::optional<PlanBox> floor = planBox(job.room);
  const Vec2 middle = floor ? floor->centre() : Vec2(0, 0);
  const Id wall = wallForOpening(document_, document_.selection().selected());
  const bool hasRoom = !job.room.walls.empty();

  QMenu* openings = addMenu_->addMenu(tr("Door, window, passage"));
  openings->setEnabled(hasRoom);
  addUsualOpenings(*openings, catalogue_, [this, wall](Opening opening) {
    opening.wall = wall;
    addThing(tr("Add %1").arg(named(opening.name)), addOpening(document_.job(), opening));
  });
  QMenu* fixtures = addMenu_->addMenu(tr("Shelf, beam, light, outlet …"));
  fixtures->setEnabled(hasRoom);
  addUsualFixtures(*fixtures, catalogue_, [this, middle](Fixture fixture) {
    fixture.shape = translated(fixture.shape, middle - middleOf(fixture.shape));
    addThing(tr("Add %1").arg(named(fixture.name)), addFixture(document_.job(), fixture));
  });
  addMenu_
      ->addAction(tr("Part of the ceiling"), this,
                  [this] {
                    CeilingPart part;
                    part.height = notMeasured(2.4);
                    addThing(tr("Add a ceiling part"), addCeilingPart(document_.job(), part));
                  })
      ->setEnabled(hasRoom);
  addMenu_->addSeparator();
  for (const Hand hand : {Hand::Right, Hand::Left}) {
    addMenu_->addAction(hand == Hand::Right ? tr("Golfer, right-handed") : tr("Golfer, left-handed"), this,
                        [this, hand] {
                          Golfer golfer;
                          golfer.hand = hand;
                          golfer.name = tr("Golfer %1").arg(document_.job().golfers.size() + 1).toStdString();
                          golfer.stature = notMeasured(1.80);
                          if (!catalogue_.clubs.empty()) golfer.clubs.push_back(catalogue_.clubs.front());
                          addThing(tr("Add a golfer"), addGolfer(document_.job(), golfer));
                        });
  }
  const std::optional<Thing> selected = findThing(job, document_.selection().selected());
  const Id golfer = selected && selected->kind == ThingKind::Golfer ? selected->id
                    : selected && selected->kind == ThingKind::Club ? selected->owner
                    : job.golfers.empty()                           ? Id{}
                                                                    : job.golfers.front().id;
  QMenu* clubs = addMenu_->addMenu(golfer ? tr("Club for %1").arg(named(nameOf(job, golfer))) : tr("Club"));
  clubs->setEnabled(static_cast<bool>(golfer));
  for (const Club& club : catalogue_.clubs) {
    clubs->addAction(named(club.name), this, [this, club, golfer] {
      addThing(tr("Add %1").arg(named(club.name)), addClub(document_.job(), golfer, club));
    });
  }
  addMenu_->addAction(tr("Someone who stands or sits"), this, [this, middle] {
    Bystander bystander;
    bystander.position = middle;
    addThing(tr("Add a bystander"), addBystander(document_.job(), bystander));
  });
  addMenu_->addSeparator();
  const auto kitMenu = [this](const QString& title, const auto& list, auto set) {
    QMenu* menu = addMenu_->addMenu(title);
    for (const auto& part : list) {
      menu->addAction(named(part.name), this, [this, part, set] {
        document_.change(tr("Choose %1").arg(named(part.name)), set(document_.job(), part));
      });
    }
  };
  kitMenu(tr("Frame"), catalogue_.frames,
          [](const Job& j, const Frame& part) { return baywright::setFrame(j, part); });
  kitMenu(tr("Screen"), catalogue_.screens,
          [](const Job& j, const Screen& part) { return baywright::setScreen(j, part); });
  kitMenu(tr("Mat"), catalogue_.mats,
          [](const Job& j, const Mat& part) { return baywright::setMat(j, part); });
  kitMenu(tr("Launch monitor"), catalogue_.monitors,
          [](const Job& j, const LaunchMonitor& part) { return baywright::setMonitor(j, part); });
  kitMenu(tr("Projector"), catalogue_.projectors,
          [](const Job& j, const Projector& part) { return baywright::setProjector(j, part); });
  addMenu_->addSeparator();
  addMenu_->addAction(tr("Option: a copy of the one shown"), this, [this] {
    addThing(tr("Add an option"), duplicateOption(document_.job(), document_.job().option().id, {}));
  });
  QAction* note = addMenu_->addAction(tr("Sizes here are made up: check them against the maker's sheet."));
  note->setEnabled(false);
}

void JobPanel::contextMenu(const QPoint& position) {
  const QModelIndex index = tree_->indexAt(position);
  const Id id = model_.idOf(index);
  if (!id) return;
  QMenu menu(this);
  fillThingMenu(menu, document_, id);
  menu.exec(tree_->viewport()->mapToGlobal(position));
}

}  // namespace baywright
