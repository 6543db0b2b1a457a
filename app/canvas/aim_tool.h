// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "canvas/move_gesture.h"
#include "drawing/beam_aim.h"

namespace baywright {

/// Aims the projector: drags the lens, or the middle of its picture to turn it. A double click sets shift,
/// turn and zoom so that the picture fills the screen as well as it can from there.
class AimTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  void release(ToolHost& host, const PointerEvent& event) override;
  void doubleClick(ToolHost& host, const PointerEvent& event) override;
  bool isBusy() const override { return lens_ || beam_; }
  void cancel(ToolHost& host) override;
  std::vector<TypedField> fields(const ToolHost& host) const override;
  std::optional<Problem> take(ToolHost& host, std::size_t field, double value) override;
  void accept(ToolHost& host) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  struct BeamTurn {
    BeamTurn(ToolHost& host, const QString& text, const Vec2& from, const Vec2& target);

    OpenEdit edit;
    std::shared_ptr<const Assessment> before;
    Vec2 from;
    Vec2 pointer;
    SnapPoint target;  // the screen's middle
    std::vector<SnapMark> marks;
  };
  void turnTo(ToolHost& host, const PointerEvent& event);

  std::optional<MoveGesture> lens_;
  std::optional<BeamTurn> beam_;
};

}  // namespace baywright
