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
  void planAsked();    ///< a picture to trace
  void surveyAsked();  ///< a drawing, a 3D scan or a measuring list
  void exampleAsked();
  void traceAsked();  ///< draw the floor by hand

 protected:
  void paintEvent(QPaintEvent*) override;
};

}  // namespace baywright
