// SPDX-License-Identifier: Apache-2.0
#include "window/compare_view.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "clearance/assess.h"
#include "drawing/views.h"
#include "job/edit.h"
#include "painting/view_image.h"

namespace baywright {
namespace {

constexpr int kWorstShown = 3;
constexpr QSize kPictureSize(420, 320);

QString words(const std::string& text) {
  return QString::fromStdString(text);
}

QLabel* paragraph(const QString& text) {
  auto* label = new QLabel(text);
  label->setWordWrap(true);
  return label;
}

}  // namespace

CompareView::CompareView(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), cards_(new QHBoxLayout) {
  auto* content = new QWidget;
  content->setLayout(cards_);
  auto* scroll = new QScrollArea;
  scroll->setWidget(content);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(scroll);
  connect(&document_, &Document::jobChanged, this, [this](const JobChange&) {
    if (isVisible()) refresh();
  });
}

void CompareView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void CompareView::refresh() {
  while (QLayoutItem* item = cards_->takeAt(0)) {
    if (QWidget* widget = item->widget()) widget->deleteLater();
    delete item;
  }
  for (const Option& option : document_.job().options) cards_->addWidget(card(option));
  auto* another = new QPushButton(tr("Another option:\na copy of the one shown"));
  connect(another, &QPushButton::clicked, this, [this] {
    document_.change(tr("Add an option"), duplicateOption(document_.job(), document_.job().option().id, {}));
  });
  cards_->addWidget(another);
  cards_->addStretch(1);
}

QWidget* CompareView::card(const Option& option) {
  Job job = document_.job();
  job.activeOption = option.id;
  const Assessment assessment = assess(job);
  const Theme theme = Theme::forPalette(palette());
  const bool isShown = option.id == document_.job().option().id;

  auto* frame = new QFrame;
  frame->setFrameShape(QFrame::StyledPanel);
  frame->setFixedWidth(kPictureSize.width() + 32);
  auto* column = new QVBoxLayout(frame);
  auto* title = new QLabel(words(option.name) + (isShown ? tr("  (shown)") : QString()));
  QFont large = title->font();
  large.setPointSizeF(large.pointSizeF() * 1.3);
  large.setBold(true);
  title->setFont(large);
  column->addWidget(title);
  auto* picture = new QLabel;
  ViewOptions view;
  view.dimensions = false;
  view.labels = false;
  QImage image = viewImage(viewLinework(ViewKind::Plan, job, assessment, view),
                           kPictureSize * devicePixelRatioF(), theme);
  image.setDevicePixelRatio(devicePixelRatioF());
  picture->setPixmap(QPixmap::fromImage(image));
  column->addWidget(picture);

  for (const Verdict verdict : {Verdict::Blocked, Verdict::Tight, Verdict::Unknown, Verdict::Clear}) {
    auto* line = new QLabel(
        tr("%1  %2 %3").arg(verdictSymbol(verdict)).arg(assessment.count(verdict)).arg(verdictWord(verdict)));
    QPalette colours = line->palette();
    colours.setColor(QPalette::WindowText, theme.verdictText(verdict));
    line->setPalette(colours);
    column->addWidget(line);
  }
  int shown = 0;
  for (const Finding& finding : assessment.findings) {
    if (finding.verdict == Verdict::Clear || shown++ == kWorstShown) break;
    column->addWidget(paragraph(verdictSymbol(finding.verdict) + QLatin1Char(' ') + words(finding.sentence)));
  }
  if (shown == 0)
    column->addWidget(paragraph(tr("Everything is clear. That is a planning aid, not a guarantee.")));
  column->addStretch(1);
  auto* show = new QPushButton(isShown ? tr("This one is shown") : tr("Show this one"));
  show->setEnabled(!isShown);
  connect(show, &QPushButton::clicked, this, [this, id = option.id, name = option.name] {
    document_.change(tr("Show %1").arg(words(name)), activateOption(document_.job(), id));
  });
  column->addWidget(show);
  return frame;
}

}  // namespace baywright
