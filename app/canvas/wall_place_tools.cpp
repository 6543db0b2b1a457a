// SPDX-License-Identifier: Apache-2.0
#include "canvas/wall_place_tools.h"

#include "canvas/overlay.h"
#include "canvas/tool_host.h"
#include "canvas/tool_words.h"
#include "job/edit_fixtures.h"
#include "job/edit_openings.h"
#include "job/edit_thing.h"
#include "units/length_text.h"

namespace baywright {
namespace {

/// The order of the typed fields.
enum Field : std::size_t { kWidth, kHeight, kLeft, kLow };

std::optional<WallLine> wallOf(const ToolHost& host) {
  return wallLine(host.document().job().room, host.view().wall);
}

void addAndSelect(ToolHost& host, const std::string& name, const Result<Job>& edited) {
  Document& document = host.document();
  if (!document.change(toolWords("Add %1").arg(QString::fromStdString(name)), edited)) return;
  document.selection().select(newestId(document.job()));
  host.done();
}

/// A corner that is drawn, as a move from where the pointer is.
Snapped cornerAt(const ToolHost& host, const PointerEvent& event) {
  const auto rules = faceRules(host.document().job(), host.view().wall, FaceBox(event.at), {});
  return snapped(rules, Vec2::Zero(), event.isFree() ? 0 : host.reach().reach);
}

/// What stands on the floor is moved along the wall only.
void keepLevel(std::vector<SnapRule>& rules) {
  std::erase_if(rules, [](const SnapRule& rule) { return rule.normal.x() == 0; });
}

}  // namespace

bool WallPlaceTool::isDragged(const ToolHost& host) const {
  return start_ && now_ && dimensionBetween(*start_, *now_, {}).value > host.reach().reach / 2;
}

void WallPlaceTool::follow(ToolHost& host, const PointerEvent& event) {
  now_ = event.at;
  marks_.clear();
  const auto wall = wallOf(host);
  if (!wall) return;
  const double height = usualHeight(host);
  if (isDragged(host)) {
    const Snapped corner = cornerAt(host, event);
    now_ = event.at + corner.by;
    marks_ = corner.marks;
  } else if (!start_) {
    FaceBox box = usualAt(host, *wall, event.at);
    auto rules = faceRules(host.document().job(), wall->wall, box, {}, height);
    if (height <= 0) keepLevel(rules);
    const Snapped move = snapped(rules, Vec2::Zero(), event.isFree() ? 0 : host.reach().reach);
    usual_ = box.translate(move.by);
    marks_ = move.marks;
  }
  host.refresh();
}

void WallPlaceTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton) return;
  if (!wallOf(host)) {
    host.say(toolWords("There is no wall yet. Draw the room first."));
    return;
  }
  follow(host, event);
  start_ = event.at + cornerAt(host, event).by;
  now_ = start_;
}

void WallPlaceTool::move(ToolHost& host, const PointerEvent& event) {
  follow(host, event);
}

void WallPlaceTool::release(ToolHost& host, const PointerEvent&) {
  if (start_) accept(host);
}

void WallPlaceTool::accept(ToolHost& host) {
  const auto wall = wallOf(host);
  const auto box = boxNow(host);
  cancel(host);
  if (wall && box) place(host, *wall, *box);
}

void WallPlaceTool::cancel(ToolHost& host) {
  start_.reset();
  now_.reset();
  usual_.reset();
  typed_ = {};
  marks_.clear();
  host.refresh();
}

std::optional<FaceBox> WallPlaceTool::boxNow(const ToolHost& host) const {
  if (isDragged(host)) return boxOnFace(*start_, *now_, typed_);
  if (usual_) return withTyped(*usual_, typed_);
  return std::nullopt;
}

