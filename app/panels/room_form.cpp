// SPDX-License-Identifier: Apache-2.0
#include "panels/room_form.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "painting/theme.h"
#include "panels/floor_preview.h"
#include "units/length_text.h"

namespace baywright {
namespace {

enum Shape { kRectangle, kLShape };
enum Ceiling { kFlat, kSlopedAcross, kSlopedAlong, kStepped };

}  // namespace

RoomForm::RoomForm(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      units_(document.job().units),
      sketch_(new FloorPreview(units_)),
      form_(new QFormLayout(this)),
      shape_(new QComboBox),
      ceiling_(new QComboBox),
      instrument_(new QComboBox),
      complaint_(new QLabel) {
  shape_->addItems({tr("Rectangle"), tr("L-shape")});
  ceiling_->addItems(
      {tr("Flat"), tr("Sloped across the width"), tr("Sloped along the length"), tr("Stepped")});
  instrument_->addItems({tr("tape"), tr("laser"), tr("drawing"), tr("scan"), tr("guess")});
  constexpr int kLinesHigh = 13;
  sketch_->setFixedHeight(kLinesHigh * fontMetrics().lineSpacing());
  form_->addRow(sketch_);
  form_->addRow(tr("&Shape"), shape_);
  length_ = addLength(tr("&Length"), 6.0);
  width_ = addLength(tr("&Width"), 4.5);
  cutLength_ = addLength(tr("Missing corner, length"), 2.0);
  cutWidth_ = addLength(tr("Missing corner, width"), 2.0);
  form_->addRow(tr("&Ceiling"), ceiling_);
  height_ = addLength(tr("Ceiling &height"), 2.7);
  secondHeight_ = addLength(tr("Height at the far side"), 2.2);
  strip_ = addLength(tr("Lower part reaches"), 1.5);
  form_->addRow(tr("&Measured by"), instrument_);
  complaint_->setWordWrap(true);
  QPalette red = complaint_->palette();
  red.setColor(QPalette::WindowText, Theme::forPalette(palette()).verdictText(Verdict::Blocked));
  complaint_->setPalette(red);
  form_->addRow(complaint_);
  auto* button = new QPushButton(tr("Make the &room"));
  button->setObjectName(QStringLiteral("makeRoom"));
  form_->addRow(button);
  connect(button, &QPushButton::clicked, this, &RoomForm::make);
  connect(shape_, &QComboBox::currentIndexChanged, this, &RoomForm::showFieldsInUse);
  connect(ceiling_, &QComboBox::currentIndexChanged, this, &RoomForm::showFieldsInUse);
  connect(&document_, &Document::jobChanged, this, &RoomForm::showUnits);
  setFocusProxy(length_);
  showFieldsInUse();
}

QLineEdit* RoomForm::addLength(const QString& label, double metres) {
  auto* line = new QLineEdit(QString::fromStdString(formatLength(metres, document_.job().units)));
  form_->addRow(label, line);
  connect(line, &QLineEdit::returnPressed, this, &RoomForm::make);
  connect(line, &QLineEdit::textChanged, this, &RoomForm::sketch);
  return line;
}

void RoomForm::showFieldsInUse() {
  const auto show = [this](QLineEdit* line, bool visible) {
    line->setVisible(visible);
    form_->labelForField(line)->setVisible(visible);
  };
  const bool isL = shape_->currentIndex() == kLShape;
  show(cutLength_, isL);
  show(cutWidth_, isL);
  const int ceiling = ceiling_->currentIndex();
  show(secondHeight_, ceiling != kFlat);
  show(strip_, ceiling == kStepped);
  // Walls have letters in the sketch: going round from the length that was typed.
  const QString farWall = isL ? tr("E") : tr("C"), startWall = isL ? tr("F") : tr("D");
  const auto label = [this](QLineEdit* line, const QString& text) {
    qobject_cast<QLabel*>(form_->labelForField(line))->setText(text);
  };
  label(height_, ceiling == kSlopedAlong    ? tr("Ceiling &height at wall %1").arg(startWall)
                 : ceiling == kSlopedAcross ? tr("Ceiling &height at wall A")
                                            : tr("Ceiling &height"));
  label(secondHeight_, ceiling == kStepped       ? tr("Height of the lower part")
                       : ceiling == kSlopedAlong ? tr("Height at wall B")
                                                 : tr("Height at wall %1").arg(farWall));
  label(strip_, tr("Lower part, from wall %1").arg(startWall));
  sketch();
}

void RoomForm::sketch() {
  // A figure that is half typed changes nothing yet.
  for (const QLineEdit* line : findChildren<QLineEdit*>()) {
    if (!line->isHidden() && !parseSize(line->text().toStdString(), document_.job().units)) return;
  }
  const Result<Job> room = startRoom(document_.job(), floorTyped(), ceilingTyped());
  if (room) sketch_->showRoom(room->room);
}

void RoomForm::showUnits() {
  const UnitSystem& units = document_.job().units;
  if (units == units_) return;
  for (QLineEdit* line : findChildren<QLineEdit*>()) {
    const Result<double> value = parseSize(line->text().toStdString(), units_);
    if (value) line->setText(QString::fromStdString(formatLength(*value, units)));
  }
  units_ = units;
  sketch_->showUnits(units_);
}

void RoomForm::complain(QLineEdit* line, const QString& sentence) {
  refused_ = true;
  complaint_->setText(sentence);
  if (!line) return;
  line->setFocus();
  line->selectAll();
}

Dimension RoomForm::read(QLineEdit* line) {
  const Result<double> value = parseSize(line->text().toStdString(), document_.job().units);
  if (!value && !refused_) complain(line, QString::fromStdString(value.error().sentence()));
  return {value.value_or(1), static_cast<Instrument>(instrument_->currentIndex()), true};
}

FloorStart RoomForm::floorTyped() {
  if (shape_->currentIndex() == kRectangle) return RectangleFloor{read(length_), read(width_)};
  return LShapeFloor{read(length_), read(width_), read(cutLength_), read(cutWidth_)};
}

CeilingStart RoomForm::ceilingTyped() {
  switch (ceiling_->currentIndex()) {
    case kSlopedAcross:
      return SlopedCeiling{read(height_), read(secondHeight_), SlopedCeiling::Direction::AlongWidth};
    case kSlopedAlong:
      return SlopedCeiling{read(height_), read(secondHeight_), SlopedCeiling::Direction::AlongLength};
    case kStepped:
      return SteppedCeiling{read(height_), read(secondHeight_), read(strip_)};
    default:
      return FlatCeiling{read(height_)};
  }
}

void RoomForm::make() {
  refused_ = false;
  complaint_->clear();
  const FloorStart floor = floorTyped();
  const CeilingStart ceiling = ceilingTyped();
  if (refused_) return;
  Result<Job> room = startRoom(document_.job(), floor, ceiling);
  if (!room) {
    complain(nullptr, QString::fromStdString(room.error().sentence()));
    return;
  }
  document_.change(tr("Make the room"), std::move(room));
  Q_EMIT roomMade();
}

}  // namespace baywright
