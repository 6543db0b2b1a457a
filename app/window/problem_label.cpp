// SPDX-License-Identifier: Apache-2.0
#include "window/problem_label.h"

#include <QLabel>

#include "base/problem.h"
#include "painting/theme.h"

namespace baywright {

QLabel* problemLabel() {
  auto* label = new QLabel;
  label->setObjectName(QStringLiteral("problem"));
  label->setWordWrap(true);
  label->hide();
  return label;
}

void tellProblem(QLabel& label, const Problem& problem) {
  QPalette palette = label.palette();
  palette.setColor(QPalette::WindowText, Theme::forPalette(palette).verdictText(Verdict::Blocked));
  label.setPalette(palette);
  label.setText(QString::fromStdString(problem.sentence()));
  label.show();
}

}  // namespace baywright
