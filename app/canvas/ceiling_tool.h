// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "canvas/tool.h"
#include "drawing/live_dimensions.h"
#include "drawing/snap.h"
#include "job/measurement.h"

namespace baywright {

/// Reads the ceiling where the plan is clicked: the height is typed, and where it was taken can be typed as
/// distances from walls. At a corner of the room it is the corner's reading; a click on a reading corrects
/// it. It stays in hand for the next height.
class CeilingTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override;
  bool key(ToolHost& host, const QKeyEvent& event) override;
  bool isBusy() const override { return reading_.has_value(); }
  void cancel(ToolHost& host) override;
  std::vector<TypedField> fields(const ToolHost& host) const override;
  std::optional<Problem> take(ToolHost& host, std::size_t field, double value) override;
  void accept(ToolHost& host) override;
  void paint(Overlay& overlay, const ToolHost& host) const override;
  QString status(const ToolHost& host) const override;

 private:
  /// The reading under the pointer, else a new one there: at a corner or where it snaps to.
  Measurement readingAt(const ToolHost& host, const PointerEvent& event);
  std::vector<LiveDimension> offsets(const ToolHost& host) const;

  std::optional<Measurement> reading_;  ///< being typed; its value not a number: not typed yet
  Vec2 pointer_ = Vec2::Zero();
  Id hovered_;  ///< a reading
  std::vector<SnapMark> marks_;
};

}  // namespace baywright
