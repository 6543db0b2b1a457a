// SPDX-License-Identifier: Apache-2.0
#include "canvas/scan_tools.h"

#include <limits>

#include "canvas/overlay.h"
#include "canvas/plan_hints.h"
#include "canvas/tool_host.h"
#include "canvas/tool_words.h"
#include "job/edit_scans.h"
#include "job/find.h"
#include "survey/line_align.h"
#include "survey/plan_scan_fit.h"

namespace baywright {
namespace {

TypedField lengthField(const char* what, const Vec2& a, const Vec2& b, std::optional<double> typed) {
  return {toolWords(what), FieldKind::Size, typed.value_or(std::numeric_limits<double>::quiet_NaN()), a, b};
}

/// What the length says of a sheet whose size on paper is known: it was drawn at some usual scale, or the
/// length may be wrong. Points are where one sees them before the scale is set.
QString sheetScaleWords(const PlanScan& scan, const Vec2& a, const Vec2& b, double length) {
  const auto pixelFromWorld = inverse(Homography{scan.worldFromPixel});
  if (!pixelFromWorld || !(scan.pdfDotsPerMetre > 0)) return {};
  const auto from = mapped(*pixelFromWorld, a), to = mapped(*pixelFromWorld, b);
  if (!from || !to) return {};
  const auto suggested = suggestedScale({*from, *to}, length, scan.pdfDotsPerMetre);
  if (!suggested) return {};
  if (suggested->usualScale) return toolWords(" The sheet was drawn at 1:%1.").arg(*suggested->usualScale);
  return toolWords(" The sheet would be at 1:%1, which is no usual scale: look whether the length is right.")
      .arg(suggested->sheetScale, 0, 'f', 1);
}

/// Where the plan can be clicked at all.
bool hasScan(ToolHost& host) {
  const PlanScan* scan = scanInHand(host);
  if (!scan) host.say(toolWords("There is no plan yet. Open a picture or a PDF of one first."));
  return scan != nullptr;
}

/// What the plan in hand shows.
PictureTraces hintsInHand(const ToolHost& host) {
  const PlanScan* scan = scanInHand(host);
  return scan ? planHints(host, {scan}) : PictureTraces{};
}

}  // namespace

const PlanScan* scanInHand(const ToolHost& host) {
  const auto& scans = host.document().job().planScans;
  if (const PlanScan* selected = findById(scans, host.document().selection().selected())) return selected;
  for (auto scan = scans.rbegin(); scan != scans.rend(); ++scan) {
    if (scan->visible) return &*scan;
  }
  return nullptr;
}

// --- scale

void ScanScaleTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton || !hasScan(host)) return;
  if (points_.size() == 2) points_.clear();
  hover(host, event);
  points_.push_back(pointer_);
  marks_.clear();
  if (points_.size() == 2) host.openEntry(0);
  host.refresh();
}

void ScanScaleTool::hover(ToolHost& host, const PointerEvent& event) {
  Snapped point = onHints(host, hintsInHand(host), event);
  pointer_ = point.by;
  marks_ = std::move(point.marks);
}

void ScanScaleTool::move(ToolHost& host, const PointerEvent& event) {
  hover(host, event);
  host.refresh();
}

void ScanScaleTool::cancel(ToolHost& host) {
  points_.clear();
  marks_.clear();
  host.refresh();
}

std::vector<TypedField> ScanScaleTool::fields(const ToolHost&) const {
  if (points_.size() != 2) return {};
  return {lengthField("true length", points_[0], points_[1], std::nullopt)};
}

std::optional<Problem> ScanScaleTool::take(ToolHost& host, std::size_t, double value) {
  const PlanScan* scan = scanInHand(host);
  if (!scan || points_.size() != 2) return std::nullopt;
  const auto scaled = scaledByLine(*scan, points_[0], points_[1], value);
  if (!scaled) return scaled.error();
  // The first point stays where it is, so the line still starts there.
  const PlanScan level = levelledByLine(*scaled, points_[0], points_[1]);
  const QString sheetScale = sheetScaleWords(*scan, points_[0], points_[1], value);
  Document& document = host.document();
  Result<Job> edited = setPlanScan(document.job(), level);
  if (!edited) return edited.error();
  document.change(toolWords("Set the plan's scale"), std::move(edited));
  const bool turned = !level.worldFromPixel.isApprox(scaled->worldFromPixel, 1e-9);
  QString told = turned ? toolWords(
                              "The scale is set, and the plan is turned a little so that this line is "
                              "straight.")
                        : toolWords("The scale is set.");
  host.say(told + sheetScale);
  return std::nullopt;
}

