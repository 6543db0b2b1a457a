// SPDX-License-Identifier: Apache-2.0
#include "scene/scene_view.h"

#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include "drawing/scene_pick.h"

namespace baywright {
namespace {

constexpr int kFullAfterMs = 250;
constexpr double kDraftShare = 0.5;  // of the size in pixels, on software OpenGL
constexpr int kClickSlopPx = 4;

}  // namespace

SceneView::SceneView(Document& document, GlInfo gl, QWidget* parent)
    : QWidget(parent), document_(document), gl_(std::move(gl)) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setMinimumSize(160, 120);
  setAccessibleName(tr("3D view"));
  setAccessibleDescription(
      tr("The room, the kit and the swings in space. The findings list says the same in words."));
  if (!gl_.usable) return;

  renderer_ = std::make_unique<SceneRenderer>();
  fullTimer_.setSingleShot(true);
  connect(&fullTimer_, &QTimer::timeout, this, &SceneView::finish);
  connect(renderer_.get(), &SceneRenderer::imageReady, this, [this](const QImage& image) {
    image_ = image;
    update();
  });
  connect(&document_, &Document::assessed, this, &SceneView::updateScene);
  connect(&document_.selection(), &Selection::selectedChanged, this, &SceneView::updateScene);
  connect(&document_.selection(), &Selection::hoveredChanged, this, &SceneView::updateScene);
  connect(&document_.selection(), &Selection::findingChanged, this, qOverload<>(&QWidget::update));
  updateScene();
}

SceneView::~SceneView() = default;

void SceneView::setOptions(const SceneOptions& options) {
  options_ = options;
  updateScene();
}

void SceneView::setCamera(const OrbitCamera& camera) {
  camera_ = camera;
  if (!renderer_) return;
  renderer_->setCamera(camera_);
  draft();
}

void SceneView::updateScene() {
  if (!renderer_) return;
  solids_ = builder_.build(document_.job(), document_.assessment(), options_);
  SceneRenderer::Look look{Theme::forPalette(palette()), document_.selection().selected(),
                           document_.selection().hovered()};
  renderer_->setSolids(solids_, look);
  std::vector<Id> walls;
  for (const Wall& wall : document_.job().room.walls) walls.push_back(wall.id);
  const bool isAnotherRoom = isAsFitted() && walls != fittedWalls_;
  fittedWalls_ = std::move(walls);
  if (isAnotherRoom && !fittedWalls_.empty() && width() > 160) fitToRoom();
  draft();
}

bool SceneView::isAsFitted() const {
  return !fit_ || camera_ == *fit_;
}

void SceneView::fitToRoom() {
  camera_.fit(sceneBounds(solids_), size());
  camera_.distance *= 0.75F;  // the ball around a room is larger than what is seen of it
  fit_ = camera_;
  setCamera(camera_);
}

void SceneView::standAt(Standpoint standpoint) {
  const BayPose& bay = document_.job().option().placement.bay;
  const auto heading = static_cast<float>(bay.heading * 180 / kPi);
  camera_.fit(sceneBounds(solids_), size());
  switch (standpoint) {
    case Standpoint::Corner:
      camera_.yaw = heading - 30;
      camera_.pitch = -35;
      break;
    case Standpoint::Golfer:
      camera_.yaw = heading;
      camera_.pitch = -8;
      break;
    case Standpoint::Above:
      camera_.yaw = heading;
      camera_.pitch = -89;
      break;
    case Standpoint::Projector: {
      const Vec3 lens = worldFromBay(bay, document_.job().option().placement.projector.lens);
      const Vec3 middle = worldFromBay(bay, Vec3(0, 0, lens.z() / 2));
      camera_.target = QVector3D(float(middle.x()), float(middle.y()), float(middle.z()));
      camera_.distance = float((lens - middle).norm());
      camera_.yaw = heading;
      camera_.pitch = float(std::asin((middle - lens).normalized().z()) * 180 / kPi);
      break;
    }
  }
  setCamera(camera_);
}

void SceneView::setRenderSize(double share, bool smooth) {
  renderer_->setSize((QSizeF(size()) * devicePixelRatioF() * share).toSize());
  renderer_->setSmooth(smooth);
  renderer_->setCamera(camera_);
}

void SceneView::draft() {
  if (!isVisible()) return;
  if (gl_.software) {
    setRenderSize(kDraftShare, false);
    fullTimer_.start(kFullAfterMs);
  } else {
    setRenderSize(1, true);
  }
  renderer_->requestImage();
}

void SceneView::finish() {
  setRenderSize(1, true);
  renderer_->requestImage();
}

