// SPDX-License-Identifier: Apache-2.0
#include "canvas/fixture_tools.h"

#include "canvas/overlay.h"
#include "canvas/tool_words.h"
#include "drawing/drawn_shapes.h"
#include "drawing/live_dimensions.h"
#include "drawing/snap_rules.h"
#include "job/edit_fixtures.h"
#include "job/edit_thing.h"
#include "survey/plan_trace.h"

namespace baywright {
namespace {

/// Half a millimetre: what is smaller was no drag.
constexpr double kNothing = 5e-4;

TypedField sizeField(const char* what, double value, const Vec2& from, const Vec2& to) {
  return {toolWords(what), FieldKind::Size, value, from, to};
}

}  // namespace

void placeFixture(ToolHost& host, const FixtureShape& shape) {
  Document& document = host.document();
  Fixture fixture = host.settings().fixture;
  fixture.shape = shape;
  fixture.planInstrument = drawnInstrument(document.job());
  const QString step = toolWords("Add %1").arg(QString::fromStdString(fixture.name));
  if (!document.change(step, addFixture(document.job(), fixture))) return;
  document.selection().select(newestId(document.job()));
  host.done();
}

void PlanDrag::follow(ToolHost& host, const PointerEvent& event) {
  now_ = event.at;
  marks_.clear();
  if (!event.isFree()) {
    const Job& job = host.document().job();
    Snapped point = snapped(planPoints(job), planLines(job), event.at, host.reach().reach);
    now_ = point.by;
    marks_ = std::move(point.marks);
  }
  host.refresh();
}

void PlanDrag::press(ToolHost& host, const PointerEvent& event) {
  follow(host, event);
  start_ = now_;
}

void PlanDrag::move(ToolHost& host, const PointerEvent& event) {
  follow(host, event);
}

bool PlanDrag::isDragged(const ToolHost& host) const {
  return start_ && dimensionBetween(*start_, now_, {}).value > host.reach().reach / 2;
}

void PlanDrag::paint(Overlay& overlay) const {
  overlay.marks(marks_, now_);
  overlay.cross(now_);
}

// --- boxes

BoxShape FixtureBoxTool::box(const ToolHost& host) const {
  const double heading = roomHeading(host.document().job().room);
  const BoxShape drawn = boxBetween(drag_.start(), drag_.now(), heading);
  if (width_ || depth_) {
    return boxFrom(drag_.start(), drag_.now(), heading,
                   {width_.value_or(drawn.width), depth_.value_or(drawn.depth)});
  }
  if (drag_.isDragged(host)) return drawn;
  const auto* usual = std::get_if<BoxShape>(&host.settings().fixture.shape);
  BoxShape placed = usual ? *usual : BoxShape{};
  placed.centre = drag_.start();
  placed.heading = heading;
  return placed;
}

void FixtureBoxTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button == Qt::LeftButton) drag_.press(host, event);
}

void FixtureBoxTool::move(ToolHost& host, const PointerEvent& event) {
  drag_.move(host, event);
}

void FixtureBoxTool::release(ToolHost& host, const PointerEvent&) {
  if (drag_.isHeld()) accept(host);
}

void FixtureBoxTool::accept(ToolHost& host) {
  if (!drag_.isHeld()) return;
  const BoxShape shape = box(host);
  cancel(host);
  if (shape.width > kNothing && shape.depth > kNothing)
    placeFixture(host, shape);
  else
    host.say(toolWords("Drag from one corner to the opposite one."));
}

void FixtureBoxTool::cancel(ToolHost& host) {
  drag_.clear();
  width_.reset();
  depth_.reset();
  host.refresh();
}

std::vector<TypedField> FixtureBoxTool::fields(const ToolHost& host) const {
  if (!drag_.isHeld()) return {};
  const BoxShape shape = box(host);
  const auto corners = cornersOf(shape);
  return {sizeField("width", shape.width, corners[0], corners[1]),
          sizeField("depth", shape.depth, corners[1], corners[2])};
}

