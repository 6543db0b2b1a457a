// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "canvas/tool.h"
#include "drawing/snap.h"
#include "job/scan.h"
#include "survey/plan_trace_lines.h"

namespace baywright {

/// Lays one plan on another by two points that both show: each is clicked on the plan that moves, then on the
/// one that stays. The plan that moves is the selected one, else the one on top.
class ScanAlignTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  bool key(ToolHost& host, const QKeyEvent& event) override;
  bool isBusy() const override { return !points_.empty(); }
  void cancel(ToolHost& host) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  /// Snaps to what the plan shows that is to be clicked now.
  void hover(ToolHost& host, const PointerEvent& event);
  const PlanScan* movingPlan(const ToolHost& host) const;
  /// The plans that show what is to be clicked now.
  std::vector<const PlanScan*> clickedNow(const ToolHost& host) const;
  void lay(ToolHost& host);

  Id moving_;
  std::vector<Vec2> points_;  ///< moving, staying, moving, staying
  Vec2 pointer_ = Vec2::Zero();
  std::vector<SnapMark> marks_;
};

}  // namespace baywright
