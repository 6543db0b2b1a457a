// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "canvas/tool.h"
#include "drawing/snap.h"

namespace baywright {

/// Shows the distance between two points; nothing in the job changes. On the plan the points snap.
class MeasureTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  void release(ToolHost& host, const PointerEvent& event) override;
  bool key(ToolHost& host, const QKeyEvent& event) override;
  bool isBusy() const override { return from_ && !to_; }
  void cancel(ToolHost& host) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  Snapped snap(const ToolHost& host, const PointerEvent& event) const;

  std::optional<Vec2> from_;
  std::optional<Vec2> to_;  // fixed; else the pointer
  Vec2 pointer_ = Vec2::Zero();
  QPointF pressedAt_;
  std::vector<SnapMark> marks_;
};

}  // namespace baywright
