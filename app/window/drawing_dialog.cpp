// SPDX-License-Identifier: Apache-2.0
#include "window/drawing_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTreeWidget>
#include <algorithm>

#include "window/drawing_preview.h"
#include "window/problem_label.h"

namespace baywright {

DrawingDialog::DrawingDialog(const DxfDrawing& drawing, const QString& fileName, QWidget* parent)
    : QDialog(parent),
      drawing_(drawing),
      views_(viewLayers(drawing)),
      preview_(new DrawingPreview(drawing)),
      layers_(new QTreeWidget),
      units_(new QComboBox),
      problem_(problemLabel()) {
  setObjectName(QStringLiteral("drawingDialog"));
  setWindowTitle(tr("A room from %1").arg(fileName));
  auto* column = new QVBoxLayout(this);
  auto* question = new QLabel(tr("Which &layers hold the walls?"));
  question->setBuddy(layers_);
  column->addWidget(question);
  auto* both = new QSplitter;
  both->setChildrenCollapsible(false);
  both->addWidget(preview_);
  both->addWidget(layers_);
  both->setSizes({400, 560});
  column->addWidget(both, 1);
  auto* form = new QFormLayout;
  form->addRow(tr("One &unit of the drawing is"), units_);
  column->addLayout(form);
  auto* extent = new QLabel(QString::fromStdString(extentInUnits(drawing)));
  extent->setObjectName(QStringLiteral("extent"));
  extent->setWordWrap(true);
  column->addWidget(extent);
  column->addWidget(problem_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  take_ = buttons->addButton(tr("Look for the &room"), QDialogButtonBox::AcceptRole);
  take_->setObjectName(QStringLiteral("next"));
  column->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  fillLayers();
  fillUnits();
  connect(layers_, &QTreeWidget::itemChanged, this, &DrawingDialog::follow);
  connect(layers_, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* row) {
    const int index = layers_->indexOfTopLevelItem(row);
    preview_->pointAt(index < 0 ? -1 : views_[static_cast<std::size_t>(index)].layer);
  });
  connect(units_, &QComboBox::currentIndexChanged, this, &DrawingDialog::follow);
  follow();
  resize(980, 560);
}

void DrawingDialog::fillLayers() {
  layers_->setObjectName(QStringLiteral("layers"));
  layers_->setRootIsDecorated(false);
  layers_->setAlternatingRowColors(true);
  layers_->setHeaderLabels({tr("Layer"), tr("Lines"), tr("Why")});
  for (const LayerView& view : views_) {
    auto* row = new QTreeWidgetItem(layers_);
    row->setText(0, QString::fromStdString(view.name));
    row->setText(1, QString::number(view.curves));
    row->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
    row->setText(2, QString::fromStdString(view.reason));
    row->setToolTip(2, row->text(2));
    row->setCheckState(0, view.suggested ? Qt::Checked : Qt::Unchecked);
  }
  layers_->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
  layers_->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
}

void DrawingDialog::fillUnits() {
  units_->setObjectName(QStringLiteral("unit"));
  units_->setPlaceholderText(tr("Choose the unit: the drawing does not state it"));
  std::vector<DrawingUnit> offered(kUsualDrawingUnits.begin(), kUsualDrawingUnits.end());
  const bool states = drawing_.unit != DrawingUnit::NotStated;
  if (states && std::find(offered.begin(), offered.end(), drawing_.unit) == offered.end())
    offered.push_back(drawing_.unit);
  for (const DrawingUnit unit : offered) {
    const std::string_view name = nameOf(unit);
    QString text = QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
    if (unit == drawing_.unit) text = tr("%1, as the drawing states").arg(text);
    units_->addItem(text, static_cast<int>(unit));
  }
  units_->setCurrentIndex(states ? units_->findData(static_cast<int>(drawing_.unit)) : -1);
}

std::vector<int> DrawingDialog::chosenLayers() const {
  std::vector<int> chosen;
  for (std::size_t i = 0; i < views_.size(); ++i)
    if (layers_->topLevelItem(static_cast<int>(i))->checkState(0) == Qt::Checked)
      chosen.push_back(views_[i].layer);
  return chosen;
}

void DrawingDialog::follow() {
  const std::vector<int> chosen = chosenLayers();
  take_->setEnabled(!chosen.empty() && units_->currentIndex() >= 0);
  preview_->showLayers(chosen);
}

DxfChoices DrawingDialog::choices() const {
  DxfChoices choices;
  choices.unit = static_cast<DrawingUnit>(units_->currentData().toInt());
  bool isAsSuggested = true;
  for (std::size_t i = 0; i < views_.size(); ++i) {
    const bool chosen = layers_->topLevelItem(static_cast<int>(i))->checkState(0) == Qt::Checked;
    if (chosen) choices.layers.push_back(views_[i].name);
    isAsSuggested = isAsSuggested && chosen == views_[i].suggested;
  }
  // Then the reader says why these layers, and may try all of them where they close no room.
  if (isAsSuggested) choices.layers.clear();
  return choices;
}

void DrawingDialog::showProblem(const Problem& problem) {
  tellProblem(*problem_, problem);
}

}  // namespace baywright
