// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QDialog>

#include "job/scan.h"

class QLabel;
class QSpinBox;

namespace baywright {

/// Asks which page of a PDF is the plan, and shows the page.
class PageDialog : public QDialog {
  Q_OBJECT

 public:
  PageDialog(BlobPtr file, int pages, QWidget* parent = nullptr);

  /// 0 is the first.
  int page() const;

 private:
  void preview();

  BlobPtr file_;
  QSpinBox* number_;
  QLabel* picture_;
};

}  // namespace baywright