void SceneView::resizeEvent(QResizeEvent*) {
  if (!renderer_) return;
  if (isAsFitted() && !document_.job().room.walls.empty()) fitToRoom();
  draft();
}

void SceneView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) updateScene();
  QWidget::changeEvent(event);
}

void SceneView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  if (!renderer_) {
    painter.fillRect(rect(), palette().window());
    painter.setPen(palette().color(QPalette::WindowText));
    painter.drawText(
        rect().adjusted(16, 16, -16, -16), Qt::AlignCenter | Qt::TextWordWrap,
        tr("No 3D view here: %1\nPlan, elevations, findings and sheets work as ever.").arg(gl_.reason));
    return;
  }
  if (image_.isNull()) {
    painter.fillRect(rect(), palette().window());
  } else {
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(rect(), image_);
  }
  if (document_.job().room.walls.empty()) {
    painter.setPen(palette().color(QPalette::PlaceholderText));
    painter.drawText(rect().adjusted(0, 0, 0, -12), Qt::AlignHCenter | Qt::AlignBottom,
                     tr("The room in 3D, once there is one."));
    return;
  }
  painter.setRenderHint(QPainter::Antialiasing);
  paintTightestPoints(painter);
}

void SceneView::paintTightestPoints(QPainter& painter) {
  const Finding* finding = document_.assessment().find(document_.selection().findingKey().toStdString());
  if (!finding || !finding->points) return;
  const auto a = camera_.project(finding->points->first, size());
  const auto b = camera_.project(finding->points->second, size());
  if (!a || !b) return;
  const QColor colour = Theme::forPalette(palette()).verdict(finding->verdict);
  painter.setPen(QPen(colour, 2.5));
  painter.drawLine(*a, *b);
  painter.setBrush(colour);
  painter.drawEllipse(*a, 4, 4);
  painter.drawEllipse(*b, 4, 4);
}

Id SceneView::thingAt(QPointF position) const {
  const QVector3D eye = camera_.position();
  const auto hit = pickSolid(solids_, Vec3(eye.x(), eye.y(), eye.z()), camera_.rayThrough(position, size()));
  return hit ? hit->id : Id{};
}

void SceneView::mousePressEvent(QMouseEvent* event) {
  pressedAt_ = lastAt_ = event->position();
}

void SceneView::mouseMoveEvent(QMouseEvent* event) {
  const QPointF step = event->position() - lastAt_;
  lastAt_ = event->position();
  if (!renderer_) return;
  if (event->buttons() == Qt::NoButton) {
    document_.selection().hover(thingAt(event->position()));
    return;
  }
  const bool pan = !(event->buttons() & Qt::LeftButton) || (event->modifiers() & Qt::ShiftModifier);
  if (pan) {
    const float perPixel =
        2 * camera_.distance * std::tan(camera_.fieldOfView * float(kPi) / 360) / float(height());
    const QVector3D up = QVector3D::crossProduct(camera_.right(), camera_.forward());
    camera_.target += perPixel * (float(step.y()) * up - float(step.x()) * camera_.right());
  } else {
    camera_.yaw -= float(step.x()) * 0.4F;
    camera_.pitch = std::clamp(camera_.pitch - float(step.y()) * 0.4F, -89.0F, 60.0F);
  }
  setCamera(camera_);
}

void SceneView::mouseReleaseEvent(QMouseEvent* event) {
  const bool click = (event->position() - pressedAt_).manhattanLength() < kClickSlopPx;
  if (renderer_ && click && event->button() == Qt::LeftButton)
    document_.selection().select(thingAt(event->position()));
}

void SceneView::wheelEvent(QWheelEvent* event) {
  camera_.distance =
      std::clamp(camera_.distance * std::pow(0.999F, float(event->angleDelta().y())), 0.4F, 200.0F);
  setCamera(camera_);
}

void SceneView::keyPressEvent(QKeyEvent* event) {
  constexpr float kStep = 10;
  switch (event->key()) {
    case Qt::Key_Left:
      camera_.yaw += kStep;
      break;
    case Qt::Key_Right:
      camera_.yaw -= kStep;
      break;
    case Qt::Key_Up:
      camera_.pitch = std::max(-89.0F, camera_.pitch - kStep);
      break;
    case Qt::Key_Down:
      camera_.pitch = std::min(60.0F, camera_.pitch + kStep);
      break;
    case Qt::Key_Home:
      fitToRoom();
      return;
    default:
      QWidget::keyPressEvent(event);
      return;
  }
  setCamera(camera_);
}

}  // namespace baywright
