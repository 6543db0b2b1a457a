// SPDX-License-Identifier: Apache-2.0
#include "canvas/view.h"

#include <QResizeEvent>

#include "canvas/tool_words.h"
#include "drawing/text_box.h"
#include "drawing/view_move.h"
#include "survey/plan_scan_fit.h"

namespace baywright {
namespace {

constexpr double kReachPixels = 8;  // how near to a thing a click may be
// Round a drawing that was fitted, pixels; the scale bar stands below it.
const QMarginsF kMargins(16, 16, 16, 42);
constexpr double kMillimetresInInch = 25.4;
// An elevation less high than this shows shapes and margins; its dimensions would hide them. Pixels.
constexpr int kHighEnoughForDimensions = 300;

struct KindText {
  const char* name;
  const char* description;
};
KindText textOf(ViewKind kind) {
  switch (kind) {
    case ViewKind::DownRange:
      return {QT_TRANSLATE_NOOP("Tool", "Elevation looking down-range"),
              QT_TRANSLATE_NOOP("Tool", "The room and the bay as the golfer looks at the screen.")};
    case ViewKind::Side:
      return {QT_TRANSLATE_NOOP("Tool", "Elevation from the side"),
              QT_TRANSLATE_NOOP("Tool", "The room and the bay from the bay's right-hand side.")};
    case ViewKind::ScreenFace:
      return {QT_TRANSLATE_NOOP("Tool", "Face of the screen"),
              QT_TRANSLATE_NOOP("Tool", "The impact screen from the front, with the picture on it.")};
    case ViewKind::Wall:
      return {QT_TRANSLATE_NOOP("Tool", "Elevation of a wall"),
              QT_TRANSLATE_NOOP("Tool", "One wall from inside, with what is in it and before it.")};
    case ViewKind::Plan:
      break;
  }
  return {QT_TRANSLATE_NOOP("Tool", "Plan"),
          QT_TRANSLATE_NOOP("Tool", "The room from above. Everything in it is also in the list of the job.")};
}

}  // namespace

View::View(Document& document, ToolBox& toolBox, const DrawnView& view, QWidget* parent)
    : QWidget(parent), document_(document), toolBox_(toolBox), view_(view), entry_(new TypedEntry(this)) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setAttribute(Qt::WA_AcceptTouchEvents);
  grabGesture(Qt::PinchGesture);
  setAccessibleName(toolWords(textOf(view.kind).name));
  setAccessibleDescription(toolWords(textOf(view.kind).description));
  shownBay_ = document.job().option().placement.bay;
  takeTool(toolBox.current());
  scans_.follow(view_, document.job());
  listen();
}

View::~View() {
  // An open edit puts the job back: that must not reach a view that is half gone.
  document_.disconnect(this);
  document_.selection().disconnect(this);
  entry_->disconnect(this);
  tool_.reset();
}

void View::listen() {
  connect(&document_, &Document::jobChanged, this, &View::showJob);
  connect(&document_, &Document::assessed, this, [this] { stale(Stale::Drawing); });
  Selection& selection = document_.selection();
  connect(&selection, &Selection::selectedChanged, this, [this] {
    stale(Stale::Drawing);
    tellTool();
  });
  connect(&selection, &Selection::hoveredChanged, this, [this] {
    drawing_ = {};
    update();
  });
  connect(&selection, &Selection::findingChanged, this, [this] { stale(Stale::Drawing); });
  connect(&selection, &Selection::zoomToFindingRequested, this, &View::zoomToFinding);
  connect(&pictures_, &PlanPictures::ready, this, [this] {
    stale(Stale::Ground);
    if (fitted_) fit();
  });
  connect(&scans_, &ScanUnderlay::ready, this, [this] { stale(Stale::Ground); });
  connect(&pictures_, &PlanPictures::traced, this, qOverload<>(&View::update));
  connect(&toolBox_, &ToolBox::chosen, this, &View::takeTool);
  connect(entry_, &TypedEntry::taken, this, &View::takeTyped);
  connect(entry_, &TypedEntry::givenUp, this, &View::giveUp);
}

