// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "canvas/tool.h"
#include "canvas/tool_host.h"
#include "drawing/snap.h"

namespace baywright {

/// Corners that are clicked one after the other on the plan: an outline in the making. The next corner snaps
/// to right angles with the sides so far, to corners and lines that are there and to those that plans show;
/// its distance from the last one can be typed. It closes on its first corner.
class CornerChain {
 public:
  void hover(ToolHost& host, const PointerEvent& event);
  enum class Click { Added, Closed };
  Click press(ToolHost& host, const PointerEvent& event);
  void removeLast();
  void clear();

  const std::vector<Vec2>& corners() const { return corners_; }
  bool isEmpty() const { return corners_.empty(); }
  /// All sides but the closing one were typed.
  bool isTyped() const { return !corners_.empty() && typedSides_ + 1 == corners_.size(); }

  std::vector<TypedField> fields() const;
  std::optional<Problem> take(ToolHost& host, double length);
  /// With the lines of the plans under it, faintly.
  void paint(Overlay& overlay, const ToolHost& host) const;

 private:
  bool closes(const ToolHost& host, const Vec2& at) const;

  std::vector<Vec2> corners_;
  std::size_t typedSides_ = 0;
  std::optional<Vec2> hover_;
  std::vector<SnapMark> marks_;
};

}  // namespace baywright
