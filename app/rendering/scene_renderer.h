// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QObject>
#include <QSize>
#include <memory>
#include <vector>

#include "drawing/solids.h"
#include "painting/theme.h"
#include "rendering/orbit_camera.h"

namespace baywright {

/// Draws the solids of a scene with Qt3D into a picture, without a window. Runs in the GUI thread, renders
/// only when asked. Needs a usable OpenGL (probeGl) and QT3D_RENDERER=opengl in the environment before the
/// first one is made.
class SceneRenderer : public QObject {
  Q_OBJECT

 public:
  explicit SceneRenderer(QObject* parent = nullptr);
  ~SceneRenderer() override;

  struct Look {
    Theme theme = Theme::light();
    Id selected;
    Id hovered;
  };
  void setSolids(const std::vector<SceneSolid>& solids, const Look& look);
  void setCamera(const OrbitCamera& camera);
  void setSize(QSize pixels);
  /// Smooth edges cost three times the time on software OpenGL.
  void setSmooth(bool smooth);

  /// Asks for pictures until they no longer change; each arrives by imageReady. Cheap to call often.
  void requestImage();
  /// For stills: blocks until the picture has settled. A null image when it did not in that time.
  QImage settledImage(int timeoutMs = 20000);

 Q_SIGNALS:
  void imageReady(const QImage& image);
  void settled();

 private:
  void capture();
  void take(const QImage& captured);

  struct Nodes;
  std::unique_ptr<Nodes> nodes_;
  OrbitCamera camera_;
  QSize size_{640, 480};
  QImage last_;
  bool capturing_ = false;
  int same_ = 0;  ///< captures in a row that were equal
};

}  // namespace baywright
