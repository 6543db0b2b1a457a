// SPDX-License-Identifier: Apache-2.0
#include "panels/message_strip.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace baywright {
namespace {

constexpr int kShownMs = 15000;

}  // namespace

MessageStrip::MessageStrip(QWidget* parent) : QFrame(parent), label_(new QLabel) {
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
  hide();
}

QString MessageStrip::text() const {
  return isHidden() ? QString() : label_->text();
}

void MessageStrip::say(const QString& sentence) {
  label_->setText(sentence);
  setVisible(!sentence.isEmpty());
  timer_.start(kShownMs);
}

}  // namespace baywright
