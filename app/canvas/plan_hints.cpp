// SPDX-License-Identifier: Apache-2.0
#include "canvas/plan_hints.h"

#include "canvas/overlay.h"
#include "canvas/tool_words.h"

namespace baywright {

PictureTraces planHints(const ToolHost& host, const std::vector<const PlanScan*>& scans) {
  PictureTraces all;
  for (const PlanScan* scan : scans) {
    const PictureTraces* traces = scan->visible ? host.tracesOf(*scan) : nullptr;
    if (!traces) continue;
    const PictureTraces one = tracesOnPlan(*scan, *traces);
    all.lines.insert(all.lines.end(), one.lines.begin(), one.lines.end());
    all.ends.insert(all.ends.end(), one.ends.begin(), one.ends.end());
  }
  return all;
}

PictureTraces planHints(const ToolHost& host) {
  std::vector<const PlanScan*> all;
  for (const PlanScan& scan : host.document().job().planScans) all.push_back(&scan);
  return planHints(host, all);
}

namespace {

std::string onLineWords() {
  return toolWords("on a line of the plan").toStdString();
}

}  // namespace

std::vector<SnapRule> hintRules(const PictureTraces& hints) {
  const std::string what = onLineWords();
  std::vector<SnapRule> rules;
  for (const Segment2& line : hints.lines) rules.push_back(onSegment(line, what));
  return rules;
}

std::vector<SnapPoint> hintPoints(const PictureTraces& hints) {
  const std::string what = toolWords("end of a line of the plan").toStdString();
  std::vector<SnapPoint> points;
  for (const Vec2& end : hints.ends) points.push_back({end, what});
  return points;
}

void nameCrossing(Snapped& point) {
  if (point.marks.size() != 2 || point.marks[0].what != onLineWords() || point.marks[1].what != onLineWords())
    return;
  for (SnapMark& mark : point.marks) mark.what = toolWords("where lines of the plan cross").toStdString();
}

Snapped onHints(const ToolHost& host, const PictureTraces& hints, const PointerEvent& event) {
  if (event.isFree()) return {event.at, {}};
  Snapped point = snapped(hintPoints(hints), hintRules(hints), event.at, host.reach().reach);
  nameCrossing(point);
  return point;
}

void paintHints(Overlay& overlay, const PictureTraces& hints) {
  QColor faint = overlay.theme().accent;
  faint.setAlphaF(0.45F);
  QPainter& painter = overlay.painter();
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(faint, 1.5));
  for (const Segment2& line : hints.lines)
    painter.drawLine(overlay.map().pixelFrom(line.a), overlay.map().pixelFrom(line.b));
  painter.restore();
}

}  // namespace baywright
