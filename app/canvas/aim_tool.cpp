// SPDX-License-Identifier: Apache-2.0
#include "canvas/aim_tool.h"

#include "canvas/overlay.h"
#include "canvas/tool_words.h"

namespace baywright {
namespace {

Id projectorOf(const ToolHost& host) {
  return host.document().job().option().kit.projector.id;
}

bool isOn(const ToolHost& host, const Vec2& handle, const Vec2& at) {
  return (handle - at).norm() <= 1.5 * host.reach().reach;
}

}  // namespace

AimTool::BeamTurn::BeamTurn(ToolHost& host, const QString& text, const Vec2& start, const Vec2& middle)
    : edit(host.document(), text),
      before(host.document().sharedAssessment()),
      from(start),
      pointer(start),
      target{middle, toolWords("the screen's middle").toStdString()} {}

void AimTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton || isBusy()) return;
  const auto handles = beamHandles(host.kind(), host.document().job());
  if (!handles) {
    host.say(toolWords("There is no picture to aim: the job has no projector, or it looks past the screen."));
    return;
  }
  host.document().selection().select(projectorOf(host));
  const QString text = toolWords("Aim the projector");
  if (isOn(host, handles->lens, event.at) && host.kind() != ViewKind::ScreenFace)
    lens_.emplace(host, projectorOf(host), event.at);
  else if (isOn(host, handles->centre, event.at))
    beam_.emplace(host, text, handles->centre, handles->screenMiddle);
}

void AimTool::move(ToolHost& host, const PointerEvent& event) {
  if (lens_) lens_->moveTo(host, event);
  if (beam_) turnTo(host, event);
}

void AimTool::turnTo(ToolHost& host, const PointerEvent& event) {
  beam_->pointer = event.at;
  const Snapped point = event.isFree()
                            ? Snapped{event.at, {}}
                            : snapped(std::span(&beam_->target, 1), {}, event.at, host.reach().reach);
  if (const auto problem =
          beam_->edit.preview(beamTurned(host.kind(), beam_->edit.original(), beam_->from, point.by)))
    host.say(sentenceOf(*problem));
  else
    beam_->marks = point.marks;
  host.refresh();
}

void AimTool::release(ToolHost& host, const PointerEvent&) {
  accept(host);
}

void AimTool::doubleClick(ToolHost& host, const PointerEvent&) {
  cancel(host);
  Document& document = host.document();
  document.change(toolWords("Aim the projector at the screen"), beamAimedAtScreen(document.job()));
}

void AimTool::accept(ToolHost& host) {
  if (lens_) lens_->commit();
  if (beam_) beam_->edit.commit();
  cancel(host);
}

void AimTool::cancel(ToolHost& host) {
  lens_.reset();
  beam_.reset();
  host.refresh();
}

std::vector<TypedField> AimTool::fields(const ToolHost& host) const {
  return lens_ ? lens_->fields(host) : std::vector<TypedField>{};
}

std::optional<Problem> AimTool::take(ToolHost& host, std::size_t field, double value) {
  return lens_ ? lens_->take(host, field, value) : std::nullopt;
}

void AimTool::paint(Overlay& overlay, const ToolHost& host) const {
  const auto handles = beamHandles(host.kind(), host.document().job());
  if (!handles) return;
  if (host.kind() != ViewKind::ScreenFace) {
    overlay.line(handles->lens, handles->centre, Overlay::Stroke::Guide);
    overlay.handle(handles->lens, Overlay::Handle::Square);
  }
  overlay.cross(handles->screenMiddle);
  overlay.handle(handles->centre, Overlay::Handle::Round);
  if (lens_) lens_->paint(overlay, host);
  if (!beam_) return;
  overlay.marks(beam_->marks, beam_->pointer);
  paintWorsening(overlay, beam_->pointer, *beam_->before, host.document().assessment());
}

QString AimTool::status(const ToolHost&) const {
  return toolWords(
      "Drag the square to move the lens, the ring to turn it. Double-click aims it at the screen.");
}

}  // namespace baywright
