// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "canvas/corner_chain.h"
#include "canvas/tool.h"

namespace baywright {

/// Adds the fixture of the settings with this shape and selects it.
void placeFixture(ToolHost& host, const FixtureShape& shape);

/// A point of the plan that snaps, pressed and dragged to a second one.
class PlanDrag {
 public:
  void press(ToolHost& host, const PointerEvent& event);
  void move(ToolHost& host, const PointerEvent& event);
  void clear() { *this = {}; }
  bool isHeld() const { return start_.has_value(); }
  /// True once the pointer has gone farther than a click.
  bool isDragged(const ToolHost& host) const;
  const Vec2& start() const { return *start_; }
  const Vec2& now() const { return now_; }
  void paint(Overlay& overlay) const;

 private:
  void follow(ToolHost& host, const PointerEvent& event);

  std::optional<Vec2> start_;
  Vec2 now_ = Vec2::Zero();
  std::vector<SnapMark> marks_;
};

/// Drags a box along the room; a click places one of the usual size. Width and depth can be typed.
class FixtureBoxTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  void release(ToolHost& host, const PointerEvent& event) override;
  bool isBusy() const override { return drag_.isHeld(); }
  void cancel(ToolHost& host) override;
  std::vector<TypedField> fields(const ToolHost& host) const override;
  std::optional<Problem> take(ToolHost& host, std::size_t field, double value) override;
  void accept(ToolHost& host) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  BoxShape box(const ToolHost& host) const;

  PlanDrag drag_;
  std::optional<double> width_;  // typed
  std::optional<double> depth_;
};

/// Drags a radius about a centre; a click places one of the usual size. The radius can be typed.
class FixtureCylinderTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  void release(ToolHost& host, const PointerEvent& event) override;
  bool isBusy() const override { return drag_.isHeld(); }
  void cancel(ToolHost& host) override;
  std::vector<TypedField> fields(const ToolHost& host) const override;
  std::optional<Problem> take(ToolHost& host, std::size_t field, double value) override;
  void accept(ToolHost& host) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  CylinderShape cylinder(const ToolHost& host) const;

  PlanDrag drag_;
  std::optional<double> radius_;  // typed
};

/// Clicks the corners of a prism.
class FixturePolygonTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override { chain_.hover(host, event); }
  bool key(ToolHost& host, const QKeyEvent& event) override;
  bool isBusy() const override { return !chain_.isEmpty(); }
  void cancel(ToolHost& host) override;
  std::vector<TypedField> fields(const ToolHost&) const override { return chain_.fields(); }
  std::optional<Problem> take(ToolHost& host, std::size_t, double value) override {
    return chain_.take(host, value);
  }
  void paint(Overlay& overlay, const ToolHost& host) const override { chain_.paint(overlay, host); }
  QString status(const ToolHost& host) const override;

 private:
  CornerChain chain_;
};

}  // namespace baywright
