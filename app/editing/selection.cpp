// SPDX-License-Identifier: Apache-2.0
#include "editing/selection.h"

namespace baywright {

Selection::Selection(QObject* parent) : QObject(parent) {}

void Selection::select(Id id) {
  if (id == selected_) return;
  selected_ = id;
  Q_EMIT selectedChanged(id);
}

void Selection::hover(Id id) {
  if (id == hovered_) return;
  hovered_ = id;
  Q_EMIT hoveredChanged(id);
}

void Selection::showFinding(const QString& key) {
  if (key == findingKey_) return;
  findingKey_ = key;
  Q_EMIT findingChanged(key);
}

}  // namespace baywright
