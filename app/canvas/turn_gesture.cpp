// SPDX-License-Identifier: Apache-2.0
#include "canvas/turn_gesture.h"

#include "canvas/move_gesture.h"
#include "canvas/overlay.h"
#include "canvas/tool_words.h"

namespace baywright {

TurnGesture::TurnGesture(ToolHost& host, Id thing, const Turnable& turnable, const Vec2& from)
    : edit_(host.document(), stepText("Turn %1", host.document().job(), thing)),
      thing_(thing),
      start_(turnable),
      before_(host.document().sharedAssessment()),
      from_(from),
      pointer_(from) {}

void TurnGesture::moveTo(ToolHost& host, const PointerEvent& event) {
  pointer_ = event.at;
  if (typed_) return;
  const double heading = headingAfterDrag(start_, from_, event.at);
  const SnappedHeading snap =
      event.isFree() ? SnappedHeading{heading, {}} : snappedHeading(edit_.original(), heading);
  if (const auto problem = edit_.preview(turnedTo(edit_.original(), thing_, snap.heading))) {
    host.say(sentenceOf(*problem));
  } else {
    turned_ = snap.heading - start_.heading;
    snap_ = QString::fromStdString(snap.what);
  }
  host.refresh();
}

std::vector<TypedField> TurnGesture::fields(const ToolHost&) const {
  return {{toolWords("turned by"), FieldKind::Angle, turned_, start_.pivot, start_.pivot}};
}

std::optional<Problem> TurnGesture::take(ToolHost& host, double turnedBy) {
  const auto problem = edit_.preview(turnedTo(edit_.original(), thing_, start_.heading + turnedBy));
  if (problem) return problem;
  typed_ = true;
  turned_ = turnedBy;
  snap_.clear();
  host.refresh();
  return std::nullopt;
}

void TurnGesture::paint(Overlay& overlay, const ToolHost& host) const {
  overlay.line(start_.pivot, pointer_, Overlay::Stroke::Guide);
  if (!snap_.isEmpty()) overlay.note(pointer_, snap_);
  paintWorsening(overlay, pointer_, *before_, host.document().assessment());
}

}  // namespace baywright