std::optional<Problem> FixtureBoxTool::take(ToolHost& host, std::size_t field, double value) {
  (field == 0 ? width_ : depth_) = value;
  host.refresh();
  return std::nullopt;
}

void FixtureBoxTool::paint(Overlay& overlay, const ToolHost& host) const {
  if (drag_.isHeld()) {
    const auto corners = cornersOf(box(host));
    overlay.area({corners.begin(), corners.end()});
  }
  drag_.paint(overlay);
}

QString FixtureBoxTool::status(const ToolHost& host) const {
  return toolWords("%1: drag from corner to corner, or click for the usual size. Type the sizes while dragging.")
      .arg(QString::fromStdString(host.settings().fixture.name));
}

// --- cylinders

CylinderShape FixtureCylinderTool::cylinder(const ToolHost& host) const {
  CylinderShape shape = cylinderAround(drag_.start(), drag_.now());
  const auto* usual = std::get_if<CylinderShape>(&host.settings().fixture.shape);
  if (radius_)
    shape.radius = *radius_;
  else if (!drag_.isDragged(host))
    shape.radius = usual ? usual->radius : CylinderShape{}.radius;
  return shape;
}

void FixtureCylinderTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button == Qt::LeftButton) drag_.press(host, event);
}

void FixtureCylinderTool::move(ToolHost& host, const PointerEvent& event) {
  drag_.move(host, event);
}

void FixtureCylinderTool::release(ToolHost& host, const PointerEvent&) {
  if (drag_.isHeld()) accept(host);
}

void FixtureCylinderTool::accept(ToolHost& host) {
  if (!drag_.isHeld()) return;
  const CylinderShape shape = cylinder(host);
  cancel(host);
  placeFixture(host, shape);
}

void FixtureCylinderTool::cancel(ToolHost& host) {
  drag_.clear();
  radius_.reset();
  host.refresh();
}

std::vector<TypedField> FixtureCylinderTool::fields(const ToolHost& host) const {
  if (!drag_.isHeld()) return {};
  return {sizeField("radius", cylinder(host).radius, drag_.start(), drag_.now())};
}

std::optional<Problem> FixtureCylinderTool::take(ToolHost& host, std::size_t, double value) {
  radius_ = value;
  host.refresh();
  return std::nullopt;
}

void FixtureCylinderTool::paint(Overlay& overlay, const ToolHost& host) const {
  if (drag_.isHeld()) {
    const CylinderShape shape = cylinder(host);
    overlay.circle(shape.centre, shape.radius, Overlay::Stroke::Draft);
  }
  drag_.paint(overlay);
}

QString FixtureCylinderTool::status(const ToolHost& host) const {
  return toolWords(
             "%1: drag from the middle outward, or click for the usual size. Type the radius while dragging.")
      .arg(QString::fromStdString(host.settings().fixture.name));
}

// --- prisms

void FixturePolygonTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton) return;
  if (chain_.press(host, event) == CornerChain::Click::Closed)
    placeFixture(host, PrismShape{chain_.corners()});
}

bool FixturePolygonTool::key(ToolHost& host, const QKeyEvent& event) {
  if (chain_.isEmpty()) return false;
  if (event.key() == Qt::Key_Backspace || event.key() == Qt::Key_Delete) {
    chain_.removeLast();
    host.refresh();
    return true;
  }
  if (event.key() != Qt::Key_Return && event.key() != Qt::Key_Enter) return false;
  placeFixture(host, PrismShape{chain_.corners()});
  return true;
}

void FixturePolygonTool::cancel(ToolHost& host) {
  chain_.clear();
  host.refresh();
}

QString FixturePolygonTool::status(const ToolHost&) const {
  return toolWords("Click corner by corner or type distances. Backspace: one back. Enter: close.");
}

}  // namespace baywright
