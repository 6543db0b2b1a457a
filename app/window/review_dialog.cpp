// SPDX-License-Identifier: Apache-2.0
#include "window/review_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTextBrowser>
#include <QTreeWidget>

#include "job/room_geometry.h"
#include "panels/field.h"
#include "panels/floor_preview.h"
#include "panels/property_form.h"
#include "units/number_text.h"
#include "window/part_words.h"

namespace baywright {
namespace {

/// Over the whole floor, at a height that is still to be measured: a room needs a ceiling.
CeilingPart unknownCeiling() {
  CeilingPart part;
  part.name = ReviewDialog::tr("Ceiling").toStdString();
  part.height = notMeasured(part.height.value);
  return part;
}

/// The groups of parts that may be left out, in the order of the tree; walls stand before them.
enum Group { Walls, Ceiling, Openings, Fixtures, Scans };

template <class T>
std::vector<T> withoutUnchecked(const std::vector<T>& parts, const QTreeWidgetItem& group) {
  std::vector<T> kept;
  for (std::size_t i = 0; i < parts.size(); ++i)
    if (group.child(static_cast<int>(i))->checkState(0) == Qt::Checked) kept.push_back(parts[i]);
  return kept;
}

/// Each row remembers what it can be corrected as.
template <class T>
void nameRows(QTreeWidgetItem& group, const std::vector<T>& parts) {
  for (std::size_t i = 0; i < parts.size() && static_cast<int>(i) < group.childCount(); ++i)
    group.child(static_cast<int>(i))->setData(0, Qt::UserRole, parts[i].id.value);
}

void addSentences(QString& html, const QString& heading, const std::vector<std::string>& sentences) {
  if (sentences.empty()) return;
  html += QStringLiteral("<p><b>%1</b></p><ul>").arg(heading.toHtmlEscaped());
  for (const std::string& sentence : sentences)
    html += QStringLiteral("<li>%1</li>").arg(QString::fromStdString(sentence).toHtmlEscaped());
  html += QStringLiteral("</ul>");
}

}  // namespace

ReviewDialog::ReviewDialog(std::vector<RecognisedRoom> candidates, const UnitSystem& units,
                           const QString& fileName, QWidget* parent)
    : QDialog(parent),
      candidates_(std::move(candidates)),
      units_(units),
      corrections_(units),
      preview_(new FloorPreview(units)),
      tree_(new QTreeWidget),
      notes_(new QTextBrowser) {
  setObjectName(QStringLiteral("reviewDialog"));
  setWindowTitle(tr("What %1 shows").arg(fileName));
  auto* column = new QVBoxLayout(this);
  if (candidates_.size() > 1) column->addWidget(makeRoomChoice());
  auto* sides = new QSplitter;
  auto* words = new QSplitter(Qt::Vertical);
  sides->setChildrenCollapsible(false);
  words->setChildrenCollapsible(false);
  sides->addWidget(preview_);
  sides->addWidget(words);
  sides->setSizes({440, 620});
  words->addWidget(tree_);
  Document& document = corrections_.document();
  form_ = new PropertyForm(
      document, [](const Document& d) { return fieldsOf(d.job(), d.selection().selected()); },
      tr("Choose a wall, the ceiling, an opening or a fixture above to correct its figures."));
  form_->setObjectName(QStringLiteral("corrections"));
  words->addWidget(form_);
  words->addWidget(notes_);
  words->setSizes({260, 170, 180});
  column->addWidget(sides, 1);
  auto* caution =
      new QLabel(tr("What is ticked takes the place of the room in the job. Undo brings that back."));
  caution->setWordWrap(true);
  column->addWidget(caution);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  buttons->addButton(tr("&Take it"), QDialogButtonBox::AcceptRole)->setObjectName(QStringLiteral("take"));
  column->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(tree_, &QTreeWidget::itemChanged, this, [this] { preview_->showRoom(accepted().room); });
  connect(tree_, &QTreeWidget::currentItemChanged, this, [&document](QTreeWidgetItem* row) {
    document.selection().select(row ? Id{row->data(0, Qt::UserRole).toUInt()} : Id{});
  });
  connect(&document.selection(), &Selection::selectedChanged, form_, &PropertyForm::rebuild);
  connect(&document, &Document::jobChanged, this, &ReviewDialog::followCorrections);
  tree_->setObjectName(QStringLiteral("parts"));
  tree_->setHeaderLabels({tr("Recognised"), tr("Size")});
  tree_->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
  notes_->setObjectName(QStringLiteral("notes"));
  showCandidate(0);
  resize(1120, 700);
}

ReviewDialog::~ReviewDialog() {
  // Both refer to the document of corrections until their end.
  tree_->disconnect(this);
  delete form_;
}

void ReviewDialog::keyPressEvent(QKeyEvent* event) {
  // Enter takes the figure, not the room.
  const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (isEnter && focusWidget() && form_->isAncestorOf(focusWidget())) return event->accept();
  QDialog::keyPressEvent(event);
}

QWidget* ReviewDialog::makeRoomChoice() {
  auto* choice = new QWidget;
  auto* form = new QFormLayout(choice);
  form->setContentsMargins(0, 0, 0, 0);
  auto* rooms = new QComboBox;
  rooms->setObjectName(QStringLiteral("room"));
  for (std::size_t i = 0; i < candidates_.size(); ++i) {
    const Room& room = candidates_[i].room;
    const QString name = QString::fromStdString(room.name);
    rooms->addItem(tr("Number %1 by size: %2%3 m²")
                       .arg(i + 1)
                       .arg(name.isEmpty() ? name : name + QStringLiteral(", "),
                            QString::fromStdString(formatNumber(floorArea(room), 1, units_))));
  }
  form->addRow(tr("&Room"), rooms);
  connect(rooms, &QComboBox::currentIndexChanged, this, &ReviewDialog::showCandidate);
  return choice;
}

void ReviewDialog::showCandidate(int index) {
  chosen_ = static_cast<std::size_t>(index);
  isStarting_ = true;
  corrections_.start(candidates_[chosen_]);
  isStarting_ = false;
  fillTree();
  fillNotes();
  preview_->showRoom(accepted().room);
}

template <class T, class Words>
void ReviewDialog::addGroup(const QString& heading, const std::vector<T>& parts, Words words) {
  auto* group = new QTreeWidgetItem(tree_, {heading.arg(parts.size())});
  for (const T& part : parts) {
    auto* row = new QTreeWidgetItem(group, {QString::fromStdString(part.name), words(part)});
    row->setCheckState(0, Qt::Checked);
    row->setToolTip(1, row->text(1));
  }
  group->setExpanded(true);
  group->setHidden(parts.empty());
}

void ReviewDialog::followCorrections() {
  if (isStarting_) return;
  RecognisedRoom& shown = candidates_[chosen_];
  shown.room = corrections_.applied(std::move(shown.room));
  std::vector<std::vector<Qt::CheckState>> ticks;
  for (int group = 0; group < tree_->topLevelItemCount(); ++group) {
    ticks.emplace_back();
    for (int row = 0; row < tree_->topLevelItem(group)->childCount(); ++row)
      ticks.back().push_back(tree_->topLevelItem(group)->child(row)->checkState(0));
  }
  fillTree();
  const QSignalBlocker quiet(tree_);
  const Id selected = corrections_.document().selection().selected();
  for (int group = 0; group < tree_->topLevelItemCount(); ++group) {
    for (int row = 0; row < tree_->topLevelItem(group)->childCount(); ++row) {
      QTreeWidgetItem* item = tree_->topLevelItem(group)->child(row);
      if (group != Walls)
        item->setCheckState(0, ticks[static_cast<std::size_t>(group)][static_cast<std::size_t>(row)]);
      if (selected && item->data(0, Qt::UserRole).toUInt() == selected.value) tree_->setCurrentItem(item);
    }
  }
  preview_->showRoom(accepted().room);
}

void ReviewDialog::fillTree() {
  const QSignalBlocker quiet(tree_);
  tree_->clear();
  const RecognisedRoom& shown = candidates_[chosen_];
  const Room& corrected = corrections_.room();
  const std::vector<WallLine> lines = wallLines(shown.room);
  auto* walls = new QTreeWidgetItem(tree_, {tr("Walls: %1").arg(lines.size())});
  for (const WallLine& line : lines) new QTreeWidgetItem(walls, {wallName(line), wallWords(line, units_)});
  walls->setExpanded(true);
  nameRows(*walls, corrected.walls);
  addGroup(tr("Ceiling: %1"), shown.room.ceiling,
           [this, &shown](const CeilingPart& part) { return ceilingWords(part, shown.room, units_); });
  addGroup(tr("Doors and windows: %1"), shown.room.openings,
           [this, &lines](const Opening& opening) { return openingWords(opening, lines, units_); });
  addGroup(tr("Fixtures: %1"), shown.room.fixtures,
           [this](const Fixture& fixture) { return fixtureWords(fixture, units_); });
  addGroup(tr("Scan: %1"), shown.scans, [](const RoomScan& scan) { return scanWords(scan); });
  nameRows(*tree_->topLevelItem(Ceiling), corrected.ceiling);
  nameRows(*tree_->topLevelItem(Openings), corrected.openings);
  nameRows(*tree_->topLevelItem(Fixtures), corrected.fixtures);
}

void ReviewDialog::fillNotes() {
  const RecognisedRoom& shown = candidates_[chosen_];
  QString html;
  addSentences(html, tr("Readings that do not fit"), shown.suspicious);
  addSentences(html, tr("Left out"), shown.skipped);
  addSentences(html, tr("Notes"), shown.notes);
  notes_->setHtml(html);
  notes_->setVisible(!html.isEmpty());
}

RecognisedRoom ReviewDialog::accepted() const {
  RecognisedRoom taken = candidates_[chosen_];
  const auto group = [this](Group which) -> const QTreeWidgetItem& { return *tree_->topLevelItem(which); };
  taken.room.ceiling = withoutUnchecked(taken.room.ceiling, group(Ceiling));
  if (taken.room.ceiling.empty()) taken.room.ceiling.push_back(unknownCeiling());
  taken.room.openings = withoutUnchecked(taken.room.openings, group(Openings));
  taken.room.fixtures = withoutUnchecked(taken.room.fixtures, group(Fixtures));
  taken.scans = withoutUnchecked(taken.scans, group(Scans));
  return taken;
}

}  // namespace baywright
