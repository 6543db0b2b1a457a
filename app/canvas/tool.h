// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QCursor>
#include <QKeyEvent>
#include <QString>
#include <optional>
#include <vector>

#include "base/problem.h"
#include "geometry/vec.h"

namespace baywright {

class Overlay;
class ToolHost;

/// The pointer as a tool sees it.
struct PointerEvent {
  Vec2 at = Vec2::Zero();  ///< metres of the drawing
  QPointF pixel;           ///< of the view
  Qt::MouseButton button = Qt::NoButton;
  Qt::KeyboardModifiers modifiers = Qt::NoModifier;

  /// Ctrl holds snapping off.
  bool isFree() const { return modifiers.testFlag(Qt::ControlModifier); }
};

enum class FieldKind { Length, Size, Angle };

/// A figure that can be typed while the tool is at work; shown as a dimension from one point to the other. An
/// angle stands at `to`.
struct TypedField {
  QString what;  ///< "to wall B"
  FieldKind kind = FieldKind::Size;
  double value = 0;  ///< metres or radians; not a number: only the person at work knows
  Vec2 from = Vec2::Zero();
  Vec2 to = Vec2::Zero();
};

/// One gesture's worth of behaviour. A tool belongs to one view, knows no widget, and does everything through
/// its host. Whatever it changes while the pointer moves is an open edit, so that cancel() leaves no trace.
class Tool {
 public:
  virtual ~Tool() = default;

  virtual void press(ToolHost&, const PointerEvent&) {}
  virtual void move(ToolHost&, const PointerEvent&) {}
  virtual void release(ToolHost&, const PointerEvent&) {}
  virtual void doubleClick(ToolHost& host, const PointerEvent& event) { press(host, event); }
  /// True when the key meant something.
  virtual bool key(ToolHost&, const QKeyEvent&) { return false; }

  /// Something is begun that Esc gives up.
  virtual bool isBusy() const { return false; }
  virtual void cancel(ToolHost&) {}

  /// What can be typed now; Tab goes from one to the next.
  virtual std::vector<TypedField> fields(const ToolHost&) const { return {}; }
  /// Takes a typed figure. A problem is shown beside the field, which stays open.
  virtual std::optional<Problem> take(ToolHost&, std::size_t /*field*/, double /*value*/) {
    return std::nullopt;
  }
  /// Enter, after the last figure was taken.
  virtual void accept(ToolHost&) {}

  virtual void paint(Overlay&, const ToolHost&) const {}
  virtual QCursor cursor(const ToolHost&) const { return Qt::CrossCursor; }
  /// What to do next, for the status line.
  virtual QString status(const ToolHost&) const { return {}; }
};

}  // namespace baywright
