// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QTimer>
#include <QWidget>
#include <memory>

#include "editing/document.h"
#include "rendering/gl_probe.h"
#include "rendering/scene_renderer.h"

namespace baywright {

/// The room in 3D: drag to orbit, drag with the middle or right button (or Shift) to pan, wheel to come
/// nearer, click to select. While something changes it draws fast and coarse where OpenGL runs on the
/// processor, and once more in full a moment after. Where there is no OpenGL it says so in its place.
class SceneView : public QWidget {
  Q_OBJECT

 public:
  explicit SceneView(Document& document, GlInfo gl, QWidget* parent = nullptr);
  ~SceneView() override;

  void setOptions(const SceneOptions& options);
  const OrbitCamera& camera() const { return camera_; }
  void setCamera(const OrbitCamera& camera);
  bool isWorking() const { return renderer_ != nullptr; }

  enum class Standpoint { Corner, Golfer, Above, Projector };

 public Q_SLOTS:
  void fitToRoom();
  void standAt(baywright::SceneView::Standpoint standpoint);

 protected:
  void paintEvent(QPaintEvent*) override;
  void resizeEvent(QResizeEvent*) override;
  void changeEvent(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  bool isAsFitted() const;
  void updateScene();
  void draft();   ///< draw now, coarse if need be
  void finish();  ///< draw in full
  void setRenderSize(double share, bool smooth);
  void paintTightestPoints(QPainter& painter);
  Id thingAt(QPointF position) const;

  Document& document_;
  GlInfo gl_;
  SceneOptions options_;
  std::unique_ptr<SceneRenderer> renderer_;
  SceneBuilder builder_;
  std::vector<SceneSolid> solids_;
  OrbitCamera camera_;
  QImage image_;
  QTimer fullTimer_;
  QPointF pressedAt_;
  QPointF lastAt_;
  std::optional<OrbitCamera> fit_;  ///< as fitToRoom() left it: while nobody moved it, it follows the size
  std::vector<Id> fittedWalls_;     ///< and the room, when another one takes its place
};

}  // namespace baywright
