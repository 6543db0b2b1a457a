// SPDX-License-Identifier: Apache-2.0
#include "panels/message_strip.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <algorithm>

namespace baywright {
namespace {

constexpr int kShownMs = 15000;

}  // namespace

MessageStrip::MessageStrip(QWidget* under) : QFrame(under), label_(new QLabel) {
  setFrameShape(QFrame::StyledPanel);
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::ToolTipBase);
  setForegroundRole(QPalette::ToolTipText);
  label_->setForegroundRole(QPalette::ToolTipText);
  label_->setWordWrap(true);
  label_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* close = new QToolButton;
  close->setText(QStringLiteral("✕"));
  close->setAutoRaise(true);
  close->setAccessibleName(tr("Close the message"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(10, 4, 4, 4);
  row->addWidget(label_, 1);
  row->addWidget(close);
  timer_.setSingleShot(true);
  connect(close, &QToolButton::clicked, this, &QWidget::hide);
  connect(&timer_, &QTimer::timeout, this, &QWidget::hide);
  under->installEventFilter(this);
  hide();
}

bool MessageStrip::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize && isVisible()) place();
  return QFrame::eventFilter(watched, event);
}

void MessageStrip::place() {
  constexpr double kWidest = 0.7;  // of the widget below: its edges stay free
  const int frame = width() - label_->width();
  const int wanted =
      label_->fontMetrics().horizontalAdvance(label_->text()) + frame + label_->fontMetrics().height();
  const int across = std::min(wanted, static_cast<int>(kWidest * parentWidget()->width()));
  resize(across, heightForWidth(across));
  move((parentWidget()->width() - across) / 2, 0);
}

QString MessageStrip::text() const {
  return isHidden() ? QString() : label_->text();
}

void MessageStrip::say(const QString& sentence) {
  label_->setText(sentence);
  setVisible(!sentence.isEmpty());
  if (isVisible()) {
    layout()->activate();
    place();
    raise();
  }
  timer_.start(kShownMs);
}

}  // namespace baywright
