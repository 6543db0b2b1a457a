// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "canvas/tool.h"
#include "drawing/wall_face.h"

namespace baywright {

/// Draws a rectangle on the elevation of a wall, or clicks where one of the usual size shall be. Sizes and
/// place can be typed while the button is held.
class WallPlaceTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  void release(ToolHost& host, const PointerEvent& event) override;
  bool isBusy() const override { return start_.has_value(); }
  void cancel(ToolHost& host) override;
  std::vector<TypedField> fields(const ToolHost& host) const override;
  std::optional<Problem> take(ToolHost& host, std::size_t field, double value) override;
  void accept(ToolHost& host) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  /// The usual size about a point.
  virtual FaceBox usualAt(const ToolHost& host, const WallLine& wall, const Vec2& at) const = 0;
  virtual double usualHeight(const ToolHost& host) const = 0;
  virtual const std::string& placedName(const ToolHost& host) const = 0;
  virtual void place(ToolHost& host, const WallLine& wall, const FaceBox& box) = 0;

  bool isDragged(const ToolHost& host) const;
  std::optional<FaceBox> boxNow(const ToolHost& host) const;
  void follow(ToolHost& host, const PointerEvent& event);

  std::optional<Vec2> start_;
  std::optional<Vec2> now_;      ///< where a corner, or the middle of what has the usual size, is drawn
  std::optional<FaceBox> usual_;  ///< what a click would place, snapped
  TypedFace typed_;
  std::vector<SnapMark> marks_;
};

/// Puts the opening of the settings into the wall.
class WallOpeningTool : public WallPlaceTool {
 private:
  FaceBox usualAt(const ToolHost& host, const WallLine& wall, const Vec2& at) const override;
  double usualHeight(const ToolHost& host) const override;
  const std::string& placedName(const ToolHost& host) const override;
  void place(ToolHost& host, const WallLine& wall, const FaceBox& box) override;
};

/// Puts the fixture of the settings with its back against the wall.
class WallFixtureTool : public WallPlaceTool {
 private:
  FaceBox usualAt(const ToolHost& host, const WallLine& wall, const Vec2& at) const override;
  double usualHeight(const ToolHost& host) const override;
  const std::string& placedName(const ToolHost& host) const override;
  void place(ToolHost& host, const WallLine& wall, const FaceBox& box) override;
};

}  // namespace baywright
