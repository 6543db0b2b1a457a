// SPDX-License-Identifier: Apache-2.0
#include "canvas/bystander_tool.h"

#include "canvas/overlay.h"
#include "canvas/tool_host.h"
#include "canvas/tool_words.h"
#include "job/edit_people.h"
#include "job/edit_thing.h"

namespace baywright {

void BystanderTool::move(ToolHost& host, const PointerEvent& event) {
  pointer_ = event.at;
  host.refresh();
}

void BystanderTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton) return;
  Document& document = host.document();
  Bystander person;
  person.position = event.at;
  if (!document.change(toolWords("Add a bystander"), addBystander(document.job(), person))) return;
  document.selection().select(newestId(document.job()));
  host.done();
}

void BystanderTool::paint(Overlay& overlay, const ToolHost&) const {
  overlay.circle(pointer_, Bystander{}.radius, Overlay::Stroke::Draft);
}

QString BystanderTool::status(const ToolHost&) const {
  return toolWords("Click where somebody stands or sits who does not swing.");
}

}  // namespace baywright