void View::takeTool(ToolKind chosen) {
  entry_->dismiss();
  if (tool_) tool_->cancel(*this);
  retired_ = std::move(tool_);
  const ToolRow& row = toolRow(chosen);
  tool_ = (row.worksIn(kind()) ? row : toolRow(ToolKind::Select)).make(kind());
  tellTool();
  update();
}

void View::giveUp() {
  entry_->dismiss();
  tool_->cancel(*this);
  tellTool();
}

// --- the drawing

void View::showJob() {
  const BayPose& bay = document_.job().option().placement.bay;
  // Elevations are drawn about the bay: without this the room would slide while the bay stands still.
  const Vec2 shift = viewShift(kind(), shownBay_, bay);
  shownBay_ = bay;
  if (shift != Vec2::Zero()) {
    ScreenMap map = map_;
    map.pan(map.pixelFrom(Vec2::Zero()) - map.pixelFrom(shift));
    setMap(map);
  }
  const Job& job = document_.job();
  scans_.follow(view_, job);
  // What lies under the drawing stays as it is while things are dragged over it.
  const bool sameGround = job.planScans == shownPlans_ && job.units == shownUnits_;
  shownPlans_ = job.planScans;
  shownUnits_ = job.units;
  stale(sameGround ? Stale::Drawing : Stale::Ground);
}

void View::lookAt(const DrawnView& view) {
  if (view == view_) return;
  giveUp();
  view_ = view;
  scans_.follow(view_, document_.job());
  stale(Stale::Ground);
  fit();
}

void View::stale(Stale what) {
  linework_.reset();
  drawing_ = {};
  if (what == Stale::Ground) ground_ = {};
  update();
}

void View::setMap(const ScreenMap& map) {
  if (map == map_) return;
  const bool rescaled = map.metresPerPixel() != map_.metresPerPixel();
  map_ = map;
  ground_ = {};
  drawing_ = {};
  if (rescaled) {
    linework_.reset();
    Q_EMIT scaleChanged(scale());
  }
  update();
}

void View::setOptions(const ViewOptions& options) {
  const bool hasOtherMargins = options.corners != options_.corners;  // their words stand outside the walls
  options_ = options;
  stale(Stale::Drawing);
  if (hasOtherMargins && fitted_) fit();
}

double View::scale() const {
  return reach().unitsPerMm * 1000;
}

const Linework& View::linework() const {
  if (!linework_) {
    ViewOptions options = options_;
    options.metresPerMm = reach().unitsPerMm;
    options.findingKey = document_.selection().findingKey().toStdString();
    // Live dimensions take the place of the drawing's own.
    const bool isElevation = kind() != ViewKind::Plan && kind() != ViewKind::ScreenFace;
    if (showsLive_ || (isElevation && height() < kHighEnoughForDimensions)) options.dimensions = false;
    linework_ = drawer_.draw(view_, document_.job(), document_.assessment(), options);
  }
  return *linework_;
}

HitReach View::reach() const {
  const double pixelsPerMm = logicalDpiX() / kMillimetresInInch;
  return {kReachPixels * map_.metresPerPixel(), pixelsPerMm * map_.metresPerPixel()};
}

std::optional<Vec2> View::pixelsOf(const PlanScan& scan) const {
  const QSize size = pictures_.sizeOf(scan);
  if (size.isEmpty()) return std::nullopt;
  return Vec2(size.width(), size.height());
}

const PictureTraces* View::tracesOf(const PlanScan& scan) const {
  return kind() == ViewKind::Plan ? pictures_.tracesOf(scan) : nullptr;
}

Eigen::AlignedBox2d View::drawnExtent() const {
  // Of what is there, not of its texts and dimension lines: how far out those lie depends on the scale.
  Eigen::AlignedBox2d drawn;
  for (const Path& path : linework().paths) {
    for (const std::vector<Vec2>& ring : path.rings) {
      for (const Vec2& point : ring) drawn.extend(point);
    }
  }
  if (kind() != ViewKind::Plan || !document_.job().room.walls.empty()) return drawn;
  for (const PlanScan& scan : document_.job().planScans) {
    const auto pixels = pixelsOf(scan);
    if (!scan.visible || !pixels) continue;
    for (const Vec2& corner : scanOutline(scan, *pixels)) drawn.extend(corner);
  }
  return drawn;
}

