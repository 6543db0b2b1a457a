// SPDX-License-Identifier: Apache-2.0
#include "panels/measurements_panel.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QStyledItemDelegate>
#include <QTableView>

#include "job/find.h"
#include "panels/readings_worth.h"
#include "survey/ceiling_fit_job.h"
#include "units/length_text.h"

namespace baywright {
namespace {

/// Chooses the instrument of a reading from a list.
class InstrumentDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex&) const override {
    auto* box = new QComboBox(parent);
    box->addItems(instrumentWords());
    return box;
  }
  void setEditorData(QWidget* editor, const QModelIndex& index) const override {
    static_cast<QComboBox*>(editor)->setCurrentIndex(index.data(Qt::EditRole).toInt());
  }
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override {
    model->setData(index, static_cast<QComboBox*>(editor)->currentIndex(), Qt::EditRole);
  }
};

/// Beside the kinds of MeasurementKind: a ceiling height that no corner names.
constexpr int kCeilingAtPoint = 100;

QLineEdit* placeField(const QString& axis, const QString& help) {
  auto* field = new QLineEdit;
  field->setPlaceholderText(axis);
  field->setAccessibleName(axis);
  field->setToolTip(help);
  field->setMaximumWidth(field->fontMetrics().averageCharWidth() * 12);
  return field;
}

}  // namespace

MeasurementsPanel::MeasurementsPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(document),
      table_(new QTableView),
      worth_(new ReadingsWorth(document, model_)) {
  makeTable();
  auto* both = new QHBoxLayout;
  both->setSpacing(0);
  both->addWidget(table_, 3);
  QWidget* bar = makeBar();
  both->addWidget(worth_, 2);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(bar);
  column->addLayout(both, 1);
  connect(&model_, &MeasurementsModel::refreshed, this, &MeasurementsPanel::refresh);
  connect(worth_, &ReadingsWorth::measuringListAsked, this, &MeasurementsPanel::measuringListAsked);
  refresh();
}

void MeasurementsPanel::makeTable() {
  table_->setObjectName(QStringLiteral("measurements"));
  table_->setAccessibleName(tr("Readings"));
  table_->setModel(&model_);
  table_->setItemDelegateForColumn(MeasurementsModel::By, new InstrumentDelegate(table_));
  table_->setFrameShape(QFrame::NoFrame);
  table_->setSelectionBehavior(QAbstractItemView::SelectItems);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::DoubleClicked |
                          QAbstractItemView::EditKeyPressed | QAbstractItemView::SelectedClicked);
  table_->setTabKeyNavigation(false);  // Tab leaves the table, for those who have no mouse
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
  table_->horizontalHeader()->setStretchLastSection(true);
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  table_->horizontalHeader()->setHighlightSections(false);
  const int letter = fontMetrics().averageCharWidth();
  table_->setColumnWidth(MeasurementsModel::What, 38 * letter);
  table_->setColumnWidth(MeasurementsModel::Read, 14 * letter);
  table_->setColumnWidth(MeasurementsModel::By, 11 * letter);
  table_->setColumnWidth(MeasurementsModel::OffBy, 12 * letter);
  // Enter takes the figure; Tab and Escape leave the cursor where they put it.
  connect(table_->itemDelegate(), &QAbstractItemDelegate::closeEditor, this,
          [this](QWidget*, QAbstractItemDelegate::EndEditHint hint) {
            if (hint != QAbstractItemDelegate::SubmitModelCache) return;
            QMetaObject::invokeMethod(this, &MeasurementsPanel::goToNextOpen, Qt::QueuedConnection);
          });
  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this](const QModelIndex& index) {
            remove_->setEnabled(index.isValid());
            selectCurrent();
          });
  connect(&document_.selection(), &Selection::selectedChanged, this, [this] {
    const QModelIndex index = model_.indexOf(document_.selection().selected());
    if (index.isValid() && index.row() != table_->currentIndex().row()) table_->setCurrentIndex(index);
  });
  auto* erase = new QShortcut(QKeySequence::Delete, table_, nullptr, nullptr, Qt::WidgetShortcut);
  connect(erase, &QShortcut::activated, this, &MeasurementsPanel::removeCurrent);
}

