// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QObject>
#include <filesystem>

#include "editing/document.h"
#include "editing/recovery_keeper.h"
#include "window/settings.h"

class QWidget;

namespace baywright {

/// Everything between the document and files: opening of every kind, saving, the question before unsaved work
/// is lost, plans and surveys that come in by file, drop or clipboard, and what a crash left behind.
class JobFiles : public QObject {
  Q_OBJECT

 public:
  JobFiles(Document& document, std::filesystem::path recoveryFolder, QWidget* window);

  Settings& settings() { return settings_; }
  /// True when the open job may be replaced: saved, or its loss agreed to.
  bool maySwitch();
  /// A job, a picture or PDF that becomes a plan of the open job, or a drawing, scan or measuring list that
  /// becomes its room. False when it could not be read; why is said. False too when the person gave up.
  bool openFile(const QString& path);
  void offerRecovery();
  /// What a name ends in that can be opened: for dialogs and drops.
  static QString openFilter();

 public Q_SLOTS:
  void newDocument();
  void open();
  void openExample();
  bool save();
  bool saveAs();
  void importPlan();
  void importSurvey();
  void pastePlan();
  void revert();

 Q_SIGNALS:
  void planAdded(baywright::Id scan);
  void roomTaken();
  void recentChanged();

 private:
  bool openJob(const QString& path);
  bool addPlan(const QString& fileName, const QByteArray& bytes);
  bool takeSurvey(const QString& path);
  void said(const Problem& problem);
  void remember(const QString& path);

  Document& document_;
  QWidget* window_;
  Settings settings_;
  std::filesystem::path recoveryFolder_;
  RecoveryKeeper keeper_;
};

}  // namespace baywright
