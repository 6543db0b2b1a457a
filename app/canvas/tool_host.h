// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPointF>
#include <QString>
#include <optional>

#include "canvas/tool_settings.h"
#include "drawing/hit_test.h"
#include "drawing/views.h"
#include "editing/document.h"
#include "survey/plan_trace_lines.h"

namespace baywright {

/// What a tool may ask of its view, and nothing else.
class ToolHost {
 public:
  virtual ~ToolHost() = default;

  virtual Document& document() const = 0;
  virtual const DrawnView& view() const = 0;
  ViewKind kind() const { return view().kind; }
  /// What the view shows now, to find what is under the pointer.
  virtual const Linework& linework() const = 0;
  /// How near is near, metres of the drawing.
  virtual HitReach reach() const = 0;
  virtual const ToolSettings& settings() const = 0;
  /// Width and height of a plan's picture; nothing while it is not decoded.
  virtual std::optional<Vec2> pixelsOf(const PlanScan& scan) const = 0;
  /// Lines that its picture shows; null while nobody has looked for them yet, and where the view shows no
  /// plans.
  virtual const PictureTraces* tracesOf(const PlanScan& scan) const = 0;

  virtual void panBy(QPointF pixels) = 0;
  virtual void zoomTo(const Eigen::AlignedBox2d& box) = 0;
  /// Opens the field for typing, with these characters typed already.
  virtual void openEntry(std::size_t field, const QString& typed = {}) = 0;
  /// A sentence for the person at work: what was done, or why it was not.
  virtual void say(const QString& sentence) = 0;
  /// The tool has done what it was chosen for; the view goes back to selecting.
  virtual void done() = 0;
  /// What paint() shows has changed.
  virtual void refresh() = 0;
};

}  // namespace baywright
