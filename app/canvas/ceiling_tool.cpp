// SPDX-License-Identifier: Apache-2.0
#include "canvas/ceiling_tool.h"

#include <cmath>
#include <limits>

#include "canvas/overlay.h"
#include "canvas/plan_hints.h"
#include "canvas/tool_host.h"
#include "canvas/tool_words.h"
#include "drawing/snap_rules.h"
#include "drawing/wall_pick.h"
#include "job/edit_record.h"
#include "job/edit_thing.h"
#include "job/enum_names.h"
#include "job/measurement_place.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

const Measurement* heightAt(const ToolHost& host, const Vec2& at) {
  const Job& job = host.document().job();
  const Measurement* nearest = nullptr;
  double best = host.reach().reach;
  for (const Measurement& reading : job.measurements) {
    if (reading.kind != MeasurementKind::CeilingHeight) continue;
    const double distance = (placeOf(job.room, reading) - at).norm();
    if (distance > best) continue;
    best = distance;
    nearest = &reading;
  }
  return nearest;
}

/// Whoever reads one height after the other holds the same instrument.
Instrument lastInstrument(const Job& job) {
  for (auto reading = job.measurements.rbegin(); reading != job.measurements.rend(); ++reading)
    if (reading->kind == MeasurementKind::CeilingHeight) return reading->how;
  return job.measurements.empty() ? Instrument::Tape : job.measurements.back().how;
}

}  // namespace

Measurement CeilingTool::readingAt(const ToolHost& host, const PointerEvent& event) {
  const Job& job = host.document().job();
  marks_.clear();
  hovered_ = {};
  if (const Measurement* there = heightAt(host, event.at)) {
    hovered_ = there->id;
    pointer_ = placeOf(job.room, *there);
    return *there;
  }
  Measurement reading;
  reading.kind = MeasurementKind::CeilingHeight;
  reading.how = lastInstrument(job);
  reading.value = std::numeric_limits<double>::quiet_NaN();
  pointer_ = event.at;
  if (!event.isFree()) {
    std::vector<SnapRule> lines = planLines(job);
    for (SnapRule& rule : hintRules(planHints(host))) lines.push_back(std::move(rule));
    Snapped point = snapped(planPoints(job), lines, event.at, host.reach().reach);
    pointer_ = point.by;
    marks_ = std::move(point.marks);
    constexpr double kOnCorner = 1e-6;  // metres: it snapped to it
    reading.at = cornerAt(job.room, pointer_, kOnCorner).value_or(Id{});
  }
  reading.position = pointer_;
  return reading;
}

void CeilingTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton || isBusy()) return;
  const Job& job = host.document().job();
  if (job.room.walls.empty()) return host.say(toolWords("Draw the room first: a height needs a floor."));
  const Measurement reading = readingAt(host, event);
  if (!reading.id && !isInside(job.room, reading.position))
    return host.say(toolWords("That is outside the room. Click inside it, where the height was taken."));
  reading_ = reading;
  if (reading.id) host.document().selection().select(reading.id);
  host.openEntry(0);
  host.refresh();
}

void CeilingTool::move(ToolHost& host, const PointerEvent& event) {
  if (isBusy()) return;
  readingAt(host, event);
  host.document().selection().hover(hovered_);
  host.refresh();
}

bool CeilingTool::key(ToolHost& host, const QKeyEvent& event) {
  if (event.key() != Qt::Key_Delete && event.key() != Qt::Key_Backspace) return false;
  if (isBusy()) return false;
  if (!hovered_) {
    host.say(toolWords("Point at the height that shall go."));
    return true;
  }
  Document& document = host.document();
  document.change(toolWords("Remove a ceiling height"), removeThing(document.job(), hovered_));
  hovered_ = {};
  host.refresh();
  return true;
}

void CeilingTool::cancel(ToolHost& host) {
  reading_.reset();
  marks_.clear();
  hovered_ = {};
  host.refresh();
}

std::vector<LiveDimension> CeilingTool::offsets(const ToolHost& host) const {
  // A corner is a place of its own.
  if (!reading_ || reading_->at) return {};
  return wallDistances(host.document().job().room, reading_->position);
}

std::vector<TypedField> CeilingTool::fields(const ToolHost& host) const {
  if (!reading_) return {};
  const Vec2 at = placeOf(host.document().job().room, *reading_);
  std::vector<TypedField> fields{
      {toolWords("floor to ceiling, by %1").arg(toolWords(enumName(reading_->how).data())), FieldKind::Size,
       reading_->value, at, at}};
  for (const LiveDimension& offset : offsets(host))
    fields.push_back(
        {QString::fromStdString(offset.what), FieldKind::Length, offset.value, offset.from, offset.to});
  return fields;
}

std::optional<Problem> CeilingTool::take(ToolHost& host, std::size_t field, double value) {
  if (!reading_) return std::nullopt;
  if (field == 0) {
    reading_->value = value;
    return std::nullopt;
  }
  const auto distances = offsets(host);
  if (field > distances.size()) return std::nullopt;
  const LiveDimension& offset = distances[field - 1];
  const Vec2 there = pointWith(offset, reading_->position, value);
  if (!isInside(host.document().job().room, there))
    return Problem{"That is outside the room.", {}, "Type a shorter distance."};
  reading_->position = there;
  host.refresh();
  return std::nullopt;
}

void CeilingTool::accept(ToolHost& host) {
  if (!reading_) return;
  if (!std::isfinite(reading_->value)) return host.openEntry(0);
  Document& document = host.document();
  const bool isNew = !reading_->id;
  Result<Job> edited =
      isNew ? addMeasurement(document.job(), *reading_) : setMeasurement(document.job(), *reading_);
  const QString step = isNew ? toolWords("Read a ceiling height") : toolWords("Correct a ceiling height");
  // A refused height stays, to be typed again.
  if (!document.change(step, std::move(edited))) return host.openEntry(0);
  document.selection().select(isNew ? newestId(document.job()) : reading_->id);
  cancel(host);
}

void CeilingTool::paint(Overlay& overlay, const ToolHost& host) const {
  if (!reading_) {
    paintHints(overlay, planHints(host));
    overlay.marks(marks_, pointer_);
  }
  overlay.cross(reading_ ? placeOf(host.document().job().room, *reading_) : pointer_);
}

QString CeilingTool::status(const ToolHost&) const {
  if (reading_) return toolWords("Type the height. Tab: the distances from the walls. Enter takes it.");
  return toolWords(
      "Click where a ceiling height was taken, or on one to correct it. Delete takes away the one under the "
      "pointer. Ctrl: no snapping.");
}

}  // namespace baywright
