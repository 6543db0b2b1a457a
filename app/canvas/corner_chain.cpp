// SPDX-License-Identifier: Apache-2.0
#include "canvas/corner_chain.h"

#include "canvas/overlay.h"
#include "canvas/plan_hints.h"
#include "canvas/tool_words.h"
#include "drawing/snap_rules.h"
#include "survey/plan_trace.h"

namespace baywright {
namespace {

constexpr std::size_t kFewestCorners = 3;

std::vector<SnapRule> rulesFor(const ToolHost& host, const std::vector<Vec2>& corners) {
  constexpr double kGuide = 50;  // metres either way: across the view
  std::vector<SnapRule> rules;
  for (const TraceLine& line : traceLines(corners)) {
    const Segment2 shown{line.through - kGuide * line.along, line.through + kGuide * line.along};
    rules.push_back(onLine(line.through, line.along, {shown, line.what}));
  }
  for (SnapRule& rule : planLines(host.document().job())) rules.push_back(std::move(rule));
  for (SnapRule& rule : hintRules(planHints(host))) rules.push_back(std::move(rule));
  return rules;
}

}  // namespace

bool CornerChain::closes(const ToolHost& host, const Vec2& at) const {
  return corners_.size() >= kFewestCorners && (at - corners_.front()).norm() <= host.reach().reach;
}

void CornerChain::hover(ToolHost& host, const PointerEvent& event) {
  marks_.clear();
  hover_ = event.at;
  if (closes(host, event.at)) {
    hover_ = corners_.front();
    marks_ = {{{corners_.front(), corners_.front()}, toolWords("close").toStdString()}};
  } else if (!event.isFree()) {
    const Job& job = host.document().job();
    Snapped point = snapped(planPoints(job), rulesFor(host, corners_), event.at, host.reach().reach);
    nameCrossing(point);
    hover_ = point.by;
    marks_ = std::move(point.marks);
  }
  host.refresh();
}

CornerChain::Click CornerChain::press(ToolHost& host, const PointerEvent& event) {
  hover(host, event);
  if (closes(host, event.at)) return Click::Closed;
  const bool repeated = !corners_.empty() && (*hover_ - corners_.back()).norm() < host.reach().reach / 4;
  if (!repeated) corners_.push_back(*hover_);
  marks_.clear();
  return Click::Added;
}

void CornerChain::removeLast() {
  if (!corners_.empty()) corners_.pop_back();
  typedSides_ = 0;
  marks_.clear();
}

void CornerChain::clear() {
  *this = {};
}

std::vector<TypedField> CornerChain::fields() const {
  if (corners_.empty() || !hover_) return {};
  const double length = (*hover_ - corners_.back()).norm();
  return {{toolWords("length"), FieldKind::Size, length, corners_.back(), *hover_}};
}

std::optional<Problem> CornerChain::take(ToolHost& host, double length) {
  if (corners_.empty() || !hover_) return std::nullopt;
  const auto corner = cornerAtLength(corners_.back(), *hover_, length);
  if (!corner) return corner.error();
  corners_.push_back(*corner);
  ++typedSides_;
  hover_ = *corner;
  marks_.clear();
  host.refresh();
  return std::nullopt;
}

void CornerChain::paint(Overlay& overlay, const ToolHost& host) const {
  paintHints(overlay, planHints(host));
  if (!hover_) return;
  if (corners_.size() + 1 >= kFewestCorners) {
    std::vector<Vec2> closed = corners_;
    closed.push_back(*hover_);
    overlay.area(closed);
  }
  overlay.polyline(corners_, Overlay::Stroke::Strong);
  if (!corners_.empty()) overlay.line(corners_.back(), *hover_, Overlay::Stroke::Draft);
  overlay.marks(marks_, *hover_);
  for (const Vec2& corner : corners_) overlay.handle(corner, Overlay::Handle::Square);
  overlay.cross(*hover_);
}

}  // namespace baywright
