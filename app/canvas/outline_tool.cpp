// SPDX-License-Identifier: Apache-2.0
#include "canvas/outline_tool.h"

#include "canvas/tool_words.h"
#include "job/edit_room.h"
#include "survey/plan_trace.h"

namespace baywright {

void OutlineTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton) return;
  if (chain_.press(host, event) == CornerChain::Click::Closed) finish(host);
}

bool OutlineTool::key(ToolHost& host, const QKeyEvent& event) {
  if (chain_.isEmpty()) return false;
  if (event.key() == Qt::Key_Backspace || event.key() == Qt::Key_Delete) {
    chain_.removeLast();
    host.refresh();
    return true;
  }
  if (event.key() != Qt::Key_Return && event.key() != Qt::Key_Enter) return false;
  finish(host);
  return true;
}

void OutlineTool::cancel(ToolHost& host) {
  chain_.clear();
  host.refresh();
}

void OutlineTool::finish(ToolHost& host) {
  Document& document = host.document();
  const Instrument how = chain_.isTyped() ? Instrument::Tape : drawnInstrument(document.job());
  // A refused outline stays, to be mended corner by corner.
  if (!document.change(toolWords("Draw the room"), setRoomOutline(document.job(), chain_.corners(), how)))
    return;
  chain_.clear();
  host.done();
}

QString OutlineTool::status(const ToolHost&) const {
  if (chain_.isEmpty()) return toolWords("Click the room's first corner.");
  return toolWords(
      "Click the next corner or type its distance. Backspace: one back. Enter: close. Ctrl: no snapping.");
}

}  // namespace baywright
