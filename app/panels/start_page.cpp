// SPDX-License-Identifier: Apache-2.0
#include "panels/start_page.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "panels/room_form.h"

namespace baywright {
namespace {

/// One way in: a heading, a sentence and room for what leads on.
QVBoxLayout* addCard(QHBoxLayout* row, const QString& heading, const QString& sentence) {
  auto* card = new QFrame;
  card->setFrameShape(QFrame::StyledPanel);
  card->setAutoFillBackground(true);
  card->setBackgroundRole(QPalette::Window);
  auto* column = new QVBoxLayout(card);
  column->setContentsMargins(20, 18, 20, 18);
  column->setSpacing(10);
  auto* title = new QLabel(heading);
  QFont large = title->font();
  large.setPointSizeF(large.pointSizeF() * 1.35);
  large.setBold(true);
  title->setFont(large);
  auto* text = new QLabel(sentence);
  text->setWordWrap(true);
  column->addWidget(title);
  column->addWidget(text);
  row->addWidget(card, 1);
  return column;
}

}  // namespace

StartPage::StartPage(Document& document, QWidget* parent) : QWidget(parent) {
  auto* content = new QWidget;
  auto* scroll = new QScrollArea;
  scroll->setWidget(content);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setBackgroundRole(QPalette::Base);
  auto* around = new QVBoxLayout(this);
  around->setContentsMargins(0, 0, 0, 0);
  around->addWidget(scroll);
  auto* page = new QVBoxLayout(content);
  page->addStretch(1);
  auto* question = new QLabel(tr("How do you want to bring in the room?"));
  QFont large = question->font();
  large.setPointSizeF(large.pointSizeF() * 1.6);
  question->setFont(large);
  question->setAlignment(Qt::AlignCenter);
  page->addWidget(question);
  page->addSpacing(16);
  auto* row = new QHBoxLayout;
  row->setContentsMargins(24, 0, 24, 0);
  row->setSpacing(16);
  page->addLayout(row);
  page->addStretch(2);

  QVBoxLayout* typed =
      addCard(row, tr("Type its sizes"), tr("A rectangle or an L, with a flat, sloped or stepped ceiling."));
  auto* form = new RoomForm(document);
  typed->addWidget(form);
  typed->addStretch(1);

  const auto addButton = [this](QVBoxLayout* column, const QString& text, auto signal, const char* name) {
    auto* button = new QPushButton(text);
    button->setObjectName(QString::fromLatin1(name));
    button->setMinimumHeight(button->fontMetrics().height() * 5 / 2);
    connect(button, &QPushButton::clicked, this, signal);
    column->addWidget(button);
  };
  QVBoxLayout* scanned = addCard(row, tr("Bring a file, or draw"),
                                 tr("Drop it here, or open it: a scanned plan (PNG, JPEG, TIFF, PDF) to "
                                    "trace, a drawing (DXF), a 3D scan "
                                    "or a measuring list (CSV). Or draw the floor on squared paper."));
  addButton(scanned, tr("Open a &plan…"), &StartPage::planAsked, "openPlan");
  addButton(scanned, tr("&Import a drawing or scan…"), &StartPage::surveyAsked, "openSurvey");
  addButton(scanned, tr("&Draw the floor"), &StartPage::traceAsked, "drawFloor");
  scanned->addStretch(1);

  QVBoxLayout* example = addCard(
      row, tr("Look at the example"),
      tr("An invented garage with a sloped ceiling, shelving and two golfers of opposite hands. Something is "
         "blocked in it: drag the bay until it is clear."));
  addButton(example, tr("Open the &example"), &StartPage::exampleAsked, "openExample");
  example->addStretch(1);
  setFocusProxy(form);
}

void StartPage::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), palette().base());
}

}  // namespace baywright
