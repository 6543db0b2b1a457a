// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>
#include <vector>

#include "canvas/tool_box.h"
#include "canvas/view.h"
#include "editing/document.h"
#include "editing/standing_zone.h"
#include "job/catalogue.h"
#include "scene/scene_view.h"

class QSplitter;
class QStackedWidget;

namespace baywright {

class ElevationView;
class FindingsPanel;
class JobPanel;
class PlanView;
class ScreenFaceView;
class StartPage;
class WallBox;

/// The linked views: what is in the job on the left, the plan large, elevations and 3D on the right, findings
/// or readings below. While the room is surveyed one of its walls stands on the right as well, and may change
/// places with the plan. An empty job shows the ways in where its plan will be.
class Workspace : public QWidget {
  Q_OBJECT

 public:
  Workspace(Document& document, ToolBox& toolBox, const Catalogue& catalogue, QWidget* parent = nullptr);

  /// What is being worked on: it says which views are large, which stand beside, and what is below.
  enum class Work { Survey, Place, Picture };
  void setWork(Work work);
  /// Draw in an empty job: shows the plan although there is no room yet.
  void showPlan();

  PlanView& plan() { return *plan_; }
  SceneView& scene() { return *scene_; }
  StartPage& startPage() { return *start_; }
  const std::vector<View*>& drawings() const { return drawings_; }
  ViewOptions options() const { return options_; }
  void setOptions(const ViewOptions& options);
  void fitAll();

 Q_SIGNALS:
  void measuringListAsked();

 private:
  QWidget* titled(const QString& title, QWidget* view);
  void showWallLarge(bool large);
  void chooseMain();
  void showOptions();
  void showMenu(Id thing, QPoint globalPosition);

  Document& document_;
  JobPanel* panel_;
  PlanView* plan_;
  WallBox* wall_;
  ElevationView* downRange_;
  ElevationView* side_;
  ScreenFaceView* screen_;
  SceneView* scene_;
  StartPage* start_;
  QStackedWidget* main_;
  QSplitter* right_ = nullptr;
  QStackedWidget* bottom_;
  std::vector<View*> drawings_;
  StandingZone* standing_;
  ViewOptions options_;
  QWidget* sideBox_ = nullptr;
  Work work_ = Work::Survey;
  bool drawsInEmptyJob_ = false;
};

}  // namespace baywright
