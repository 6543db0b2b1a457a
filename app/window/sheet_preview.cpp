// SPDX-License-Identifier: Apache-2.0
#include "window/sheet_preview.h"

#include <QKeyEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>

namespace baywright {
namespace {

constexpr int kMarginPx = 16;

}  // namespace

SheetPreview::SheetPreview(Document& document, PlanImages& images, QWidget* parent)
    : QWidget(parent), document_(document), images_(images) {
  setFocusPolicy(Qt::StrongFocus);
  setMinimumSize(240, 240);
  setAccessibleName(tr("Preview of the sheet"));
}

void SheetPreview::setPages(std::vector<SheetPage> pages) {
  pages_ = std::move(pages);
  problem_.clear();
  page_ = std::clamp(page_, 0, std::max(0, pageCount() - 1));
  Q_EMIT pageChanged(page_);
  update();
}

void SheetPreview::setProblem(const QString& sentence) {
  pages_.clear();
  problem_ = sentence;
  update();
}

void SheetPreview::setPage(int page) {
  page = std::clamp(page, 0, std::max(0, pageCount() - 1));
  if (page == page_) return;
  page_ = page;
  Q_EMIT pageChanged(page_);
  update();
}

void SheetPreview::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), palette().mid());
  if (pages_.empty()) {
    painter.setPen(palette().color(QPalette::WindowText));
    painter.drawText(rect().adjusted(40, 40, -40, -40), Qt::AlignCenter | Qt::TextWordWrap, problem_);
    return;
  }
  const SheetPage& page = pages_[static_cast<std::size_t>(page_)];
  const double dots =
      std::min((width() - 2 * kMarginPx) / page.widthMm, (height() - 2 * kMarginPx) / page.heightMm);
  const QRectF paper((width() - dots * page.widthMm) / 2, (height() - dots * page.heightMm) / 2,
                     dots * page.widthMm, dots * page.heightMm);
  painter.fillRect(paper.translated(3, 3), palette().shadow());
  painter.fillRect(paper, Qt::white);
  painter.setClipRect(paper);
  paintSheetPage(painter, page, document_.job(), images_, {dots, dots, paper.topLeft()});
}

void SheetPreview::wheelEvent(QWheelEvent* event) {
  setPage(page_ + (event->angleDelta().y() < 0 ? 1 : -1));
}

void SheetPreview::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_PageDown:
    case Qt::Key_Right:
      setPage(page_ + 1);
      break;
    case Qt::Key_PageUp:
    case Qt::Key_Left:
      setPage(page_ - 1);
      break;
    default:
      QWidget::keyPressEvent(event);
  }
}

}  // namespace baywright