void View::fit() {
  // Marks keep their size on the screen, so what they take up in metres is known only at a scale: coming from
  // a very different one takes a few rounds.
  constexpr int kRounds = 4;
  Eigen::AlignedBox2d drawn;
  for (int round = 0; round < kRounds; ++round) {
    drawn = drawnExtent();
    zoomTo(drawn);
  }
  if (!drawn.isEmpty()) {
    // In a small view they may not push the drawing itself below two thirds of it.
    constexpr double kMostAround = 0.25;
    const Vec2 around = kMostAround * drawn.sizes();
    const Eigen::AlignedBox2d most(drawn.min() - around, drawn.max() + around);
    const auto inked = inkExtent(linework(), reach().unitsPerMm);
    zoomTo(inked ? drawn.merged(most.intersection(*inked)) : drawn);
  }
  fitted_ = true;
}

void View::zoomTo(const Eigen::AlignedBox2d& box) {
  ScreenMap map = map_;
  map.fit(box, kMargins);
  fitted_ = false;
  setMap(map);
}

void View::zoomToFinding(const QString& key) {
  const Finding* finding = document_.assessment().find(key.toStdString());
  if (!finding || !finding->points) return;
  constexpr double kAround = 0.8;  // metres: enough to see what the two points belong to
  Eigen::AlignedBox2d box(viewFromWorld(view_, document_.job(), finding->points->first));
  box.extend(viewFromWorld(view_, document_.job(), finding->points->second));
  zoomTo({Vec2(box.min().array() - kAround), Vec2(box.max().array() + kAround)});
}

// --- what a tool asks

void View::panBy(QPointF pixels) {
  ScreenMap map = map_;
  map.pan(pixels);
  fitted_ = false;
  setMap(map);
}

void View::openEntry(std::size_t field, const QString& typed) {
  const auto fields = tool_->fields(*this);
  if (fields.empty()) return;
  entryField_ = field % fields.size();
  const TypedField& asked = fields[entryField_];
  const QPointF middle = (map_.pixelFrom(asked.from) + map_.pixelFrom(asked.to)) / 2;
  entry_->ask(asked, document_.job().units, middle, typed);
  update();
}

void View::takeTyped(double value, TypedEntry::Then then) {
  if (const auto problem = tool_->take(*this, entryField_, value)) {
    entry_->complain(*problem);
    return;
  }
  const std::size_t count = tool_->fields(*this).size();
  if (then == TypedEntry::Then::Done || count == 0) {
    entry_->dismiss();
    tool_->accept(*this);
  } else {
    openEntry(entryField_ + (then == TypedEntry::Then::Next ? 1 : count - 1));
  }
  tellTool();
}

void View::say(const QString& sentence) {
  Q_EMIT said(sentence);
}

void View::done() {
  toolBox_.choose(ToolKind::Select);
}

void View::refresh() {
  update();
}

void View::zoomAt(QPointF pixel, double factor) {
  ScreenMap map = map_;
  map.zoom(pixel, factor);
  fitted_ = false;
  setMap(map);
}

void View::tellTool() {
  const bool showsLive = tool_->isBusy() && !tool_->fields(*this).empty();
  if (showsLive != showsLive_) {
    showsLive_ = showsLive;
    stale(Stale::Drawing);
  }
  setCursor(spaceHeld_ || panFrom_ ? QCursor(Qt::OpenHandCursor) : tool_->cursor(*this));
  const QString status = tool_->status(*this);
  if (status == status_) return;
  status_ = status;
  Q_EMIT statusChanged(status);
}

void View::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) stale(Stale::Ground);
  QWidget::changeEvent(event);
}

void View::resizeEvent(QResizeEvent* event) {
  const bool refit = fitted_ || event->oldSize().isEmpty();
  ScreenMap map = map_;
  map.resize(event->size());
  setMap(map);
  stale(Stale::Drawing);
  if (refit) fit();
}

}  // namespace baywright
