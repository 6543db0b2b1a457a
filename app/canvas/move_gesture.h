// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>

#include "canvas/tool.h"
#include "canvas/tool_host.h"
#include "drawing/snap.h"
#include "editing/open_edit.h"

namespace baywright {

/// A thing on its way: it follows the pointer and snaps, its distances show and can be typed. A typed
/// distance holds against the pointer until the gesture ends. Destroyed without commit() it leaves no trace.
class MoveGesture {
 public:
  /// `from`: where the pointer took hold, in the drawing of now.
  MoveGesture(ToolHost& host, Id thing, const Vec2& from);

  void moveTo(ToolHost& host, const PointerEvent& event);
  std::vector<TypedField> fields(const ToolHost& host) const;
  std::optional<Problem> take(ToolHost& host, std::size_t field, double value);
  void commit() { edit_.commit(); }
  void paint(Overlay& overlay, const ToolHost& host) const;

 private:
  Vec2 shift(const ToolHost& host) const;

  OpenEdit edit_;
  Id thing_;
  std::vector<SnapRule> rules_;
  std::shared_ptr<const Assessment> before_;
  Vec2 from_;
  Vec2 pointer_;
  std::vector<SnapMark> marks_;
  bool typed_ = false;
};

/// Live dimensions of a thing as fields.
std::vector<TypedField> dimensionFields(const DrawnView& view, const Job& job, Id thing);

/// The finding that an edit in progress makes worst, beside the pointer.
void paintWorsening(Overlay& overlay, const Vec2& pointer, const Assessment& before, const Assessment& now);

}  // namespace baywright