QWidget* MeasurementsPanel::makeBar() {
  walls_ = new QPushButton(tr("Add &wall lengths"));
  walls_->setObjectName(QStringLiteral("addWalls"));
  kind_ = new QComboBox;
  kind_->setObjectName(QStringLiteral("readingKind"));
  kind_->setAccessibleName(tr("Kind of reading"));
  kind_->addItem(tr("Diagonal"), static_cast<int>(MeasurementKind::Diagonal));
  kind_->addItem(tr("Angle at corner"), static_cast<int>(MeasurementKind::Angle));
  kind_->addItem(tr("Offset from wall"), static_cast<int>(MeasurementKind::Offset));
  kind_->addItem(tr("Ceiling at corner"), static_cast<int>(MeasurementKind::CeilingHeight));
  kind_->addItem(tr("Ceiling at point"), kCeilingAtPoint);
  first_ = new QComboBox;
  first_->setObjectName(QStringLiteral("firstCorner"));
  first_->setAccessibleName(tr("First corner"));
  to_ = new QLabel(tr("to"));
  second_ = new QComboBox;
  second_->setObjectName(QStringLiteral("secondCorner"));
  second_->setAccessibleName(tr("Second corner"));
  x_ = placeField(tr("x"), tr("To the right on the plan, as the status line shows it under the pointer."));
  x_->setObjectName(QStringLiteral("pointX"));
  y_ = placeField(tr("y"), tr("Upward on the plan, as the status line shows it under the pointer."));
  y_->setObjectName(QStringLiteral("pointY"));
  add_ = new QPushButton(tr("A&dd"));
  add_->setObjectName(QStringLiteral("addReading"));
  instrument_ = new QComboBox;
  instrument_->setObjectName(QStringLiteral("instrument"));
  instrument_->setAccessibleName(tr("Instrument of new readings"));
  instrument_->addItems(instrumentWords());
  remove_ = new QPushButton(tr("&Remove"));
  remove_->setObjectName(QStringLiteral("removeReading"));
  remove_->setEnabled(false);
  adjust_ = new QPushButton(tr("Ad&just the room"));
  adjust_->setObjectName(QStringLiteral("adjustRoom"));
  adjust_->setToolTip(tr("Moves the walls, and lays the ceiling, so that they fit the readings best."));
  auto* bar = new QWidget;
  auto* row = new QHBoxLayout(bar);
  row->setContentsMargins(6, 2, 6, 2);
  auto* by = new QLabel(tr("Readings &by"));
  by->setBuddy(instrument_);
  auto* orOne = new QLabel(tr("&or"));
  orOne->setBuddy(kind_);
  for (QWidget* widget : std::initializer_list<QWidget*>{by, instrument_, walls_, orOne, kind_, first_, to_,
                                                         second_, x_, y_, add_})
    row->addWidget(widget);
  row->addStretch(1);
  row->addWidget(remove_);
  row->addWidget(adjust_);
  connect(walls_, &QPushButton::clicked, this, &MeasurementsPanel::addWalls);
  connect(add_, &QPushButton::clicked, this, &MeasurementsPanel::addOne);
  connect(remove_, &QPushButton::clicked, this, &MeasurementsPanel::removeCurrent);
  connect(adjust_, &QPushButton::clicked, this, &MeasurementsPanel::adjustRoom);
  connect(kind_, &QComboBox::currentIndexChanged, this, &MeasurementsPanel::showFieldsInUse);
  return bar;
}

void MeasurementsPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void MeasurementsPanel::refresh() {
  refreshCorners();
  // Nobody looks: a wall that is dragged in another stage need not wait for this.
  if (isVisible()) refreshWorth();
}

void MeasurementsPanel::refreshCorners() {
  const std::vector<Wall>& walls = document_.job().room.walls;
  QStringList letters;
  for (const Wall& wall : walls) letters << QString::fromStdString(wall.name);
  for (QComboBox* box : {first_, second_}) {
    QStringList shown;
    for (int i = 0; i < box->count(); ++i) shown << box->itemText(i);
    if (shown == letters) continue;
    box->clear();
    box->addItems(letters);
    if (box == second_ && letters.size() > 2) box->setCurrentIndex(2);
  }
  walls_->setEnabled(!walls.empty());
  showFieldsInUse();
}

