// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "canvas/move_gesture.h"
#include "canvas/tool.h"
#include "canvas/turn_gesture.h"

namespace baywright {

/// Selects, moves, turns, nudges and removes. A click selects what is under the pointer, and another one at
/// the same spot what lies below it; a drag moves the selected thing if the pointer is on it, else what a
/// click would select, and the whole drawing where there is nothing to move. A double click, Enter or a digit
/// types the selected thing's distances.
class SelectTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  void release(ToolHost& host, const PointerEvent& event) override;
  void doubleClick(ToolHost& host, const PointerEvent& event) override;
  bool key(ToolHost& host, const QKeyEvent& event) override;
  bool isBusy() const override { return moving_ || turning_; }
  void cancel(ToolHost& host) override;
  std::vector<TypedField> fields(const ToolHost& host) const override;
  std::optional<Problem> take(ToolHost& host, std::size_t field, double value) override;
  void accept(ToolHost& host) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QCursor cursor(const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  enum class Press { None, Waiting, Panning };

  void startDrag(ToolHost& host);
  void click(ToolHost& host);
  void hover(ToolHost& host, const PointerEvent& event);
  void finish(ToolHost& host);
  bool nudge(ToolHost& host, const QKeyEvent& event);
  void remove(ToolHost& host);
  void startTurning(ToolHost& host, const Vec2& from);

  Press press_ = Press::None;
  PointerEvent pressed_;
  QPointF last_;
  Vec2 pointer_ = Vec2::Zero();
  std::vector<Id> under_;             // at the press, best first
  std::optional<QPointF> lastClick_;  // where clicks go round what lies there
  std::optional<MoveGesture> moving_;
  std::optional<TurnGesture> turning_;
};

}  // namespace baywright
