// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "canvas/corner_chain.h"

namespace baywright {

/// Draws the room by clicking its corners, over a plan or freely. Where a scaled plan lies under it the
/// corners count as read off a drawing, where each side was typed as taped.
class OutlineTool : public Tool {
 public:
  void press(ToolHost& host, const PointerEvent& event) override;
  void move(ToolHost& host, const PointerEvent& event) override { chain_.hover(host, event); }
  bool key(ToolHost& host, const QKeyEvent& event) override;
  bool isBusy() const override { return !chain_.isEmpty(); }
  void cancel(ToolHost& host) override;
  std::vector<TypedField> fields(const ToolHost&) const override { return chain_.fields(); }
  std::optional<Problem> take(ToolHost& host, std::size_t, double value) override {
    return chain_.take(host, value);
  }
  void paint(Overlay& overlay, const ToolHost& host) const override { chain_.paint(overlay, host); }
  QString status(const ToolHost& host) const override;

 private:
  void finish(ToolHost& host);

  CornerChain chain_;
};

}  // namespace baywright
