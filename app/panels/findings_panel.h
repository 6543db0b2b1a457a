// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFutureWatcher>
#include <QWidget>
#include <array>
#include <atomic>
#include <memory>

#include "editing/document.h"
#include "fit/smallest_change.h"
#include "models/findings_model.h"

class QLabel;
class QListView;
class QPushButton;
class QToolButton;

namespace baywright {

/// The findings, worst first. Pointing at one shows its two points in every view; "Show" zooms to them; "What
/// would help" looks for the smallest changes that clear it and offers to make them.
class FindingsPanel : public QWidget {
  Q_OBJECT

 public:
  explicit FindingsPanel(Document& document, QWidget* parent = nullptr);
  ~FindingsPanel() override;

  QListView* list() const { return list_; }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void refresh();
  void showFinding(const QModelIndex& index);
  void askWhatHelps();
  void offer();
  void stopSearch();
  QString currentKey() const;

  using Changes = Result<std::vector<Change>>;

  Document& document_;
  FindingsModel model_;
  QListView* list_;
  QLabel* advice_;
  QPushButton* show_;
  QPushButton* help_;
  std::array<QToolButton*, 4> filters_{};
  QFutureWatcher<Changes> search_;
  std::shared_ptr<std::atomic<bool>> stop_;
  Job searched_;  ///< what the offers start from; they lapse when the job is another
};

}  // namespace baywright