std::vector<TypedField> WallPlaceTool::fields(const ToolHost& host) const {
  const auto box = boxNow(host);
  if (!start_ || !box) return {};
  const Vec2 low = box->min();
  const Vec2 high = box->max();
  const Vec2 middle = box->center();
  return {
      {toolWords("width"), FieldKind::Size, box->sizes().x(), {low.x(), high.y()}, high},
      {toolWords("height"), FieldKind::Size, box->sizes().y(), {high.x(), low.y()}, high},
      {toolWords("from the left end"), FieldKind::Length, low.x(), {0, middle.y()}, {low.x(), middle.y()}},
      {toolWords("above the floor"), FieldKind::Length, low.y(), {middle.x(), 0}, {middle.x(), low.y()}}};
}

std::optional<Problem> WallPlaceTool::take(ToolHost& host, std::size_t field, double value) {
  std::optional<double>* const figures[] = {&typed_.width, &typed_.height, &typed_.left, &typed_.low};
  if ((field == kWidth || field == kHeight) && value <= 0)
    return Problem{"A size must be more than nothing.", {}, "Type a length like 0.9 m."};
  if (field >= std::size(figures)) return std::nullopt;
  const TypedFace before = typed_;
  *figures[field] = value;
  const auto wall = wallOf(host);
  const auto box = boxNow(host);
  if (wall && box && (field == kWidth || field == kLeft) && !liesOnFace(*wall, *box)) {
    typed_ = before;
    return Problem{
        "That reaches past the wall's end.",
        {},
        "Type less: the wall is " + formatLength(wall->length, host.document().job().units) + " long."};
  }
  host.refresh();
  return std::nullopt;
}

void WallPlaceTool::paint(Overlay& overlay, const ToolHost& host) const {
  const auto box = boxNow(host);
  if (box) {
    overlay.area(
        {box->min(), {box->max().x(), box->min().y()}, box->max(), {box->min().x(), box->max().y()}});
    if (!start_) {
      const auto dimensions =
          faceDimensions(host.document().job().room, host.view().wall, *box, usualHeight(host) > 0);
      for (const LiveDimension& each : dimensions)
        overlay.dimension({{}, FieldKind::Length, each.value, each.from, each.to});
    }
  }
  if (now_) overlay.marks(marks_, *now_);
}

QString WallPlaceTool::status(const ToolHost& host) const {
  return toolWords(
             "%1: click where it shall be, or drag from corner to corner. Type sizes while dragging. "
             "Ctrl: no snapping.")
      .arg(QString::fromStdString(placedName(host)));
}

// --- openings

FaceBox WallOpeningTool::usualAt(const ToolHost& host, const WallLine& wall, const Vec2& at) const {
  return usualBox(wall, host.settings().opening, at);
}

double WallOpeningTool::usualHeight(const ToolHost& host) const {
  return host.settings().opening.sill.value;
}

const std::string& WallOpeningTool::placedName(const ToolHost& host) const {
  return host.settings().opening.name;
}

void WallOpeningTool::place(ToolHost& host, const WallLine& wall, const FaceBox& box) {
  const Job& job = host.document().job();
  const Opening opening = openingOnFace(wall, host.settings().opening, box, drawnOnFaceBy(job));
  addAndSelect(host, opening.name, addOpening(job, opening));
}

// --- fixtures

FaceBox WallFixtureTool::usualAt(const ToolHost& host, const WallLine& wall, const Vec2& at) const {
  return usualBox(wall, host.settings().fixture, at);
}

double WallFixtureTool::usualHeight(const ToolHost& host) const {
  return host.settings().fixture.bottom.value;
}

const std::string& WallFixtureTool::placedName(const ToolHost& host) const {
  return host.settings().fixture.name;
}

void WallFixtureTool::place(ToolHost& host, const WallLine& wall, const FaceBox& box) {
  const Job& job = host.document().job();
  const Fixture fixture = fixtureOnFace(wall, host.settings().fixture, box, drawnOnFaceBy(job));
  addAndSelect(host, fixture.name, addFixture(job, fixture));
}

}  // namespace baywright
