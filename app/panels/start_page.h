// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>

#include "editing/document.h"

namespace baywright {

/// What an empty job shows in place of its plan: three large ways in.
class StartPage : public QWidget {
  Q_OBJECT

 public:
  explicit StartPage(Document& document, QWidget* parent = nullptr);

 Q_SIGNALS:
  void planAsked();  ///< a scanned plan, a drawing or a 3D scan
  void exampleAsked();
  void traceAsked();  ///< draw the floor by hand

 protected:
  void paintEvent(QPaintEvent*) override;
};

}  // namespace baywright
