// SPDX-License-Identifier: Apache-2.0
#include "window/page_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPixmap>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include "painting/plan_image.h"

namespace baywright {
namespace {

constexpr double kDotsPerMetre = 40 / 0.0254;  // enough to tell a plan from a cover
constexpr QSize kPicture{420, 420};

}  // namespace

PageDialog::PageDialog(BlobPtr file, int pages, QWidget* parent)
    : QDialog(parent), file_(std::move(file)), number_(new QSpinBox), picture_(new QLabel) {
  setObjectName(QStringLiteral("pageDialog"));
  setWindowTitle(tr("Which page?"));
  picture_->setObjectName(QStringLiteral("page"));
  picture_->setFixedSize(kPicture);
  picture_->setAlignment(Qt::AlignCenter);
  picture_->setWordWrap(true);
  picture_->setAutoFillBackground(true);
  picture_->setBackgroundRole(QPalette::Base);
  number_->setRange(1, pages);
  auto* form = new QFormLayout;
  form->addRow(tr("&Page of %1").arg(pages), number_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  buttons->addButton(tr("&Use this page"), QDialogButtonBox::AcceptRole)
      ->setObjectName(QStringLiteral("use"));
  auto* column = new QVBoxLayout(this);
  column->addWidget(picture_);
  column->addLayout(form);
  column->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(number_, &QSpinBox::valueChanged, this, &PageDialog::preview);
  number_->setFocus();
  preview();
}

int PageDialog::page() const {
  return number_->value() - 1;
}

void PageDialog::preview() {
  PlanScan scan;
  scan.file = file_;
  scan.page = page();
  scan.pdfDotsPerMetre = kDotsPerMetre;
  const Result<QImage> image = decodePlan(scan);
  if (!image) return picture_->setText(QString::fromStdString(image.error().sentence()));
  picture_->setPixmap(QPixmap::fromImage(
      image->scaled(kPicture * devicePixelRatioF(), Qt::KeepAspectRatio, Qt::SmoothTransformation)));
}

}  // namespace baywright
