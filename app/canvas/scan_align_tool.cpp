// SPDX-License-Identifier: Apache-2.0
#include "canvas/scan_align_tool.h"

#include <algorithm>
#include <cmath>

#include "canvas/overlay.h"
#include "canvas/plan_hints.h"
#include "canvas/scan_tools.h"
#include "canvas/tool_words.h"
#include "job/edit_scans.h"
#include "job/find.h"
#include "survey/line_align.h"
#include "units/angle_text.h"
#include "units/quantity_text.h"

namespace baywright {
namespace {

QString nameOf(const PlanScan& scan) {
  return scan.name.empty() ? toolWords("the plan on top")
                           : toolWords("\"%1\"").arg(QString::fromStdString(scan.name));
}

std::vector<const PlanScan*> others(const ToolHost& host, Id moving) {
  std::vector<const PlanScan*> plans;
  for (const PlanScan& scan : host.document().job().planScans)
    if (scan.visible && scan.id != moving) plans.push_back(&scan);
  return plans;
}

}  // namespace

const PlanScan* ScanAlignTool::movingPlan(const ToolHost& host) const {
  const PlanScan* moving = findById(host.document().job().planScans, moving_);
  return moving ? moving : scanInHand(host);
}

std::vector<const PlanScan*> ScanAlignTool::clickedNow(const ToolHost& host) const {
  const PlanScan* moving = movingPlan(host);
  if (!moving) return {};
  return points_.size() % 2 == 0 ? std::vector{moving} : others(host, moving->id);
}

void ScanAlignTool::hover(ToolHost& host, const PointerEvent& event) {
  Snapped point = onHints(host, planHints(host, clickedNow(host)), event);
  pointer_ = point.by;
  marks_ = std::move(point.marks);
}

void ScanAlignTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton) return;
  if (points_.empty()) {
    const PlanScan* scan = scanInHand(host);
    if (!scan || others(host, scan->id).empty())
      return host.say(toolWords("There is no second plan. Open another picture or PDF first."));
    if (scan->locked) return host.say(toolWords("%1 is locked.").arg(nameOf(*scan)));
    moving_ = scan->id;
  }
  hover(host, event);
  points_.push_back(pointer_);
  if (points_.size() == 4) lay(host);
  host.refresh();
}

void ScanAlignTool::move(ToolHost& host, const PointerEvent& event) {
  hover(host, event);
  host.refresh();
}

bool ScanAlignTool::key(ToolHost& host, const QKeyEvent& event) {
  if (event.key() != Qt::Key_Backspace || points_.empty()) return false;
  points_.pop_back();
  host.refresh();
  return true;
}

void ScanAlignTool::cancel(ToolHost& host) {
  points_.clear();
  marks_.clear();
  moving_ = {};
  host.refresh();
}

void ScanAlignTool::lay(ToolHost& host) {
  Document& document = host.document();
  const PlanScan* scan = findById(document.job().planScans, moving_);
  if (!scan) return cancel(host);
  const auto laid = alignedByTwoPoints(*scan, {points_[0], points_[1]}, {points_[2], points_[3]});
  if (!laid) {
    host.say(QString::fromStdString(laid.error().sentence()));
    points_.resize(2);
    return;
  }
  PlanScan there = laid->scan;
  const bool wasScaled = there.scaled;
  const auto plans = others(host, moving_);
  there.scaled = std::any_of(plans.begin(), plans.end(), [](const PlanScan* other) { return other->scaled; });
  const UnitSystem& units = document.job().units;
  const double grown = laid->scaleChange - 1;
  const QString change =
      QString::fromStdString(formatQuantity(std::abs(grown), QuantityKind::Ratio, units));
  QString told = (grown < 0 ? toolWords("%1 lies on the other plan: turned by %2, shrunk by %3.")
                            : toolWords("%1 lies on the other plan: turned by %2, grown by %3."))
                     .arg(nameOf(*scan), QString::fromStdString(formatAngle(laid->turn, units)), change);
  constexpr double kSameScale = 0.01;
  if (wasScaled && there.scaled && std::abs(laid->scaleChange - 1) > kSameScale)
    told += toolWords(" Both plans had a scale before, so one of the two scales was wrong.");
  if (!document.change(toolWords("Lay the plan on the other"), setPlanScan(document.job(), there))) return;
  cancel(host);
  host.say(told);
  host.done();
}

void ScanAlignTool::paint(Overlay& overlay, const ToolHost& host) const {
  paintHints(overlay, planHints(host, clickedNow(host)));
  for (std::size_t i = 0; i < points_.size(); i += 2) {
    const Vec2 to = i + 1 < points_.size() ? points_[i + 1] : pointer_;
    overlay.line(points_[i], to, Overlay::Stroke::Draft);
    overlay.cross(points_[i]);
    overlay.handle(to, Overlay::Handle::Round);
  }
  overlay.marks(marks_, pointer_);
  overlay.cross(pointer_);
}

QString ScanAlignTool::status(const ToolHost& host) const {
  const PlanScan* moving = movingPlan(host);
  const QString name = moving ? nameOf(*moving) : QString();
  switch (points_.size()) {
    case 0:
      return toolWords("Click a corner on %1, the plan that moves, that the other plan shows too.").arg(name);
    case 1:
      return toolWords(
          "Click the same corner on the plan that stays. Ctrl: no snapping. Backspace: one back.");
    case 2:
      return toolWords("Click a second corner on %1, far from the first.").arg(name);
    default:
      return toolWords("Click that corner on the plan that stays.");
  }
}

}  // namespace baywright
