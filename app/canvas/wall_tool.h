// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "canvas/move_gesture.h"
#include "canvas/tool.h"

namespace baywright {

/// One corner of the room on its way.
class CornerGesture {
 public:
  CornerGesture(ToolHost& host, Id wall);

  void moveTo(ToolHost& host, const PointerEvent& event);
  std::vector<TypedField> fields(const ToolHost& host) const;
  std::optional<Problem> take(ToolHost& host, std::size_t field, double value);
  void commit() { edit_.commit(); }
  void paint(Overlay& overlay, const ToolHost& host) const;

 private:
  OpenEdit edit_;
  Id wall_;
  std::vector<SnapRule> rules_;
  std::shared_ptr<const Assessment> before_;
  Vec2 pointer_ = Vec2::Zero();
  std::vector<SnapMark> marks_;
  bool typed_ = false;
};

/// Mends the room: drags a wall along its normal or a corner anywhere, types a wall's length after a click on
/// it, adds a corner by a double click, takes one away by Delete.
class WallTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  void release(ToolHost& host, const PointerEvent& event) override;
  void doubleClick(ToolHost& host, const PointerEvent& event) override;
  bool key(ToolHost& host, const QKeyEvent& event) override;
  bool isBusy() const override { return wallMove_ || cornerMove_; }
  void cancel(ToolHost& host) override;
  std::vector<TypedField> fields(const ToolHost& host) const override;
  std::optional<Problem> take(ToolHost& host, std::size_t field, double value) override;
  void accept(ToolHost& host) override { finish(host); }
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QCursor cursor(const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  struct Grip {
    Id wall;
    bool isCorner = false;  ///< the corner where the wall starts
  };
  static std::optional<Grip> gripAt(const ToolHost& host, const Vec2& at);
  void startDrag(ToolHost& host);
  void finish(ToolHost& host);

  std::optional<Grip> hovered_;
  std::optional<Grip> pressed_;
  Id picked_;  // whose length is being typed
  PointerEvent from_;
  std::optional<MoveGesture> wallMove_;
  std::optional<CornerGesture> cornerMove_;
};

}  // namespace baywright
