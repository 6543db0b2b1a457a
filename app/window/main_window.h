// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QMainWindow>
#include <filesystem>

#include "canvas/tool_box.h"
#include "editing/document.h"
#include "job/catalogue.h"
#include "painting/plan_image.h"
#include "scene/scene_view.h"
#include "window/job_files.h"
#include "window/stages.h"

class QActionGroup;
class QComboBox;
class QLabel;
class QStackedWidget;

namespace baywright {

class CompareView;
class MessageStrip;
class SignOffView;
class Workspace;

/// Puts the parts together: stages and tools across the top, the views of the chosen stage, the status line
/// below. It holds no knowledge of jobs.
class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  /// An empty recovery folder keeps no unsaved work.
  explicit MainWindow(std::filesystem::path recoveryFolder, QWidget* parent = nullptr);
  ~MainWindow() override;

  Document& document() { return document_; }
  JobFiles& files() { return *files_; }
  Workspace& workspace() { return *workspace_; }
  SignOffView& signOff() { return *signOff_; }
  ToolBox& toolBox() { return toolBox_; }
  MessageStrip& messages() { return *messages_; }

  void showStage(Stage stage);
  Stage stage() const { return stage_; }
  void print();
  void showMeasuringList();
  void fitAll();
  void removeSelected();
  void lookFrom(SceneView::Standpoint standpoint);
  void showHelp();
  void showAbout();

 protected:
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void makeMenus();
  void makeStageBar();
  void makeToolBar();
  void makeStatusBar();
  void connectViews();
  void fillRecent();
  void showTools();
  void addUsualSizes(ToolKind kind);
  void tintIcons();
  void updateTitle();
  void updateCounts();
  void followUnits();

  Document document_;
  ToolBox toolBox_;
  Catalogue catalogue_;
  PlanImages images_;
  JobFiles* files_;
  Workspace* workspace_;
  CompareView* compare_;
  SignOffView* signOff_;
  QStackedWidget* pages_;
  MessageStrip* messages_;
  QToolBar* tools_;
  QMenu* recent_;
  QActionGroup* stageGroup_;
  QActionGroup* toolGroup_;
  QComboBox* units_;
  QLabel* place_;
  QLabel* hint_;
  QLabel* scale_;
  QLabel* counts_;
  QLabel* saved_;
  Stage stage_ = Stage::Survey;
};

}  // namespace baywright
