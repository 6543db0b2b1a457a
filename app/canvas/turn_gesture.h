// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>

#include "canvas/tool.h"
#include "canvas/tool_host.h"
#include "drawing/turn.h"
#include "editing/open_edit.h"

namespace baywright {

/// A thing that turns after the pointer about its own position, on the plan; it snaps to walls and to steps
/// of 15 degrees, and the angle that it has turned by can be typed. Otherwise as MoveGesture.
class TurnGesture {
 public:
  TurnGesture(ToolHost& host, Id thing, const Turnable& turnable, const Vec2& from);

  void moveTo(ToolHost& host, const PointerEvent& event);
  std::vector<TypedField> fields(const ToolHost& host) const;
  std::optional<Problem> take(ToolHost& host, double turnedBy);
  void commit() { edit_.commit(); }
  void paint(Overlay& overlay, const ToolHost& host) const;

 private:
  OpenEdit edit_;
  Id thing_;
  Turnable start_;
  std::shared_ptr<const Assessment> before_;
  Vec2 from_;
  Vec2 pointer_;
  double turned_ = 0;
  QString snap_;
  bool typed_ = false;
};

}  // namespace baywright
