// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "canvas/tool.h"

namespace baywright {

/// A click says where somebody stands or sits who does not swing.
class BystanderTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  Vec2 pointer_ = Vec2::Zero();
};

}  // namespace baywright
