// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QStringList>

#include "canvas/tool.h"
#include "canvas/tool_host.h"

namespace baywright::testing {

/// A view without a widget: a document, a scale, and a record of what a tool asked for. A pixel is a
/// centimetre and the drawing's origin lies at pixel (0, 0).
class FakeToolHost : public ToolHost {
 public:
  explicit FakeToolHost(Job job, const DrawnView& view = ViewKind::Plan) : view_(view) {
    document_.startWith(std::move(job));
  }

  const Job& job() const { return document_.job(); }
  ToolSettings toolSettings;
  std::optional<Vec2> scanPixels;
  PictureTraces scanTraces;  ///< of every plan

  QStringList said;
  std::vector<std::size_t> entries;  ///< fields that were opened for typing
  int doneCount = 0;
  QPointF panned;
  Eigen::AlignedBox2d zoomed;

  static constexpr double kMetresPerPixel = 0.01;

  static PointerEvent at(const Vec2& point, Qt::MouseButton button = Qt::NoButton,
                         Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    return {point, {point.x() / kMetresPerPixel, -point.y() / kMetresPerPixel}, button, modifiers};
  }
  void press(Tool& tool, const Vec2& point, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    tool.press(*this, at(point, Qt::LeftButton, modifiers));
  }
  void move(Tool& tool, const Vec2& point, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    tool.move(*this, at(point, Qt::NoButton, modifiers));
  }
  void release(Tool& tool, const Vec2& point, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    tool.release(*this, at(point, Qt::LeftButton, modifiers));
  }
  void click(Tool& tool, const Vec2& point, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    move(tool, point, modifiers);
    press(tool, point, modifiers);
    release(tool, point, modifiers);
  }
  /// In steps, as a hand does.
  void drag(Tool& tool, const Vec2& from, const Vec2& to, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    hold(tool, from, to, modifiers);
    release(tool, to, modifiers);
  }
  /// The same without letting go.
  void hold(Tool& tool, const Vec2& from, const Vec2& to, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    move(tool, from, modifiers);
    press(tool, from, modifiers);
    for (const double share : {0.1, 0.4, 0.8, 1.0}) move(tool, from + share * (to - from), modifiers);
  }
  bool key(Tool& tool, Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    return tool.key(*this, QKeyEvent(QEvent::KeyPress, key, modifiers));
  }

  // ToolHost
  Document& document() const override { return document_; }
  const DrawnView& view() const override { return view_; }
  const Linework& linework() const override {
    linework_ = viewLinework(view_, document_.job(), document_.assessment(), {});
    return linework_;
  }
  HitReach reach() const override { return {8 * kMetresPerPixel, 4 * kMetresPerPixel}; }
  const ToolSettings& settings() const override { return toolSettings; }
  std::optional<Vec2> pixelsOf(const PlanScan&) const override { return scanPixels; }
  const PictureTraces* tracesOf(const PlanScan&) const override { return &scanTraces; }
  void panBy(QPointF pixels) override { panned += pixels; }
  void zoomTo(const Eigen::AlignedBox2d& box) override { zoomed = box; }
  void openEntry(std::size_t field, const QString&) override { entries.push_back(field); }
  void say(const QString& sentence) override { said.push_back(sentence); }
  void done() override { ++doneCount; }
  void refresh() override {}

 private:
  mutable Document document_;
  DrawnView view_;
  mutable Linework linework_;
};

}  // namespace baywright::testing
