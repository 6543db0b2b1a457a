// SPDX-License-Identifier: Apache-2.0
#include "canvas/move_gesture.h"

#include "canvas/overlay.h"
#include "canvas/tool_words.h"
#include "drawing/live_dimensions.h"
#include "drawing/snap_rules.h"
#include "drawing/view_move.h"
#include "drawing/worsening.h"

namespace baywright {
namespace {

const BayPose& bayOf(const Job& job) {
  return job.option().placement.bay;
}

}  // namespace

std::vector<TypedField> dimensionFields(const DrawnView& view, const Job& job, Id thing) {
  std::vector<TypedField> fields;
  for (const LiveDimension& dimension : liveDimensions(view, job, thing)) {
    fields.push_back({QString::fromStdString(dimension.what), FieldKind::Length, dimension.value,
                      dimension.from, dimension.to});
  }
  return fields;
}

void paintWorsening(Overlay& overlay, const Vec2& pointer, const Assessment& before, const Assessment& now) {
  if (const Finding* worst = worsening(before, now)) overlay.finding(pointer, *worst);
}

MoveGesture::MoveGesture(ToolHost& host, Id thing, const Vec2& from)
    : edit_(host.document(), stepText("Move %1", host.document().job(), thing)),
      thing_(thing),
      rules_(moveRules(host.view(), host.document().job(), thing)),
      before_(host.document().sharedAssessment()),
      from_(from),
      pointer_(from) {}

Vec2 MoveGesture::shift(const ToolHost& host) const {
  return viewShift(host.kind(), bayOf(edit_.original()), bayOf(host.document().job()));
}

void MoveGesture::moveTo(ToolHost& host, const PointerEvent& event) {
  pointer_ = event.at;
  if (typed_) return;
  const Vec2 by = event.at - shift(host) - from_;
  const Snapped move = event.isFree() ? Snapped{by, {}} : snapped(rules_, by, host.reach().reach);
  if (const auto problem = edit_.preview(moveInView(host.view(), edit_.original(), thing_, move.by))) {
    host.say(sentenceOf(*problem));
  } else {
    marks_ = move.marks;
    // The drawing may have moved with the bay.
    pointer_ = from_ + by + shift(host);
    for (SnapMark& mark : marks_) {
      mark.line.a += shift(host);
      mark.line.b += shift(host);
    }
  }
  host.refresh();
}

std::vector<TypedField> MoveGesture::fields(const ToolHost& host) const {
  return dimensionFields(host.view(), host.document().job(), thing_);
}

std::optional<Problem> MoveGesture::take(ToolHost& host, std::size_t field, double value) {
  const Job& job = host.document().job();
  const auto dimensions = liveDimensions(host.view(), job, thing_);
  if (field >= dimensions.size()) return std::nullopt;
  const auto problem = edit_.preview(withDimension(host.view(), job, thing_, dimensions[field], value));
  if (problem) return problem;
  typed_ = true;
  marks_.clear();
  host.refresh();
  return std::nullopt;
}

void MoveGesture::paint(Overlay& overlay, const ToolHost& host) const {
  overlay.marks(marks_, pointer_);
  paintWorsening(overlay, pointer_, *before_, host.document().assessment());
}

}  // namespace baywright
