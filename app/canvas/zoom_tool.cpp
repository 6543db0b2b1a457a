// SPDX-License-Identifier: Apache-2.0
#include "canvas/zoom_tool.h"

#include "canvas/overlay.h"
#include "canvas/tool_host.h"
#include "canvas/tool_words.h"

namespace baywright {
namespace {

Eigen::AlignedBox2d boxOf(const Vec2& a, const Vec2& b) {
  Eigen::AlignedBox2d box(a);
  box.extend(b);
  return box;
}

}  // namespace

void ZoomTool::press(ToolHost&, const PointerEvent& event) {
  if (event.button == Qt::LeftButton) from_ = to_ = event.at;
}

void ZoomTool::move(ToolHost& host, const PointerEvent& event) {
  to_ = event.at;
  host.refresh();
}

void ZoomTool::release(ToolHost& host, const PointerEvent&) {
  if (!from_) return;
  const auto box = boxOf(*from_, to_);
  from_.reset();
  if (box.sizes().maxCoeff() < host.reach().reach)
    return host.say(toolWords("Drag a box over what shall fill the view."));
  host.zoomTo(box);
  host.done();
}

void ZoomTool::cancel(ToolHost& host) {
  from_.reset();
  host.refresh();
}

void ZoomTool::paint(Overlay& overlay, const ToolHost&) const {
  if (!from_) return;
  const auto box = boxOf(*from_, to_);
  using Box = Eigen::AlignedBox2d;
  overlay.area({box.corner(Box::BottomLeft), box.corner(Box::BottomRight), box.corner(Box::TopRight),
                box.corner(Box::TopLeft)});
}

QString ZoomTool::status(const ToolHost&) const {
  return toolWords("Drag a box over what shall fill the view.");
}

}  // namespace baywright
