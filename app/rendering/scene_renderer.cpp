// SPDX-License-Identifier: Apache-2.0
#include "rendering/scene_renderer.h"

#include <QEventLoop>
#include <QOffscreenSurface>
#include <QTimer>
#include <Qt3DCore/QAspectEngine>
#include <Qt3DCore/QTransform>
#include <Qt3DRender/QCamera>
#include <Qt3DRender/QCameraSelector>
#include <Qt3DRender/QClearBuffers>
#include <Qt3DRender/QCullFace>
#include <Qt3DRender/QDepthTest>
#include <Qt3DRender/QDirectionalLight>
#include <Qt3DRender/QLayer>
#include <Qt3DRender/QLayerFilter>
#include <Qt3DRender/QNoDepthMask>
#include <Qt3DRender/QNoDraw>
#include <Qt3DRender/QRenderAspect>
#include <Qt3DRender/QRenderCapture>
#include <Qt3DRender/QRenderSettings>
#include <Qt3DRender/QRenderStateSet>
#include <Qt3DRender/QRenderSurfaceSelector>
#include <Qt3DRender/QRenderTarget>
#include <Qt3DRender/QRenderTargetOutput>
#include <Qt3DRender/QRenderTargetSelector>
#include <Qt3DRender/QSortPolicy>
#include <Qt3DRender/QTexture>
#include <Qt3DRender/QViewport>

#include "rendering/solid_entity.h"

namespace baywright {
namespace {

using namespace Qt3DRender;

QDepthTest* depthTest() {
  auto* test = new QDepthTest;
  test->setDepthFunction(QDepthTest::LessOrEqual);
  return test;
}

QAbstractTexture* makeTexture(bool smooth, QAbstractTexture::TextureFormat format, QSize size) {
  QAbstractTexture* texture =
      smooth ? static_cast<QAbstractTexture*>(new QTexture2DMultisample) : new QTexture2D;
  texture->setFormat(format);
  texture->setSize(size.width(), size.height());
  if (smooth) texture->setSamples(4);
  return texture;
}

QColor colourOf(const SceneSolid& solid, const SceneRenderer::Look& look) {
  if (solid.id && solid.id == look.selected) return look.theme.accent;
  if (solid.id && solid.id == look.hovered) return look.theme.accent.lighter(130);
  if (solid.verdict && *solid.verdict != Verdict::Clear) return look.theme.verdict(*solid.verdict);
  switch (solid.layer) {
    case Layer::Floor:
      return look.theme.dark ? QColor(70, 72, 76) : QColor(214, 212, 204);
    case Layer::Walls:
      return look.theme.dark ? QColor(92, 95, 100) : QColor(232, 232, 228);
    case Layer::Overhead:
      return look.theme.dark ? QColor(100, 102, 106) : QColor(205, 208, 210);
    case Layer::Openings:
      return QColor(150, 172, 186);
    case Layer::Fixtures:
      return QColor(172, 158, 138);
    case Layer::Bay:
      return look.theme.dark ? QColor(150, 155, 160) : QColor(104, 112, 120);
    case Layer::People:
      return QColor(196, 164, 140);
    default:
      return look.theme.line(solid.layer);
  }
}

}  // namespace

/// The scene graph. Everything below `root` is owned by the aspect engine.
struct SceneRenderer::Nodes {
  QOffscreenSurface surface;
  Qt3DCore::QAspectEngine engine;
  Qt3DCore::QEntity* root = nullptr;
  QRenderSurfaceSelector* selector = nullptr;
  QRenderTargetSelector* targetSelector = nullptr;
  QClearBuffers* clear = nullptr;
  QCamera* camera = nullptr;
  QLayer* translucent = nullptr;
  QRenderCapture* capture = nullptr;
  std::vector<SolidEntity*> solids;
  bool smooth = false;