void ScanScaleTool::accept(ToolHost& host) {
  points_.clear();
  host.done();
}

void ScanScaleTool::paint(Overlay& overlay, const ToolHost& host) const {
  if (points_.size() < 2) paintHints(overlay, hintsInHand(host));
  for (const Vec2& point : points_) overlay.cross(point);
  if (points_.size() == 1) overlay.line(points_[0], pointer_, Overlay::Stroke::Draft);
  if (points_.size() < 2) overlay.marks(marks_, pointer_);
  if (points_.size() < 2) overlay.cross(pointer_);
}

QString ScanScaleTool::status(const ToolHost&) const {
  if (points_.empty())
    return toolWords(
        "Click one end of a length that you know: of the scale bar, a wall with its figure, or one side of a "
        "door. "
        "Ctrl: no snapping.");
  if (points_.size() == 1)
    return toolWords("Click its other end. The longer the line, the better the scale.");
  return toolWords("Type the true length and press Enter.");
}

// --- straighten

void ScanStraightenTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton || points_.size() == 4 || !hasScan(host)) return;
  hover(host, event);
  points_.push_back(pointer_);
  marks_.clear();
  if (points_.size() == 4) host.openEntry(0);
  host.refresh();
}

void ScanStraightenTool::hover(ToolHost& host, const PointerEvent& event) {
  Snapped point = onHints(host, hintsInHand(host), event);
  pointer_ = point.by;
  marks_ = std::move(point.marks);
}

void ScanStraightenTool::move(ToolHost& host, const PointerEvent& event) {
  hover(host, event);
  host.refresh();
}

bool ScanStraightenTool::key(ToolHost& host, const QKeyEvent& event) {
  if (event.key() != Qt::Key_Backspace || points_.empty()) return false;
  points_.pop_back();
  host.refresh();
  return true;
}

void ScanStraightenTool::cancel(ToolHost& host) {
  points_.clear();
  marks_.clear();
  first_.reset();
  second_.reset();
  host.refresh();
}

std::vector<TypedField> ScanStraightenTool::fields(const ToolHost&) const {
  if (points_.size() != 4) return {};
  return {lengthField("true length of the first side", points_[0], points_[1], first_),
          lengthField("true length of the second side", points_[1], points_[2], second_)};
}

std::optional<Problem> ScanStraightenTool::take(ToolHost& host, std::size_t field, double value) {
  (field == 0 ? first_ : second_) = value;
  const PlanScan* scan = scanInHand(host);
  if (!first_ || !second_ || !scan || points_.size() != 4) return std::nullopt;
  const SeenRectangle seen{{points_[0], points_[1], points_[2], points_[3]}, *first_, *second_};
  const auto straight = straightened(*scan, seen);
  if (!straight) return straight.error();
  Document& document = host.document();
  Result<Job> edited = setPlanScan(document.job(), *straight);
  if (!edited) return edited.error();
  document.change(toolWords("Straighten the plan"), std::move(edited));
  host.say(toolWords("The plan is straight and to scale."));
  points_.clear();
  return std::nullopt;
}

void ScanStraightenTool::accept(ToolHost& host) {
  if (points_.size() == 4) return host.openEntry(first_ ? 1 : 0);
  first_.reset();
  second_.reset();
  host.done();
}

void ScanStraightenTool::paint(Overlay& overlay, const ToolHost& host) const {
  if (points_.size() < 4) paintHints(overlay, hintsInHand(host));
  overlay.polyline(points_, Overlay::Stroke::Draft);
  if (points_.size() == 4) overlay.area(points_);
  for (const Vec2& point : points_) overlay.cross(point);
  if (points_.size() == 4) return;
  if (!points_.empty()) overlay.line(points_.back(), pointer_, Overlay::Stroke::Draft);
  overlay.marks(marks_, pointer_);
  overlay.cross(pointer_);
}

QString ScanStraightenTool::status(const ToolHost&) const {
  if (points_.size() < 4)
    return toolWords(
        "Click the four corners of something that is a rectangle in truth, going round. Ctrl: no snapping. "
        "Backspace: one back.");
  return toolWords("Type the true length of both sides, Tab between them, then Enter.");
}

}  // namespace baywright