void MeasurementsPanel::showFieldsInUse() {
  const auto kind = static_cast<MeasurementKind>(kind_->currentData().toInt());
  const bool hasPoint = kind_->currentData().toInt() == kCeilingAtPoint;
  first_->setVisible(!hasPoint);
  x_->setVisible(hasPoint);
  y_->setVisible(hasPoint);
  const bool hasSecond = kind == MeasurementKind::Diagonal || kind == MeasurementKind::Offset;
  to_->setVisible(hasSecond);
  to_->setText(kind == MeasurementKind::Offset ? tr("to corner") : tr("to"));
  second_->setVisible(hasSecond);
  add_->setEnabled(hasPoint || first_->count() > 0);
}

void MeasurementsPanel::refreshWorth() {
  const auto& fit = model_.adjustment();
  adjust_->setEnabled(!document_.job().room.walls.empty() &&
                      (fit ? fit->has_value() : model_.ceiling().has_value()));
  worth_->refresh(static_cast<Instrument>(instrument_->currentIndex()));
}

void MeasurementsPanel::addWalls() {
  model_.askForWalls(static_cast<Instrument>(instrument_->currentIndex()));
  goToNextOpen();
}

bool MeasurementsPanel::placeReading(Measurement& reading) {
  reading.kind = MeasurementKind::CeilingHeight;
  for (const auto& [field, value] :
       {std::pair{x_, &reading.position.x()}, std::pair{y_, &reading.position.y()}}) {
    const Result<double> typed = parseLength(field->text().toStdString(), document_.job().units);
    if (!typed) {
      field->setFocus();
      Q_EMIT document_.problemRaised(
          tr("The place of the ceiling height: %1").arg(QString::fromStdString(typed.error().sentence())));
      return false;
    }
    *value = *typed;
  }
  return true;
}

void MeasurementsPanel::addOne() {
  if (kind_->currentData().toInt() == kCeilingAtPoint) {
    Measurement reading;
    reading.how = static_cast<Instrument>(instrument_->currentIndex());
    if (placeReading(reading)) editAdded(reading);
    return;
  }
  const std::vector<Wall>& walls = document_.job().room.walls;
  const auto count = walls.size();
  const auto first = static_cast<std::size_t>(std::max(0, first_->currentIndex()));
  const auto second = static_cast<std::size_t>(std::max(0, second_->currentIndex()));
  if (first >= count || second >= count) return;
  Measurement reading;
  reading.kind = static_cast<MeasurementKind>(kind_->currentData().toInt());
  reading.how = static_cast<Instrument>(instrument_->currentIndex());
  switch (reading.kind) {
    case MeasurementKind::Angle:
      reading.at = walls[first].id;
      reading.from = walls[(first + count - 1) % count].id;
      reading.to = walls[(first + 1) % count].id;
      break;
    case MeasurementKind::CeilingHeight:
      reading.at = walls[first].id;
      reading.position = walls[first].start;
      break;
    default:
      if (first == second) {
        Q_EMIT document_.problemRaised(
            tr("A reading runs between two corners. Choose another second corner."));
        return;
      }
      reading.from = walls[first].id;
      reading.to = walls[second].id;
  }
  editAdded(reading);
}

void MeasurementsPanel::editAdded(const Measurement& reading) {
  const QModelIndex added = model_.ask({reading});
  table_->setCurrentIndex(added);
  table_->setFocus();
  table_->edit(added);
}

void MeasurementsPanel::goToNextOpen() {
  for (int row = 0; row < model_.rowCount(); ++row) {
    const QModelIndex index = model_.index(row, MeasurementsModel::Read);
    if (model_.idOf(index)) continue;
    table_->setCurrentIndex(index);
    table_->setFocus();
    table_->edit(index);
    return;
  }
  table_->setFocus();
  selectCurrent();  // it had no figure when the cursor came to it
}

void MeasurementsPanel::selectCurrent() {
  Selection& selection = document_.selection();
  const Id reading = model_.idOf(table_->currentIndex());
  const bool isOther = findById(document_.job().measurements, selection.selected());
  if (reading || isOther) selection.select(reading);
}

void MeasurementsPanel::removeCurrent() {
  model_.remove(table_->currentIndex());
}

void MeasurementsPanel::adjustRoom() {
  const auto& fit = model_.adjustment();
  if (fit && !*fit) return;
  Result<Job> made = document_.job();
  if (fit) made = takeAdjustment(std::move(*made), **fit);
  if (made && model_.ceiling()) made = takeCeiling(std::move(*made), *model_.ceiling());
  document_.change(tr("Adjust the room"), std::move(made));
}

}  // namespace baywright