  Nodes();
  ~Nodes() { engine.setRootEntity({}); }
  QFrameGraphNode* frameGraph();
  void addLight(const QVector3D& direction, float intensity);
  void makeTarget(QSize size);
};

namespace {

/// Qt3D chooses its shaders by the context, and makes the context from the default format.
QSurfaceFormat sceneFormat() {
  QSurfaceFormat format = QSurfaceFormat::defaultFormat();
  format.setVersion(3, 3);
  format.setProfile(QSurfaceFormat::CoreProfile);
  format.setDepthBufferSize(24);
  format.setStencilBufferSize(8);
  format.setSamples(0);
  return format;
}

}  // namespace

SceneRenderer::Nodes::Nodes() {
  QSurfaceFormat::setDefaultFormat(sceneFormat());
  surface.setFormat(QSurfaceFormat::defaultFormat());
  surface.create();
  engine.registerAspect(new QRenderAspect);
  root = new Qt3DCore::QEntity;
  camera = new QCamera;
  translucent = new QLayer;
  translucent->setRecursive(false);
  auto* settings = new QRenderSettings;
  settings->setActiveFrameGraph(frameGraph());
  settings->setRenderPolicy(QRenderSettings::OnDemand);
  root->addComponent(settings);
  camera->setParent(root);
  translucent->setParent(root);
  addLight({-0.4F, 0.5F, -0.8F}, 0.55F);
  addLight({0.6F, -0.5F, -0.25F}, 0.3F);
}

void SceneRenderer::Nodes::addLight(const QVector3D& direction, float intensity) {
  auto* entity = new Qt3DCore::QEntity;
  auto* light = new QDirectionalLight;
  light->setWorldDirection(direction);
  light->setIntensity(intensity);
  entity->addComponent(light);
  entity->setParent(root);
}

QFrameGraphNode* SceneRenderer::Nodes::frameGraph() {
  selector = new QRenderSurfaceSelector;
  selector->setSurface(&surface);
  targetSelector = new QRenderTargetSelector(selector);
  auto* cameras = new QCameraSelector(new QViewport(targetSelector));
  cameras->setCamera(camera);

  clear = new QClearBuffers(cameras);
  clear->setBuffers(QClearBuffers::ColorDepthStencilBuffer);
  new QNoDraw(clear);

  auto* opaque = new QLayerFilter(cameras);
  opaque->addLayer(translucent);
  opaque->setFilterMode(QLayerFilter::DiscardAnyMatchingLayers);
  auto* opaqueStates = new QRenderStateSet(opaque);
  opaqueStates->addRenderState(depthTest());
  // Walls and ceiling face the room: seen from outside they are culled, and the room lies open.
  auto* cull = new QCullFace;
  cull->setMode(QCullFace::Back);
  opaqueStates->addRenderState(cull);

  auto* seeThrough = new QLayerFilter(cameras);
  seeThrough->addLayer(translucent);
  auto* sorted = new QSortPolicy(seeThrough);
  sorted->setSortTypes(QVector<QSortPolicy::SortType>{QSortPolicy::BackToFront});
  auto* states = new QRenderStateSet(sorted);
  states->addRenderState(depthTest());
  states->addRenderState(new QNoDepthMask);
  capture = new QRenderCapture(states);
  return selector;
}

void SceneRenderer::Nodes::makeTarget(QSize size) {
  auto* target = new QRenderTarget;
  const auto attach = [&](QRenderTargetOutput::AttachmentPoint point,
                          QAbstractTexture::TextureFormat format) {
    auto* output = new QRenderTargetOutput;
    output->setAttachmentPoint(point);
    output->setTexture(makeTexture(smooth, format, size));
    target->addOutput(output);
  };
  attach(QRenderTargetOutput::Color0, QAbstractTexture::RGBA8_UNorm);
  attach(QRenderTargetOutput::DepthStencil, QAbstractTexture::D24S8);
  QRenderTarget* old = targetSelector->target();
  targetSelector->setTarget(target);
  selector->setExternalRenderTargetSize(size);
  delete old;
}

SceneRenderer::SceneRenderer(QObject* parent) : QObject(parent), nodes_(std::make_unique<Nodes>()) {
  nodes_->makeTarget(size_);
  nodes_->engine.setRootEntity(Qt3DCore::QEntityPtr(nodes_->root));
  setCamera(camera_);
}

SceneRenderer::~SceneRenderer() = default;

void SceneRenderer::setSolids(const std::vector<SceneSolid>& solids, const Look& look) {
  nodes_->clear->setClearColor(look.theme.dark ? QColor(24, 26, 28) : QColor(240, 242, 243));
  for (std::size_t i = 0; i < solids.size(); ++i) {
    const bool isNew = i == nodes_->solids.size();
    if (isNew) nodes_->solids.push_back(new SolidEntity(nodes_->translucent));
    SolidEntity* entity = nodes_->solids[i];
    entity->setTriangles(solids[i].vertices, solids[i].normals, solids[i].indices);
    entity->setColour(colourOf(solids[i], look), solids[i].opacity);
    entity->setEnabled(!solids[i].indices.empty());
    // A subtree joins the scene only when it is whole: Qt 6.4 crashes on geometry built under a live entity.
    if (isNew) entity->setParent(nodes_->root);
  }
  for (std::size_t i = solids.size(); i < nodes_->solids.size(); ++i) nodes_->solids[i]->setEnabled(false);
}

void SceneRenderer::setCamera(const OrbitCamera& camera) {
  camera_ = camera;
  nodes_->camera->setProjectionMatrix(camera.projection(size_));
  nodes_->camera->setPosition(camera.position());
  nodes_->camera->setUpVector(QVector3D::crossProduct(camera.right(), camera.forward()));
  nodes_->camera->setViewCenter(camera.target);
}

void SceneRenderer::setSize(QSize pixels) {
  pixels = pixels.expandedTo(QSize(16, 16)).boundedTo(QSize(4096, 4096));
  if (pixels == size_) return;
  size_ = pixels;
  nodes_->makeTarget(size_);
  setCamera(camera_);
}

void SceneRenderer::setSmooth(bool smooth) {
  if (smooth == nodes_->smooth) return;
  nodes_->smooth = smooth;
  nodes_->makeTarget(size_);
}

void SceneRenderer::requestImage() {
  same_ = 0;
  if (!capturing_) capture();
}

void SceneRenderer::capture() {
  capturing_ = true;
  QRenderCaptureReply* reply = nodes_->capture->requestCapture();
  connect(reply, &QRenderCaptureReply::completed, this, [this, reply] {
    QImage image = reply->image();
    image.reinterpretAsFormat(QImage::Format_RGB32);
    reply->deleteLater();
    take(image);
  });
}

void SceneRenderer::take(const QImage& captured) {
  capturing_ = false;
  // The first picture after a change may still show the scene before it, or nothing at all.
  const bool repeated = captured.size() == size_ && captured == last_;
  same_ = repeated ? same_ + 1 : 0;
  last_ = captured;
  if (captured.size() == size_) Q_EMIT imageReady(captured);
  if (same_ >= 2) {
    Q_EMIT settled();
  } else {
    capture();
  }
}

QImage SceneRenderer::settledImage(int timeoutMs) {
  QEventLoop loop;
  bool done = false;
  connect(this, &SceneRenderer::settled, &loop, [&] {
    done = true;
    loop.quit();
  });
  QTimer::singleShot(timeoutMs, &loop, &QEventLoop::quit);
  requestImage();
  loop.exec();
  return done ? last_ : QImage();
}

}  // namespace baywright
