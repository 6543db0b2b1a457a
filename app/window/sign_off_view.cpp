// SPDX-License-Identifier: Apache-2.0
#include "window/sign_off_view.h"

#include <QComboBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

#include "drawing/scale.h"
#include "panels/field.h"
#include "panels/property_form.h"
#include "paper/pdf_writer.h"
#include "window/print_pages.h"
#include "window/sheet_preview.h"

namespace baywright {
namespace {

QString words(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

}  // namespace

SignOffView::SignOffView(Document& document, PlanImages& images, QWidget* parent)
    : QWidget(parent),
      document_(document),
      images_(images),
      sheet_(new QComboBox),
      paper_(new QComboBox),
      orientation_(new QComboBox),
      scale_(new QComboBox),
      pageLabel_(new QLabel),
      preview_(new SheetPreview(document, images)),
      pdf_(new QPushButton(tr("Save as &PDF…"))),
      print_(new QPushButton(tr("P&rint…"))) {
  for (const SheetKind& kind : sheetKinds()) sheet_->addItem(words(kind.title), words(kind.name));
  for (const PaperStyle& style : paperStyles())
    paper_->addItem(words(style.name), static_cast<int>(style.size));
  orientation_->addItems({tr("Landscape"), tr("Portrait")});
  const bool isMetric = scaleFamilyOf(document.job().units) == ScaleFamily::Metric;
  paper_->setCurrentIndex(paper_->findData(static_cast<int>(isMetric ? PaperSize::A3 : PaperSize::AnsiB)));
  fillScales();

  auto* choices = new QFormLayout;
  choices->addRow(tr("&Sheet"), sheet_);
  choices->addRow(tr("P&aper"), paper_);
  choices->addRow(tr("&Format"), orientation_);
  choices->addRow(tr("S&cale"), scale_);
  auto* title = new PropertyForm(document, [](const Document&) { return titleFields(); }, {});
  auto* hint =
      new QLabel(tr("Print at actual size, never fitted to the page: the calibration bars on the sheet tell "
                    "whether it came out true."));
  hint->setWordWrap(true);
  auto* side = new QWidget;
  auto* column = new QVBoxLayout(side);
  column->addLayout(choices);
  column->addWidget(title, 1);
  column->addWidget(hint);
  column->addWidget(pdf_);
  column->addWidget(print_);
  side->setMinimumWidth(300);
  pdf_->setObjectName(QStringLiteral("savePdf"));

  auto* turn = new QHBoxLayout;
  const auto addTurn = [&](const QString& text, const QString& name, int step) {
    auto* button = new QToolButton;
    button->setText(text);
    button->setAccessibleName(name);
    connect(button, &QToolButton::clicked, this,
            [this, step] { preview_->setPage(preview_->page() + step); });
    turn->addWidget(button);
  };
  turn->addStretch(1);
  addTurn(QStringLiteral("◀"), tr("Page before"), -1);
  turn->addWidget(pageLabel_);
  addTurn(QStringLiteral("▶"), tr("Next page"), 1);
  turn->addStretch(1);
  auto* main = new QWidget;
  auto* mainColumn = new QVBoxLayout(main);
  mainColumn->setContentsMargins(0, 0, 0, 4);
  mainColumn->addWidget(preview_, 1);
  mainColumn->addLayout(turn);

  auto* splitter = new QSplitter;
  splitter->addWidget(side);
  splitter->addWidget(main);
  splitter->setStretchFactor(1, 1);
  splitter->setChildrenCollapsible(false);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(splitter);

  for (QComboBox* box : {sheet_, paper_, orientation_, scale_}) {
    connect(box, &QComboBox::currentIndexChanged, this, &SignOffView::refresh);
  }
  connect(&document_, &Document::assessed, this, [this] {
    if (isVisible()) refresh();
  });
  connect(&document_, &Document::jobChanged, this, [this](const JobChange&) { fillScales(); });
  connect(preview_, &SheetPreview::pageChanged, this, [this](int page) {
    pageLabel_->setText(preview_->pageCount() == 0 ? QString()
                                                   : tr("%1 of %2").arg(page + 1).arg(preview_->pageCount()));
  });
  connect(pdf_, &QPushButton::clicked, this, &SignOffView::exportPdf);
  connect(print_, &QPushButton::clicked, this, &SignOffView::print);
}

void SignOffView::fillScales() {
  const ScaleFamily family = scaleFamilyOf(document_.job().units);
  const QVariant key = static_cast<int>(family);
  if (scale_->property("family") == key) return;
  const QSignalBlocker quiet(scale_);
  scale_->setProperty("family", key);
  scale_->clear();
  scale_->addItem(tr("Largest that fits"), 0.0);
  for (const double denominator : scaleLadder(family)) {
    if (denominator >= 5) scale_->addItem(QString::fromStdString(scaleText(denominator)), denominator);
  }
}

SheetRequest SignOffView::request() const {
  SheetRequest request;
  request.paper = static_cast<PaperSize>(paper_->currentData().toInt());
  request.orientation = orientation_->currentIndex() == 0 ? Orientation::Landscape : Orientation::Portrait;
  if (const double scale = scale_->currentData().toDouble(); scale > 0) request.scale = scale;
  return request;
}

void SignOffView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void SignOffView::refresh() {
  document_.finishAssessment();
  Result<std::vector<SheetPage>> pages = makeSheet(sheet_->currentData().toString().toStdString(),
                                                   document_.job(), document_.assessment(), request());
  pdf_->setEnabled(pages.has_value());
  print_->setEnabled(pages.has_value());
  if (!pages) {
    pages_.clear();
    preview_->setProblem(QString::fromStdString(pages.error().sentence()));
    return;
  }
  pages_ = std::move(*pages);
  preview_->setPages(pages_);
}

Result<void> SignOffView::writePdfTo(const QString& path) {
  refresh();
  return writePdf(path, pages_, document_.job(), images_,
                  document_.displayName() + QStringLiteral(": ") + sheet_->currentText());
}

void SignOffView::showSheet(std::string_view name) {
  sheet_->setCurrentIndex(std::max(0, sheet_->findData(words(name))));
}

void SignOffView::exportPdf() {
  const QString name = document_.displayName() + QStringLiteral("-") + sheet_->currentData().toString() +
                       QStringLiteral(".pdf");
  const QString path = QFileDialog::getSaveFileName(this, tr("Save the sheet"), name, tr("PDF (*.pdf)"));
  if (path.isEmpty()) return;
  if (const Result<void> written = writePdfTo(path); !written) {
    Q_EMIT document_.problemRaised(QString::fromStdString(written.error().sentence()));
  }
}

void SignOffView::print() {
  refresh();
  if (pages_.empty()) return;
  if (const Result<void> printed = printPages(this, pages_, document_.job(), images_); !printed) {
    Q_EMIT document_.problemRaised(QString::fromStdString(printed.error().sentence()));
  }
}

}  // namespace baywright
