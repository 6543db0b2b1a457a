// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFutureWatcher>
#include <QWidget>
#include <atomic>
#include <memory>

#include "editing/document.h"
#include "fit/smallest_change.h"
#include "models/findings_model.h"

class QLabel;
class QListView;
class QPushButton;

namespace baywright {

/// The findings, worst first. Pointing at one shows its two points in every view; "Show" zooms to them; "What
/// would help" looks for the smallest change that clears it and offers to make it.
class FindingsPanel : public QWidget {
  Q_OBJECT

 public:
  explicit FindingsPanel(Document& document, QWidget* parent = nullptr);
  ~FindingsPanel() override;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void makeFilters();
  void updateButtons();
  void updateCounts();
  void showCurrent();
  void askWhatHelps();
  void offerHelp();
  const Finding* current() const;

  Document& document_;
  FindingsModel model_;
  QListView* list_;
  QLabel* empty_;
  QWidget* filters_;
  QPushButton* show_;
  QPushButton* help_;
  QLabel* advice_;
  QPushButton* apply_;
  std::array<QPushButton*, 4> filterButtons_{};

  using Changes = std::vector<SmallestChange>;
  QFutureWatcher<Changes> search_;
  std::shared_ptr<std::atomic<bool>> cancel_;
  std::optional<SmallestChange> offered_;
  Job searchedJob_;
};

}  // namespace baywright
