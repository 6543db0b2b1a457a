// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QString>

#include "base/id.h"

namespace baywright {

/// What is selected and hovered, shared by all views. A hovered finding is named by its key, so that it
/// survives the next assessment.
class Selection : public QObject {
  Q_OBJECT

 public:
  explicit Selection(QObject* parent = nullptr);

  Id selected() const { return selected_; }
  Id hovered() const { return hovered_; }
  const QString& findingKey() const { return findingKey_; }

  void select(Id id);
  void hover(Id id);
  void showFinding(const QString& key);  ///< empty: none

 Q_SIGNALS:
  void selectedChanged(baywright::Id id);
  void hoveredChanged(baywright::Id id);
  void findingChanged(const QString& key);
  /// Somebody asks the views to bring this finding's two points into sight.
  void zoomToFindingRequested(const QString& key);

 private:
  Id selected_;
  Id hovered_;
  QString findingKey_;
};

}  // namespace baywright
