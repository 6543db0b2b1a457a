// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "canvas/tool.h"
#include "drawing/snap.h"
#include "job/opening.h"

namespace baywright {

/// Puts the chosen door, window or passage into the wall under the pointer; a click leaves it there,
/// selected, with its distance from the wall's start open for typing.
class OpeningTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  std::optional<Opening> ghost_;
  Vec2 pointer_ = Vec2::Zero();
  std::vector<SnapMark> marks_;
};

}  // namespace baywright
