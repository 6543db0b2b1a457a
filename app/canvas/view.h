// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPixmap>
#include <QWidget>
#include <memory>

#include "canvas/plan_pictures.h"
#include "canvas/scan_underlay.h"
#include "canvas/screen_map.h"
#include "canvas/tool_box.h"
#include "canvas/tool_host.h"
#include "canvas/typed_entry.h"

class QGestureEvent;
class QNativeGestureEvent;

namespace baywright {

/// A drawing of the job on the screen that can be worked on: the plan, an elevation, the screen's face. It
/// turns widget events into metres for the tool in hand, moves and scales the drawing, and paints: grid and
/// plan pictures, the linework of core/drawing, what the tool shows, a scale bar.
///
///   pan      middle button, Space and drag, two fingers        zoom   wheel, pinch, + and -, at the pointer
///   Ctrl+0   everything                                        Esc    gives up what was begun
///   digits   type the first live dimension, Tab the next, Enter takes
class View : public QWidget, public ToolHost {
  Q_OBJECT

 public:
  View(Document& document, ToolBox& toolBox, const DrawnView& view, QWidget* parent = nullptr);
  ~View() override;

  /// Which zones are shown. Scale and finding are the view's own.
  void setOptions(const ViewOptions& options);
  const ViewOptions& options() const { return options_; }
  const ScreenMap& map() const { return map_; }
  /// n of 1:n, of this screen's millimetres as the system states them.
  double scale() const;

  void fit();

  QSize sizeHint() const override { return {480, 320}; }
  QSize minimumSizeHint() const override { return {120, 90}; }

  // ToolHost
  Document& document() const override { return document_; }
  const DrawnView& view() const override { return view_; }
  const Linework& linework() const override;
  HitReach reach() const override;
  const ToolSettings& settings() const override { return toolBox_.settings(); }
  std::optional<Vec2> pixelsOf(const PlanScan& scan) const override;
  const PictureTraces* tracesOf(const PlanScan& scan) const override;
  void panBy(QPointF pixels) override;
  void zoomTo(const Eigen::AlignedBox2d& box) override;
  void openEntry(std::size_t field, const QString& typed = {}) override;
  void say(const QString& sentence) override;
  void done() override;
  void refresh() override;

 Q_SIGNALS:
  /// In metres of the drawing.
  void pointerAt(QPointF metres);
  void pointerLeft();
  void scaleChanged(double denominator);
  /// What to do next with the tool in hand.
  void statusChanged(const QString& text);
  /// What was done, or why it was not.
  void said(const QString& sentence);
  void contextMenuWanted(baywright::Id thing, QPoint globalPosition);

 protected:
  bool event(QEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  void changeEvent(QEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

  /// Shows something else of the same kind, from its whole extent on.
  void lookAt(const DrawnView& view);

 private:
  enum class Stale { Drawing, Ground };
  void listen();
  void takeTool(ToolKind kind);
  void giveUp();
  Eigen::AlignedBox2d drawnExtent() const;
  void showJob();
  void setMap(const ScreenMap& map);
  void stale(Stale what);
  void zoomAt(QPointF pixel, double factor);
  void zoomToFinding(const QString& key);
  PointerEvent pointerFrom(const QMouseEvent& event) const;
  void tellTool();
  void takeTyped(double value, TypedEntry::Then then);
  bool keepsFromShortcuts(const QKeyEvent& event) const;
  bool typesAField(const QKeyEvent& event) const;
  bool navigates(const QKeyEvent& event);
  bool choosesATool(const QKeyEvent& event);
  bool nativeGesture(const QNativeGestureEvent& event);
  bool gesture(QGestureEvent& event);

  // view_painting.cpp
  void paintGround();
  void paintDrawing();
  void paintGrid(QPainter& painter);
  void paintPlans(QPainter& painter);
  void paintMissingPlans(QPainter& painter);
  void paintScans(QPainter& painter);
  void paintScaleBar(QPainter& painter);
  void paintOverlay(QPainter& painter);
  bool coversFloor() const;

  Document& document_;
  ToolBox& toolBox_;
  DrawnView view_;
  std::unique_ptr<Tool> tool_;
  std::unique_ptr<Tool> retired_;  ///< the one before: it may be what asked for the change
  QString status_;
  TypedEntry* entry_;
  std::size_t entryField_ = 0;

  ScreenMap map_;
  ViewOptions options_;
  BayPose shownBay_;
  std::vector<PlanScan> shownPlans_;
  UnitSystem shownUnits_;
  bool showsLive_ = false;  ///< live dimensions take the place of the drawing's own
  bool fitted_ = false;     ///< until the person at work pans or zooms
  bool spaceHeld_ = false;
  std::optional<QPointF> panFrom_;

  mutable ViewDrawer drawer_;
  mutable std::optional<Linework> linework_;  ///< of now; none: stale
  PlanPictures pictures_;
  ScanUnderlay scans_;
  QPixmap ground_;   ///< background, grid, plans; null: stale
  QPixmap drawing_;  ///< ground and linework; null: stale
};

}  // namespace baywright
