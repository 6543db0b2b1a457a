// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>

#include "drawing/scan_glance.h"

namespace baywright {

/// A scan as it would stand with the chosen axis up, beside a person in the chosen unit: to be looked at
/// before anything is recognised in it.
class ScanPreview : public QWidget {
  Q_OBJECT

 public:
  using QWidget::QWidget;

  void showGlance(const ScanGlance& glance);
  const ScanGlance& shown() const { return glance_; }
  QSize sizeHint() const override { return {560, 300}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  ScanGlance glance_;
};

}  // namespace baywright
