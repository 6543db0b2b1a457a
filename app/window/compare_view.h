// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>

#include "editing/document.h"

class QHBoxLayout;

namespace baywright {

/// The job's options side by side: each one's plan, how many findings of each verdict, and its three worst in
/// words.
class CompareView : public QWidget {
  Q_OBJECT

 public:
  explicit CompareView(Document& document, QWidget* parent = nullptr);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();
  QWidget* card(const Option& option);

  Document& document_;
  QHBoxLayout* cards_;
};

}  // namespace baywright
