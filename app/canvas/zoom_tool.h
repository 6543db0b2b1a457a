// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "canvas/tool.h"

namespace baywright {

/// Drags a box over what shall fill the view.
class ZoomTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  void release(ToolHost& host, const PointerEvent& event) override;
  bool isBusy() const override { return from_.has_value(); }
  void cancel(ToolHost& host) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  std::optional<Vec2> from_;
  Vec2 to_ = Vec2::Zero();
};

}  // namespace baywright
