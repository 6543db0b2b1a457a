// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>
#include <vector>

#include "editing/document.h"
#include "paper/sheet_painter.h"

namespace baywright {

/// One page of a sheet as it will be printed: the same marks, the same painter. Wheel or keys turn pages; it
/// always shows the page whole.
class SheetPreview : public QWidget {
  Q_OBJECT

 public:
  SheetPreview(Document& document, PlanImages& images, QWidget* parent = nullptr);

  void setPages(std::vector<SheetPage> pages);
  /// Stands in place of the page when there is none.
  void setProblem(const QString& sentence);
  int page() const { return page_; }
  int pageCount() const { return static_cast<int>(pages_.size()); }

 public Q_SLOTS:
  void setPage(int page);

 Q_SIGNALS:
  void pageChanged(int page);

 protected:
  void paintEvent(QPaintEvent*) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  Document& document_;
  PlanImages& images_;
  std::vector<SheetPage> pages_;
  QString problem_;
  int page_ = 0;
};

}  // namespace baywright
