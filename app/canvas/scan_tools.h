// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "canvas/tool.h"
#include "drawing/snap.h"
#include "job/scan.h"

namespace baywright {

/// The plan that the scan tools work on: the selected one, else the visible one on top. Null: there is none.
const PlanScan* scanInHand(const ToolHost& host);

/// Sets a plan's scale: two clicks, which snap to the ends of lines in the picture, then the true length
/// between them. A sheet that lay a little askew is levelled by the same line.
class ScanScaleTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  bool isBusy() const override { return !points_.empty(); }
  void cancel(ToolHost& host) override;
  std::vector<TypedField> fields(const ToolHost& host) const override;
  std::optional<Problem> take(ToolHost& host, std::size_t field, double value) override;
  void accept(ToolHost& host) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  void hover(ToolHost& host, const PointerEvent& event);

  std::vector<Vec2> points_;
  Vec2 pointer_ = Vec2::Zero();
  std::vector<SnapMark> marks_;
};

/// Straightens a photographed plan: four corners of a rectangle, then two of its true lengths.
class ScanStraightenTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  bool key(ToolHost& host, const QKeyEvent& event) override;
  bool isBusy() const override { return !points_.empty(); }
  void cancel(ToolHost& host) override;
  std::vector<TypedField> fields(const ToolHost& host) const override;
  std::optional<Problem> take(ToolHost& host, std::size_t field, double value) override;
  void accept(ToolHost& host) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  void hover(ToolHost& host, const PointerEvent& event);

  std::vector<Vec2> points_;
  std::optional<double> first_;
  std::optional<double> second_;
  Vec2 pointer_ = Vec2::Zero();
  std::vector<SnapMark> marks_;
};

}  // namespace baywright
