// SPDX-License-Identifier: Apache-2.0
#include "window/review_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTextBrowser>
#include <QTreeWidget>

#include "job/room_geometry.h"
#include "panels/floor_preview.h"
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
  words->addWidget(notes_);
  words->setStretchFactor(0, 3);
  words->setStretchFactor(1, 2);
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
  tree_->setObjectName(QStringLiteral("parts"));
  tree_->setHeaderLabels({tr("Recognised"), tr("Size")});
  tree_->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
  notes_->setObjectName(QStringLiteral("notes"));
  showCandidate(0);
  resize(1080, 640);
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

void ReviewDialog::fillTree() {
  const QSignalBlocker quiet(tree_);
  tree_->clear();
  const RecognisedRoom& shown = candidates_[chosen_];
  const std::vector<WallLine> lines = wallLines(shown.room);
  auto* walls = new QTreeWidgetItem(tree_, {tr("Walls: %1").arg(lines.size())});
  for (const WallLine& line : lines) new QTreeWidgetItem(walls, {wallName(line), wallWords(line, units_)});
  walls->setExpanded(true);
  addGroup(tr("Ceiling: %1"), shown.room.ceiling,
           [this, &shown](const CeilingPart& part) { return ceilingWords(part, shown.room, units_); });
  addGroup(tr("Doors and windows: %1"), shown.room.openings,
           [this, &lines](const Opening& opening) { return openingWords(opening, lines, units_); });
  addGroup(tr("Fixtures: %1"), shown.room.fixtures,
           [this](const Fixture& fixture) { return fixtureWords(fixture, units_); });
  addGroup(tr("Scan: %1"), shown.scans, [](const RoomScan& scan) { return scanWords(scan); });
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
