// SPDX-License-Identifier: Apache-2.0
#include "window/wall_box.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>

#include "job/room_geometry.h"
#include "job/thing_lookup.h"
#include "units/length_text.h"

namespace baywright {

WallBox::WallBox(Document& document, ToolBox& toolBox, QWidget* parent)
    : QWidget(parent),
      document_(document),
      view_(new WallView(document, toolBox)),
      walls_(new QComboBox),
      large_(new QToolButton) {
  view_->setObjectName(QStringLiteral("wall"));
  walls_->setObjectName(QStringLiteral("wallChoice"));
  walls_->setAccessibleName(tr("Wall that is shown"));
  walls_->setToolTip(tr("The wall that is shown from inside. Selecting a wall or a door shows it as well."));
  walls_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  large_->setObjectName(QStringLiteral("wallLarge"));
  large_->setCheckable(true);
  large_->setText(tr("Large"));
  large_->setToolTip(tr("Shows the wall in the plan's place, to draw on it."));
  const auto turner = [this](Qt::ArrowType arrow, const QString& words, int way) {
    auto* button = new QToolButton;
    button->setArrowType(arrow);
    button->setAutoRaise(true);
    button->setToolTip(words);
    button->setAccessibleName(words);
    connect(button, &QToolButton::clicked, view_, [this, way] { view_->turn(way); });
    return button;
  };
  auto* top = new QHBoxLayout;
  top->setContentsMargins(2, 1, 2, 1);
  top->setSpacing(2);
  top->addWidget(turner(Qt::LeftArrow, tr("The wall to the left"), -1));
  top->addWidget(walls_);
  top->addWidget(turner(Qt::RightArrow, tr("The wall to the right"), 1));
  top->addStretch(1);
  top->addWidget(large_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addLayout(top);
  layout->addWidget(view_, 1);

  connect(walls_, &QComboBox::activated, this, [this](int index) {
    view_->showWall(Id{walls_->itemData(index).toUInt()});
  });
  connect(view_, &WallView::wallChanged, this, &WallBox::showChoice);
  connect(large_, &QToolButton::toggled, this, &WallBox::largeWanted);
  connect(&document_, &Document::jobChanged, this, &WallBox::fillWalls);
  fillWalls();
}

bool WallBox::isLarge() const {
  return large_->isChecked();
}

void WallBox::setLarge(bool large) {
  large_->setChecked(large);
}

void WallBox::fillWalls() {
  const Job& job = document_.job();
  const auto lines = wallLines(job.room);
  const QSignalBlocker quiet(walls_);
  while (walls_->count() > static_cast<int>(lines.size())) walls_->removeItem(walls_->count() - 1);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const int row = static_cast<int>(i);
    const QString text = tr("%1, %2").arg(QString::fromStdString(nameOf(job, lines[i].wall)),
                                          QString::fromStdString(formatLength(lines[i].length, job.units)));
    if (row == walls_->count()) walls_->addItem(text);
    if (walls_->itemText(row) != text) walls_->setItemText(row, text);
    walls_->setItemData(row, QVariant::fromValue(lines[i].wall.value));
  }
  setEnabled(!lines.empty());
  showChoice();
}

void WallBox::showChoice() {
  walls_->setCurrentIndex(walls_->findData(QVariant::fromValue(view_->wall().value)));
}

}  // namespace baywright
