// SPDX-License-Identifier: Apache-2.0
#include "canvas/overlay.h"
#include "canvas/tool_words.h"
#include "canvas/wall_tool.h"
#include "drawing/live_dimensions.h"
#include "drawing/snap_rules.h"
#include "job/edit_room.h"
#include "job/room_geometry.h"
#include "survey/plan_trace.h"

namespace baywright {
namespace {

/// The two walls that meet at a corner, each from its far end to the corner.
std::vector<LiveDimension> wallsAt(const Room& room, Id corner) {
  const auto lines = wallLines(room);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (lines[i].wall != corner) continue;
    const WallLine& before = lines[(i + lines.size() - 1) % lines.size()];
    return {dimensionBetween(before.start, lines[i].start, "length of wall " + before.name),
            dimensionBetween(lines[i].end, lines[i].start, "length of wall " + lines[i].name)};
  }
  return {};
}

}  // namespace

CornerGesture::CornerGesture(ToolHost& host, Id wall)
    : edit_(host.document(), toolWords("Move a corner")),
      wall_(wall),
      rules_(cornerRules(host.document().job().room, wall)),
      before_(host.document().sharedAssessment()) {
  if (const auto line = wallLine(host.document().job().room, wall)) pointer_ = line->start;
}

void CornerGesture::moveTo(ToolHost& host, const PointerEvent& event) {
  pointer_ = event.at;
  if (typed_) return;
  const Snapped point =
      event.isFree() ? Snapped{event.at, {}} : snapped(rules_, event.at, host.reach().reach);
  if (const auto problem = edit_.preview(moveWallCorner(edit_.original(), wall_, point.by)))
    host.say(sentenceOf(*problem));
  else
    marks_ = point.marks;
  host.refresh();
}

std::vector<TypedField> CornerGesture::fields(const ToolHost& host) const {
  std::vector<TypedField> fields;
  for (const LiveDimension& wall : wallsAt(host.document().job().room, wall_))
    fields.push_back({QString::fromStdString(wall.what), FieldKind::Size, wall.value, wall.from, wall.to});
  return fields;
}

std::optional<Problem> CornerGesture::take(ToolHost& host, std::size_t field, double value) {
  const Job& job = host.document().job();
  const auto walls = wallsAt(job.room, wall_);
  if (field >= walls.size()) return std::nullopt;
  const auto corner = cornerAtLength(walls[field].from, walls[field].to, value);
  if (!corner) return corner.error();
  if (const auto problem = edit_.preview(moveWallCorner(job, wall_, *corner))) return problem;
  typed_ = true;
  marks_.clear();
  host.refresh();
  return std::nullopt;
}

void CornerGesture::paint(Overlay& overlay, const ToolHost& host) const {
  overlay.marks(marks_, pointer_);
  paintWorsening(overlay, pointer_, *before_, host.document().assessment());
}

}  // namespace baywright
