// SPDX-License-Identifier: Apache-2.0
#include "canvas/typed_entry.h"

#include <QKeyEvent>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "canvas/overlay.h"
#include "canvas/tool_words.h"
#include "painting/theme.h"
#include "units/angle_text.h"
#include "units/length_text.h"

namespace baywright {
namespace {

constexpr int kPadding = 6;         // pixels
constexpr int kWidthInDigits = 18;  // of the field, wide enough for a sentence below it to wrap well

}  // namespace

TypedEntry::TypedEntry(QWidget* parent)
    : QFrame(parent), name_(new QLabel(this)), edit_(new QLineEdit(this)), below_(new QLabel(this)) {
  setFrameShape(QFrame::StyledPanel);
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::Window);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kPadding, kPadding, kPadding, kPadding);
  layout->setSpacing(2);
  layout->addWidget(name_);
  layout->addWidget(edit_);
  layout->addWidget(below_);
  name_->setBuddy(edit_);
  below_->setWordWrap(true);
  edit_->installEventFilter(this);
  connect(edit_, &QLineEdit::textEdited, this, &TypedEntry::echo);
  hide();
}

void TypedEntry::ask(const TypedField& field, const UnitSystem& units, QPointF middle, const QString& typed) {
  kind_ = field.kind;
  units_ = units;
  middle_ = middle;
  name_->setText(field.what);
  edit_->setAccessibleName(field.what);
  const QString present = std::isfinite(field.value) ? fieldText(field, units) : QString();
  edit_->setText(typed.isEmpty() ? present : typed);
  edit_->setFixedWidth(fontMetrics().horizontalAdvance(QLatin1Char('0')) * kWidthInDigits);
  if (typed.isEmpty()) edit_->selectAll();
  echo();
  show();
  raise();
  edit_->setFocus(Qt::OtherFocusReason);
}

void TypedEntry::dismiss() {
  if (isHidden()) return;
  const bool hadFocus = edit_->hasFocus();
  // Hiding takes the focus away, which would read as giving up.
  edit_->removeEventFilter(this);
  hide();
  edit_->installEventFilter(this);
  if (hadFocus) parentWidget()->setFocus(Qt::OtherFocusReason);
}

Result<double> TypedEntry::parsed() const {
  const std::string text = edit_->text().toStdString();
  switch (kind_) {
    case FieldKind::Angle:
      return parseAngle(text, units_);
    case FieldKind::Size:
      return parseSize(text, units_);
    case FieldKind::Length:
      break;
  }
  return parseLength(text, units_);
}

void TypedEntry::echo() {
  const auto value = parsed();
  QPalette colours = palette();
  colours.setColor(QPalette::WindowText, palette().color(QPalette::PlaceholderText));
  below_->setPalette(colours);
  below_->setText(value ? QStringLiteral("= ") + fieldText({{}, kind_, *value, {}, {}}, units_) : QString());
  below_->setVisible(value.has_value());
  place();
}

void TypedEntry::complain(const Problem& problem) {
  QPalette colours = palette();
  colours.setColor(QPalette::WindowText, Theme::forPalette(palette()).verdictText(Verdict::Blocked));
  below_->setPalette(colours);
  below_->setText(sentenceOf(problem));
  below_->setVisible(true);
  edit_->selectAll();
  place();
}

void TypedEntry::place() {
  // A wrapped label's height depends on the width that the field gives it.
  below_->setFixedWidth(edit_->width());
  below_->setFixedHeight(std::max(0, below_->heightForWidth(edit_->width())));
  layout()->activate();
  adjustSize();
  const QSize room = parentWidget()->size() - size();
  const QPointF corner = middle_ - QPointF(width(), height()) / 2;
  move(std::clamp(qRound(corner.x()), 0, std::max(0, room.width())),
       std::clamp(qRound(corner.y()), 0, std::max(0, room.height())));
}

void TypedEntry::take(Then then) {
  const auto value = parsed();
  if (value)
    Q_EMIT taken(*value, then);
  else
    complain(value.error());
}

bool TypedEntry::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusOut && isVisible()) {
    if (static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason) Q_EMIT givenUp();
  } else if (event->type() == QEvent::ShortcutOverride) {
    event->accept();  // every key is the field's, whatever it means elsewhere
    return true;
  } else if (event->type() == QEvent::KeyPress) {
    switch (static_cast<QKeyEvent*>(event)->key()) {
      case Qt::Key_Return:
      case Qt::Key_Enter:
        take(Then::Done);
        return true;
      case Qt::Key_Tab:
        take(Then::Next);
        return true;
      case Qt::Key_Backtab:
        take(Then::Previous);
        return true;
      case Qt::Key_Escape:
        Q_EMIT givenUp();
        return true;
      default:
        break;
    }
  }
  return QFrame::eventFilter(watched, event);
}

}  // namespace baywright
